import type { DatedTable } from "../formula/dated-table.js";

/** How a row came to be here: read in the guidance itself, read in a restatement of it, or not read at all. */
export type ExposureGrade = "first-hand" | "second-hand" | "from memory";

/** How much of one type of product an adult is exposed to in a day. */
export interface ExposureRow {
  /** Product applied in a day [g/d]. */
  readonly amountPerDay: number;
  /** The same by body weight [mg/(kg·d)]; absent where the guidance gives none. */
  readonly amountPerBodyWeight?: number;
  /** The part that stays on [0 to 1]. */
  readonly retention: number;
  /** Product that stays on in a day [g/d]. */
  readonly exposurePerDay: number;
  /** The same by body weight [mg/(kg·d)]: a percentile of its own, and not the cell before it over one body weight. */
  readonly exposurePerBodyWeight: number;
  /** How far the row can be trusted. */
  readonly grade: ExposureGrade;
}

/** Daily exposures by type of product, with their edition. */
export interface ExposureTable extends DatedTable {
  /** The document and its table. */
  readonly edition: string;
  /** One row for each type of product. */
  readonly rows: Readonly<Record<string, ExposureRow>>;
}

/**
 * Daily exposures of adults by the 12th revision of the SCCS Notes of Guidance: Table 3A and the hair conditioner of Table
 * 3B. Every cell was read in a restatement of the guidance, none in the guidance itself: check it before an assessment.
 *
 * Cells are as printed: they are rounded one by one, and those by body weight are percentiles of their own.
 *
 * @source sccs-1647-22 Tables 3A (page 27) and 3B (page 28), in a restatement
 */
export const sccsDailyExposure: ExposureTable = {
  edition: "SCCS/1647/22, Tables 3A and 3B",
  jurisdiction: "EU",
  date: "2023-05-15",
  rows: {
    "shower gel": {
      amountPerDay: 18.67,
      amountPerBodyWeight: 279.2,
      retention: 0.01,
      exposurePerDay: 0.19,
      exposurePerBodyWeight: 2.79,
      grade: "second-hand",
    },
    shampoo: {
      amountPerDay: 10.46,
      amountPerBodyWeight: 150.49,
      retention: 0.01,
      exposurePerDay: 0.11,
      exposurePerBodyWeight: 1.51,
      grade: "second-hand",
    },
    "hair styling": {
      amountPerDay: 4,
      amountPerBodyWeight: 57.4,
      retention: 0.1,
      exposurePerDay: 0.4,
      exposurePerBodyWeight: 5.74,
      grade: "second-hand",
    },
    "body lotion": {
      amountPerDay: 7.82,
      amountPerBodyWeight: 123.2,
      retention: 1,
      exposurePerDay: 7.82,
      exposurePerBodyWeight: 123.2,
      grade: "second-hand",
    },
    "face cream": {
      amountPerDay: 1.54,
      amountPerBodyWeight: 24.14,
      retention: 1,
      exposurePerDay: 1.54,
      exposurePerBodyWeight: 24.14,
      grade: "second-hand",
    },
    "hand cream": {
      amountPerDay: 2.16,
      amountPerBodyWeight: 32.7,
      retention: 1,
      exposurePerDay: 2.16,
      exposurePerBodyWeight: 32.7,
      grade: "second-hand",
    },
    "liquid foundation": {
      amountPerDay: 0.51,
      amountPerBodyWeight: 7.9,
      retention: 1,
      exposurePerDay: 0.51,
      exposurePerBodyWeight: 7.9,
      grade: "second-hand",
    },
    "lipstick, lip salve": {
      amountPerDay: 0.057,
      amountPerBodyWeight: 0.9,
      retention: 1,
      exposurePerDay: 0.057,
      exposurePerBodyWeight: 0.9,
      grade: "second-hand",
    },
    "deodorant, not sprayed": {
      amountPerDay: 1.5,
      amountPerBodyWeight: 22.08,
      retention: 1,
      exposurePerDay: 1.5,
      exposurePerBodyWeight: 22.08,
      grade: "second-hand",
    },
    "deodorant, sprayed": {
      amountPerDay: 0.69,
      amountPerBodyWeight: 10,
      retention: 1,
      exposurePerDay: 0.69,
      exposurePerBodyWeight: 10,
      grade: "second-hand",
    },
    "toothpaste, adult": {
      amountPerDay: 2.75,
      amountPerBodyWeight: 43.29,
      retention: 0.05,
      exposurePerDay: 0.138,
      exposurePerBodyWeight: 2.16,
      grade: "second-hand",
    },
    mouthwash: {
      amountPerDay: 21.62,
      amountPerBodyWeight: 325.4,
      retention: 0.1,
      exposurePerDay: 2.16,
      exposurePerBodyWeight: 32.54,
      grade: "second-hand",
    },
    "hair conditioner": {
      amountPerDay: 3.92,
      retention: 0.01,
      exposurePerDay: 0.04,
      exposurePerBodyWeight: 0.67,
      grade: "second-hand",
    },
  },
};

/**
 * The other rows of Table 3B of the same guidance, all from memory: no default, and to be replaced by the guidance's own
 * before anything is decided on them. The daily amounts of the three products for the eyes agree with a restatement.
 *
 * @source sccs-1647-22 Table 3B (page 28), from memory
 */
export const sccsDailyExposureFromMemory: ExposureTable = {
  edition: "SCCS/1647/22, Table 3B, from memory",
  jurisdiction: "EU",
  date: "2023-05-15",
  rows: {
    "make-up remover": {
      amountPerDay: 5,
      retention: 0.1,
      exposurePerDay: 0.5,
      exposurePerBodyWeight: 8.33,
      grade: "from memory",
    },
    "eye shadow": {
      amountPerDay: 0.02,
      retention: 1,
      exposurePerDay: 0.02,
      exposurePerBodyWeight: 0.33,
      grade: "from memory",
    },
    mascara: {
      amountPerDay: 0.025,
      retention: 1,
      exposurePerDay: 0.025,
      exposurePerBodyWeight: 0.42,
      grade: "from memory",
    },
    eyeliner: {
      amountPerDay: 0.005,
      retention: 1,
      exposurePerDay: 0.005,
      exposurePerBodyWeight: 0.08,
      grade: "from memory",
    },
    "hand wash soap": {
      amountPerDay: 20,
      retention: 0.01,
      exposurePerDay: 0.2,
      exposurePerBodyWeight: 3.33,
      grade: "from memory",
    },
  },
};
