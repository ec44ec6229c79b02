import { fraction, list, notNegative, record, refuse, wholeNumber } from "../guards.js";
import { stepsDown } from "../numeric/decimal.js";
import * as known from "./known.js";
import type { LegalSource } from "./legal-table.js";

/** How an inspector tests a batch of packs: counts and limits. */
export interface BatchTest {
  /** Packs whose content is measured at first. */
  readonly sampleSize: number;
  /** So many of them may be short by more than the tolerable error. */
  readonly defectivesMax: number;
  /** A second sample for batches that the first does not decide; left out where one sample decides. */
  readonly second?: {
    /** Short packs in the first sample from which the batch is rejected at once. */
    readonly rejectedFrom: number;
    /** Packs in the second sample. */
    readonly sampleSize: number;
    /** So many of both samples together may be short by more than the tolerable error. */
    readonly defectivesMax: number;
  };
  /** The mean of some packs of the first sample may not be below nominal less `factor` standard deviations of the sample. */
  readonly mean: {
    /** Packs that count for the mean, not more than `sampleSize`. */
    readonly sampleSize: number;
    /** 0 where the mean itself may not be below nominal. */
    readonly factor: number;
  };
  /** Whether a pack that is short by more than two tolerable errors rejects the batch. */
  readonly noneBeyondTwo: boolean;
}

/** The tests of an act, by size of the batch. */
export interface BatchTestTable extends LegalSource {
  readonly rows: readonly {
    /** Packs in the batch, from. */
    readonly packsMin: number;
    /** Packs in the batch, up to and with; `null` where there is no end. */
    readonly packsMax: number | null;
    readonly test: BatchTest;
  }[];
}

/**
 * The test that an act has for a batch of this size.
 *
 * @param input.table - The tests that hold where and when the packs are sold; there is no default.
 * @param input.packs - Packs in the batch, a whole number.
 * @returns The test, as plain data for `shareRejected`, `targetFill` and `acceptSample`.
 * @throws CalculationError `input` where an argument is out of range, `range` where the table has no row for the batch:
 *   small batches are tested pack by pack.
 * @source definition; each table names its own source
 * @example
 * ```ts
 * import { batchTestFor, batchTestsEec1976 } from "gelwright/packing";
 * batchTestFor({ table: batchTestsEec1976, packs: 5000 }).sampleSize; // => 80
 * ```
 */
export function batchTestFor(input: { readonly table: BatchTestTable; readonly packs: number }): BatchTest {
  const { table, packs } = record(input, "input", known.batchTestFor);
  const count = wholeNumber(packs, "packs", 1);
  const row = list(record(table, "table").rows, "table.rows", 1).find((one, i) => {
    const { packsMin, packsMax } = record(one, `table.rows[${i}]`);
    return (
      count >= wholeNumber(packsMin, `table.rows[${i}].packsMin`, 1) &&
      (packsMax === null || count <= wholeNumber(packsMax, `table.rows[${i}].packsMax`, 1))
    );
  });
  if (!row)
    return refuse("range", "packs", count, "a batch for which the table has a row; small ones are tested pack by pack");
  return readTest(row.test, "table.rows.test");
}

/**
 * The test of a small batch, of which every pack is measured: the mean may not be below nominal, and a share may be short.
 *
 * $$\bar x \ge Q_n \qquad c = \lfloor n\,p \rfloor$$
 *
 * Acts measure all packs of batches below 100 (European Union, United Kingdom) or 12 (United States, New Zealand). The
 * United Kingdom lets 5 % of them be short.
 *
 * @param input.packs - Packs in the batch, a whole number from 1 to 1000.
 * @param input.shareDefectiveMax - Share of packs that may be short by more than the tolerable error, 0 to 1.
 * @param input.noneBeyondTwo - Whether one that is short by more than two rejects the batch; default `false`.
 * @returns The test, as plain data for `shareRejected`, `targetFill` and `acceptSample`.
 * @throws CalculationError `input` where an argument is out of range.
 * @source uk-si-2006-659 Schedule 2, paragraphs 3.6 and 4.7
 * @example
 * ```ts
 * import { allPacksTest } from "gelwright/packing";
 * allPacksTest({ packs: 60, shareDefectiveMax: 0.05 }).defectivesMax; // => 3
 * ```
 */
export function allPacksTest(input: {
  readonly packs: number;
  readonly shareDefectiveMax: number;
  readonly noneBeyondTwo?: boolean;
}): BatchTest {
  const { packs, shareDefectiveMax, noneBeyondTwo = false } = record(input, "input", known.allPacksTest);
  const sampleSize = wholeNumber(packs, "packs", 1, 1000);
  const defectivesMax = stepsDown(sampleSize * fraction(shareDefectiveMax, "shareDefectiveMax"));
  return readTest({ sampleSize, defectivesMax, mean: { sampleSize, factor: 0 }, noneBeyondTwo }, "input");
}

/** The test, checked. */
export function readTest(test: BatchTest, path: string): BatchTest {
  const { sampleSize, defectivesMax, second, mean, noneBeyondTwo } = record(test, path, known.batchTest);
  const size = wholeNumber(sampleSize, `${path}.sampleSize`, 1, 1000);
  const { sampleSize: meanSize, factor } = record(mean, `${path}.mean`);
  const checked = {
    sampleSize: size,
    defectivesMax: wholeNumber(defectivesMax, `${path}.defectivesMax`, 0, size),
    mean: {
      sampleSize: wholeNumber(meanSize, `${path}.mean.sampleSize`, 1, size),
      factor: notNegative(factor, `${path}.mean.factor`),
    },
    noneBeyondTwo,
  };
  if (checked.mean.factor > 1e6) refuse("input", `${path}.mean.factor`, factor, "a factor up to 1e6");
  if (typeof noneBeyondTwo !== "boolean") refuse("input", `${path}.noneBeyondTwo`, noneBeyondTwo, "true or false");
  if (checked.mean.factor > 0 && checked.mean.sampleSize < 2)
    refuse("input", `${path}.mean.sampleSize`, meanSize, "two packs at least, which have a standard deviation");
  if (second === undefined) return checked;
  const at = `${path}.second`;
  const { rejectedFrom, sampleSize: more, defectivesMax: both } = record(second, at);
  return {
    ...checked,
    second: {
      rejectedFrom: wholeNumber(rejectedFrom, `${at}.rejectedFrom`, checked.defectivesMax + 1, size + 1),
      sampleSize: wholeNumber(more, `${at}.sampleSize`, 1, 1000),
      defectivesMax: wholeNumber(both, `${at}.defectivesMax`, checked.defectivesMax, 2000),
    },
  };
}
