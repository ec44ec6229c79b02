import { readDatedTable, readText } from "../formula/dated-table.js";
import { fraction, notNegative, record, refuse } from "../guards.js";
import type { ExposureCaution } from "./caution.js";
import { type ExposureRow, type ExposureTable, sccsDailyExposure } from "./exposure-table.js";
import * as known from "./known.js";

/** The exposure to one type of product, with the table that it comes from. */
export interface DailyExposure extends ExposureRow {
  /** The type of product, as the table names it. */
  readonly productType: string;
  /** The document and its table. */
  readonly edition: string;
  /** Where the table holds. */
  readonly jurisdiction: string;
  /** The day whose state it gives. */
  readonly date: string;
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

const grades = ["first-hand", "second-hand", "from memory"];

/**
 * How much of a type of product an adult is exposed to in a day, by a table of the guidance.
 *
 * The caller picks the type of product; nothing is chosen for a gel by its name or use. The row comes back as printed,
 * with its edition and its grade. The exposure by body weight is a percentile of its own: 7.82 g/d of body lotion are
 * 123.2 mg/(kg·d) and not 7.82 g over 60 kg.
 *
 * @param input.productType - A row of the table: `"body lotion"`.
 * @param input.table - The table; left out: `sccsDailyExposure`. One from memory is never a default.
 * @returns Amounts [g/d, mg/(kg·d)], the part that stays on [0 to 1], and where it stands.
 * @throws CalculationError `input` where the table has no such row or a cell is out of range.
 * @source sccs-1647-22 Tables 3A (page 27) and 3B (page 28), in a restatement
 * @example
 * ```ts
 * import { dailyExposure } from "gelwright/exposure";
 * const { exposurePerBodyWeight, grade } = dailyExposure({ productType: "body lotion" });
 * exposurePerBodyWeight; // => 123.2
 * grade; // => "second-hand"
 * ```
 */
export function dailyExposure(input: { readonly productType: string; readonly table?: ExposureTable }): DailyExposure {
  const { productType, table = sccsDailyExposure } = record(input, "input", known.dailyExposure);
  const { edition, rows } = record(table, "table");
  record(rows, "table.rows");
  if (typeof productType !== "string" || !Object.hasOwn(rows, productType))
    return refuse("input", "productType", productType, `one of ${Object.keys(rows).join("; ")}`);
  const at = `table.rows.${productType}`;
  const row = record(rows[productType] as ExposureRow, at, known.exposureRow);
  if (!grades.includes(row.grade)) refuse("input", `${at}.grade`, row.grade, `one of ${grades.join(", ")}`);
  return {
    productType,
    amountPerDay: notNegative(row.amountPerDay, `${at}.amountPerDay`),
    ...(row.amountPerBodyWeight !== undefined && {
      amountPerBodyWeight: notNegative(row.amountPerBodyWeight, `${at}.amountPerBodyWeight`),
    }),
    retention: fraction(row.retention, `${at}.retention`),
    exposurePerDay: notNegative(row.exposurePerDay, `${at}.exposurePerDay`),
    exposurePerBodyWeight: notNegative(row.exposurePerBodyWeight, `${at}.exposurePerBodyWeight`),
    grade: row.grade,
    edition: readText(edition, "table.edition"),
    ...readDatedTable(table, "table"),
    caution: "qualified-assessor-decides",
  };
}
