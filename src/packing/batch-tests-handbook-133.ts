import type { BatchTestTable } from "./batch-test.js";

/**
 * The sampling plans of the United States for packages of category A, against `allowableVariationsHandbook133`. From
 * memory: compare them with the handbook of your year before you use them.
 *
 * @source nist-hb-133 table 2-1, from memory
 */
export const batchTestsHandbook133: BatchTestTable = {
  jurisdiction: "United States",
  act: "NIST Handbook 133, Table 2-1, category A",
  date: "not known: from memory",
  grade: "from memory",
  source: "nist-hb-133",
  rows: [
    {
      packsMin: 1,
      packsMax: 1,
      test: { sampleSize: 1, defectivesMax: 0, mean: { sampleSize: 1, factor: 0 }, noneBeyondTwo: false },
    },
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
      packsMax: 250,
      test: { sampleSize: 12, defectivesMax: 0, mean: { sampleSize: 12, factor: 0.635 }, noneBeyondTwo: false },
    },
    {
      packsMin: 251,
      packsMax: 3200,
      test: { sampleSize: 24, defectivesMax: 0, mean: { sampleSize: 24, factor: 0.422 }, noneBeyondTwo: false },
    },
    {
      packsMin: 3201,
      packsMax: null,
      test: { sampleSize: 48, defectivesMax: 1, mean: { sampleSize: 48, factor: 0.291 }, noneBeyondTwo: false },
    },
  ],
};
