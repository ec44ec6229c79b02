import type { BatchTestTable } from "./batch-test.js";

/**
 * The lots and samples of New Zealand's average quantity system. Of lots up to 12 packs all are measured.
 *
 * @source nz-sr-1999-373 Schedule 7A, table 1
 */
export const batchTestsNewZealand1999: BatchTestTable = {
  jurisdiction: "New Zealand",
  act: "Weights and Measures Regulations 1999, Schedule 7A, Table 1",
  date: "2001-11-14",
  grade: "first-hand",
  source: "nz-sr-1999-373",
  rows: [
    {
      packsMin: 2,
      packsMax: 2,
      test: { sampleSize: 2, defectivesMax: 0, mean: { sampleSize: 2, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 3,
      packsMax: 3,
      test: { sampleSize: 3, defectivesMax: 0, mean: { sampleSize: 3, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 4,
      packsMax: 4,
      test: { sampleSize: 4, defectivesMax: 0, mean: { sampleSize: 4, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 5,
      packsMax: 5,
      test: { sampleSize: 5, defectivesMax: 0, mean: { sampleSize: 5, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 6,
      packsMax: 6,
      test: { sampleSize: 6, defectivesMax: 0, mean: { sampleSize: 6, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 7,
      packsMax: 7,
      test: { sampleSize: 7, defectivesMax: 0, mean: { sampleSize: 7, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 8,
      packsMax: 8,
      test: { sampleSize: 8, defectivesMax: 0, mean: { sampleSize: 8, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 9,
      packsMax: 9,
      test: { sampleSize: 9, defectivesMax: 0, mean: { sampleSize: 9, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 10,
      packsMax: 10,
      test: { sampleSize: 10, defectivesMax: 0, mean: { sampleSize: 10, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 11,
      packsMax: 11,
      test: { sampleSize: 11, defectivesMax: 0, mean: { sampleSize: 11, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 12,
      packsMax: 12,
      test: { sampleSize: 12, defectivesMax: 0, mean: { sampleSize: 12, factor: 0 }, noneBeyondTwo: false },
    },
    {
      packsMin: 13,
      packsMax: 39,
      test: { sampleSize: 12, defectivesMax: 0, mean: { sampleSize: 12, factor: 0.746 }, noneBeyondTwo: false },
    },
    {
      packsMin: 40,
      packsMax: 79,
      test: { sampleSize: 12, defectivesMax: 1, mean: { sampleSize: 12, factor: 0.826 }, noneBeyondTwo: false },
    },
    {
      packsMin: 80,
      packsMax: 149,
      test: { sampleSize: 12, defectivesMax: 2, mean: { sampleSize: 12, factor: 0.86 }, noneBeyondTwo: false },
    },
    {
      packsMin: 150,
      packsMax: 399,
      test: { sampleSize: 32, defectivesMax: 3, mean: { sampleSize: 32, factor: 0.465 }, noneBeyondTwo: false },
    },
    {
      packsMin: 400,
      packsMax: 4000,
      test: { sampleSize: 32, defectivesMax: 4, mean: { sampleSize: 32, factor: 0.483 }, noneBeyondTwo: false },
    },
    {
      packsMin: 4001,
      packsMax: null,
      test: { sampleSize: 80, defectivesMax: 6, mean: { sampleSize: 80, factor: 0.295 }, noneBeyondTwo: false },
    },
  ],
};
