import type { BatchTestTable } from "./batch-test.js";

/**
 * The reference test of the European directive without opening packs: two samples for single packs, one for the mean.
 *
 * Its test counts no pack twice short, yet Annex I 1.3 lets none bear the mark: see `targetByRules`. Batches are limited to
 * 10 000 packs unless they are an hour's output; fewer than 100 packs are measured all.
 *
 * @source eec-76-211 Annex II 2.2.1 and 2.3; the printed factors of the mean in uk-si-2006-659
 */
export const batchTestsEec1976: BatchTestTable = {
  jurisdiction: "European Union",
  act: "Directive 76/211/EEC, Annex II 2.2.1 and 2.3",
  date: "1976-01-20, as amended",
  grade: "first-hand",
  source: "eec-76-211",
  rows: [
    {
      packsMin: 100,
      packsMax: 500,
      test: {
        sampleSize: 30,
        defectivesMax: 1,
        second: { rejectedFrom: 3, sampleSize: 30, defectivesMax: 4 },
        mean: { sampleSize: 30, factor: 0.503 },
        noneBeyondTwo: false,
      },
    },
    {
      packsMin: 501,
      packsMax: 3200,
      test: {
        sampleSize: 50,
        defectivesMax: 2,
        second: { rejectedFrom: 5, sampleSize: 50, defectivesMax: 6 },
        mean: { sampleSize: 50, factor: 0.379 },
        noneBeyondTwo: false,
      },
    },
    {
      packsMin: 3201,
      packsMax: null,
      test: {
        sampleSize: 80,
        defectivesMax: 3,
        second: { rejectedFrom: 7, sampleSize: 80, defectivesMax: 8 },
        mean: { sampleSize: 50, factor: 0.379 },
        noneBeyondTwo: false,
      },
    },
  ],
};

/**
 * The reference test of the European directive where packs are opened, for batches of 100 or more.
 *
 * @source eec-76-211 Annex II 2.2.2 and 2.3; the printed factor of the mean in uk-si-2006-659
 */
export const batchTestsEec1976Destructive: BatchTestTable = {
  jurisdiction: "European Union",
  act: "Directive 76/211/EEC, Annex II 2.2.2 and 2.3",
  date: "1976-01-20, as amended",
  grade: "first-hand",
  source: "eec-76-211",
  rows: [
    {
      packsMin: 100,
      packsMax: null,
      test: {
        sampleSize: 20,
        defectivesMax: 1,
        mean: { sampleSize: 20, factor: 0.64 },
        noneBeyondTwo: false,
      },
    },
  ],
};

/**
 * The test with a single sample of the United Kingdom, without opening packs.
 *
 * @source uk-si-2006-659 Schedule 2, paragraphs 3.5 and 4.5
 */
export const batchTestsUk2006: BatchTestTable = {
  jurisdiction: "United Kingdom",
  act: "The Weights and Measures (Packaged Goods) Regulations 2006, Schedule 2, paragraphs 3 and 4",
  date: "2006, as made",
  grade: "first-hand",
  source: "uk-si-2006-659",
  rows: [
    {
      packsMin: 100,
      packsMax: 500,
      test: { sampleSize: 50, defectivesMax: 3, mean: { sampleSize: 30, factor: 0.503 }, noneBeyondTwo: false },
    },
    {
      packsMin: 501,
      packsMax: 3200,
      test: { sampleSize: 80, defectivesMax: 5, mean: { sampleSize: 50, factor: 0.379 }, noneBeyondTwo: false },
    },
    {
      packsMin: 3201,
      packsMax: null,
      test: { sampleSize: 125, defectivesMax: 7, mean: { sampleSize: 50, factor: 0.379 }, noneBeyondTwo: false },
    },
  ],
};

/**
 * The sampling plan of the international recommendation of 2004; the edition of 2016 has another. Samples, defectives and
 * factors were read in a national law that adopted it; the lot of 3200 at which they change is from memory, and a table
 * is graded by its weakest part.
 *
 * @source oiml-r-87-2004 table 2, second-hand in australia-ntmr-2009
 */
export const batchTestsOimlR87: BatchTestTable = {
  jurisdiction: "international recommendation, in force where national law adopts it",
  act: "OIML R 87, Table 2",
  date: "2004",
  grade: "from memory",
  source: "oiml-r-87-2004",
  rows: [
    {
      packsMin: 100,
      packsMax: 500,
      test: { sampleSize: 50, defectivesMax: 3, mean: { sampleSize: 50, factor: 0.379 }, noneBeyondTwo: true },
    },
    {
      packsMin: 501,
      packsMax: 3200,
      test: { sampleSize: 80, defectivesMax: 5, mean: { sampleSize: 80, factor: 0.295 }, noneBeyondTwo: true },
    },
    {
      packsMin: 3201,
      packsMax: null,
      test: { sampleSize: 125, defectivesMax: 7, mean: { sampleSize: 125, factor: 0.234 }, noneBeyondTwo: true },
    },
  ],
};
