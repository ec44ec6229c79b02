import type { ErrorTable } from "./error-table.js";

/**
 * Tolerable negative errors of the European directive on prepackages, for the ℮ mark: 5 g or mL to 10 kg or L.
 *
 * Rows up to 1000 were read in the act, the last one and the rounding in restatements.
 *
 * @source eec-76-211 Annex I 2.4; fpackv-9 and gov-uk-packaged-goods for the last row and the rounding
 */
export const tolerableErrorsEec1976: ErrorTable = {
  jurisdiction: "European Union",
  act: "Directive 76/211/EEC, Annex I 2.4",
  date: "1976-01-20, as amended",
  grade: "second-hand",
  source: "eec-76-211",
  nominalMin: 5,
  rows: [
    { nominalMax: 50, errorRelative: 0.09 },
    { nominalMax: 100, error: 4.5 },
    { nominalMax: 200, errorRelative: 0.045 },
    { nominalMax: 300, error: 9 },
    { nominalMax: 500, errorRelative: 0.03 },
    { nominalMax: 1000, error: 15 },
    { nominalMax: 10_000, errorRelative: 0.015 },
  ],
  roundUpTo: 0.1,
};

/**
 * Amounts of error of New Zealand for packages labelled by mass or volume. The act was read without a rule of rounding.
 *
 * @source nz-sr-1999-373 Schedule 7A, table 2
 */
export const tolerableErrorsNewZealand1999: ErrorTable = {
  jurisdiction: "New Zealand",
  act: "Weights and Measures Regulations 1999, Schedule 7A, Table 2",
  date: "2001-11-14",
  grade: "first-hand",
  source: "nz-sr-1999-373",
  nominalMin: 1e-6,
  rows: [
    { nominalMax: 50, errorRelative: 0.09 },
    { nominalMax: 100, error: 4.5 },
    { nominalMax: 200, errorRelative: 0.045 },
    { nominalMax: 300, error: 9 },
    { nominalMax: 500, errorRelative: 0.03 },
    { nominalMax: 1000, error: 15 },
    { nominalMax: 10_000, errorRelative: 0.015 },
    { nominalMax: 15_000, error: 150 },
    { nominalMax: null, errorRelative: 0.01 },
  ],
};

/**
 * Tolerable deficiencies of the international recommendation. Rows and rounding read in restatements: up to a
 * tenth as far as 1000, to whole units above.
 *
 * @source oiml-r-87-2004 table 1, second-hand; the rounding in australia-ntmr-2009
 */
export const tolerableErrorsOimlR87: ErrorTable = {
  jurisdiction: "international recommendation, in force where national law adopts it",
  act: "OIML R 87, Table 1",
  date: "2004",
  grade: "second-hand",
  source: "oiml-r-87-2004",
  nominalMin: 1e-6,
  rows: [
    { nominalMax: 50, errorRelative: 0.09 },
    { nominalMax: 100, error: 4.5 },
    { nominalMax: 200, errorRelative: 0.045 },
    { nominalMax: 300, error: 9 },
    { nominalMax: 500, errorRelative: 0.03 },
    { nominalMax: 1000, error: 15 },
    { nominalMax: 10_000, errorRelative: 0.015, roundUpTo: 1 },
    { nominalMax: 15_000, error: 150 },
    { nominalMax: null, errorRelative: 0.01, roundUpTo: 1 },
  ],
  roundUpTo: 0.1,
};

/**
 * Maximum allowable variations of the United States for packages labelled by weight. From memory: compare it with the
 * handbook of your year before you use it.
 *
 * @source nist-hb-133 table 2-5, from memory
 */
export const allowableVariationsHandbook133: ErrorTable = {
  jurisdiction: "United States",
  act: "NIST Handbook 133, Table 2-5, packages labeled by weight",
  date: "not known: from memory",
  grade: "from memory",
  source: "nist-hb-133",
  nominalMin: 1e-6,
  rows: [
    { nominalMax: 36, errorRelative: 0.1 },
    { nominalMax: 54, error: 3.6 },
    { nominalMax: 81, error: 5.4 },
    { nominalMax: 117, error: 7.2 },
    { nominalMax: 154, error: 9 },
    { nominalMax: 208, error: 10.8 },
    { nominalMax: 263, error: 12.7 },
    { nominalMax: 317, error: 14.5 },
    { nominalMax: 381, error: 16.3 },
    { nominalMax: 426, error: 18.1 },
    { nominalMax: 489, error: 19.9 },
    { nominalMax: 571, error: 21.7 },
    { nominalMax: 635, error: 23.5 },
    { nominalMax: 698, error: 25.4 },
    { nominalMax: 771, error: 27.2 },
    { nominalMax: 852, error: 29 },
    { nominalMax: 970, error: 31.7 },
    { nominalMax: 1120, error: 35.3 },
    { nominalMax: 1250, error: 39 },
    { nominalMax: 1450, error: 42.6 },
    { nominalMax: 1760, error: 49.8 },
    { nominalMax: 2130, error: 54.4 },
    { nominalMax: 2630, error: 63.5 },
    { nominalMax: 3080, error: 68 },
    { nominalMax: 3580, error: 77.1 },
    { nominalMax: 4260, error: 86.1 },
    { nominalMax: 5300, error: 99.7 },
    { nominalMax: 6480, error: 113 },
    { nominalMax: 8020, error: 127 },
    { nominalMax: 10_520, error: 140 },
    { nominalMax: 14_330, error: 167 },
    { nominalMax: 19_230, error: 199 },
    { nominalMax: 24_670, error: 226 },
    { nominalMax: null, errorRelative: 0.02 },
  ],
};
