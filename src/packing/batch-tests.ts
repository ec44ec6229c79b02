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

/**
 * The sampling plan of the international recommendation of 2004; the edition of 2016 has another. From memory.
 *
 * @source oiml-r-87-2004 table 2, from memory
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

/**
 * The sampling plans of the United States for packages of category A, against `allowableVariationsHandbook133`. From
 * memory: hold them against the handbook of your year before you use them.
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
