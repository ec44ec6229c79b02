import { type DatedTable, readDatedTable } from "../formula/dated-table.js";
import { nameKey } from "../formula/ingredient-name.js";
import { list, record, refuse } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { compare, nearestDouble, total } from "../units/rational.js";
import type { LabellingCaution } from "./caution.js";
import {
  type Certified,
  type CertifiedClass,
  type CertifiedFigure,
  type CertifiedLine,
  certifiedClasses,
  certifiedFigures,
  certifiedLines,
  figureOf,
} from "./certified-line.js";
import * as known from "./known.js";

/** What a standard asks of one type of product. */
export interface CertifiedThreshold {
  /** The type of product, in the caller's words. */
  readonly productType: string;
  /** Which figure is meant. */
  readonly figure: CertifiedFigure;
  /** The smallest figure that meets it, as text: `"95 %"`. */
  readonly min?: string;
  /** The largest figure that meets it, as text. */
  readonly max?: string;
}

/** The thresholds of a standard, with its name as `jurisdiction` and its date: the caller's data, with no default. */
export interface CertifiedTable extends DatedTable {
  /** The thresholds; several rows may be for one type of product. */
  readonly rows: readonly CertifiedThreshold[];
}

/** One threshold against the product. */
export interface ThresholdAnswer {
  /** Which figure is meant. */
  readonly figure: CertifiedFigure;
  /** The smallest figure that meets it [0 to 1]. */
  readonly min?: number;
  /** The largest figure that meets it [0 to 1]. */
  readonly max?: number;
  /** `"not-known"` if what is not stated decides, `"not-asked"` if the product has nothing of the class. */
  readonly verdict: "met" | "not-met" | "not-known" | "not-asked";
}

/** The shares of a product by classes, and its figures, which are shares of the product or of a class [0 to 1]. */
export interface CertifiedShares {
  /** The mass fraction of each class [0 to 1]. */
  readonly classes: Readonly<Record<CertifiedClass, number>>;
  /** Each figure between its bounds [0 to 1], which are equal where all is stated; absent where its class is empty. */
  readonly figures: Readonly<Partial<Record<CertifiedFigure, { readonly min: number; readonly max: number }>>>;
  /** The thresholds for the type of product; empty without a table. */
  readonly thresholds: readonly ThresholdAnswer[];
  /** The table that was asked. */
  readonly table?: DatedTable;
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/**
 * The organic and natural shares of a product by the classes of certification standards, against the caller's
 * thresholds.
 *
 * $$O = \sum_i w_i\,o_i, \qquad O_\mathrm{class} = \frac{\sum_{i \in \mathrm{class}} w_i\,o_i}{\sum_{i \in \mathrm{class}} w_i}, \qquad N = 1 - \sum_{i \in \mathrm{other}} w_i - \sum_{i \in \mathrm{chemical}} w_i\,p_i$$
 *
 * with the organic share o of an agro-ingredient and its share p of moieties of petrochemical origin. Water and
 * minerals are of natural origin and never organic. What is not stated may be anything between nothing and all, which
 * makes a range. Shares are compared as exact decimals of their text: exactly 95 % meets 95 %. A standard has further
 * rules (which ingredients it admits, which it requires to be organic), which are not checked here.
 *
 * @param input.lines - The formula: names, amounts, classes, and what is organic and petrochemical of each, as text.
 * @param input.productType - The type of product, as the table names it. The caller picks it; without it no threshold is applied.
 * @param input.table - The thresholds, with the standard's name and date.
 * @returns The shares of the classes, the figures between bounds, and each threshold's answer.
 * @throws CalculationError `input` where an argument is out of range, amounts do not add up to 100 %, or the table has no row for the type of product.
 * @source definition
 * @source organic-natural-standard-2018 sections 6.1, 6.2 and 7.3, in a restatement; which classes count to natural origin, from memory
 * @example
 * ```ts
 * import { certifiedShares } from "gelwright/labelling";
 * const { figures, thresholds } = certifiedShares({
 *   lines: [
 *     { name: "Almond Oil", amount: "80 %", class: "physically processed agro-ingredient", organic: "100 %" },
 *     {
 *       name: "Gel Former", amount: "15 %", class: "chemically processed agro-ingredient",
 *       organic: "0 %", petrochemical: "20 %",
 *     },
 *     { name: "Mica", amount: "5 %", class: "mineral" },
 *   ],
 *   productType: "leave-on",
 *   table: {
 *     jurisdiction: "a standard",
 *     date: "2026-11-28",
 *     rows: [{ productType: "leave-on", figure: "organic of physically processed", min: "95 %" }],
 *   },
 * });
 * figures["organic of product"]; // => { min: 0.8, max: 0.8 }
 * figures["natural origin of product"]; // => { min: 0.97, max: 0.97 }
 * thresholds[0]?.verdict; // => "met"
 * ```
 */
export function certifiedShares(input: {
  readonly lines: readonly CertifiedLine[];
  readonly productType?: string;
  readonly table?: CertifiedTable;
}): CertifiedShares {
  const { lines, productType, table } = record(input, "input", known.certifiedShares);
  const read = certifiedLines(lines);
  if ((productType === undefined) !== (table === undefined))
    refuse("input", productType === undefined ? "productType" : "table", undefined, "both, or neither");
  const figures: Partial<Record<CertifiedFigure, { min: number; max: number }>> = {};
  for (const figure of certifiedFigures) {
    const between = figureOf(read, figure);
    if (between) figures[figure] = { min: nearestDouble(between.min), max: nearestDouble(between.max) };
  }
  const shareOf = (each: CertifiedClass): number =>
    nearestDouble(total(read.filter((line) => line.class === each).map(({ share }) => share)));
  return {
    classes: Object.fromEntries(certifiedClasses.map((each) => [each, shareOf(each)])) as CertifiedShares["classes"],
    figures,
    thresholds: table && productType !== undefined ? answers(read, productType, table) : [],
    ...(table && { table: readDatedTable(table, "table") }),
    caution: "certifier-decides",
  };
}

function answers(
  lines: readonly Certified[],
  productType: string,
  { rows }: CertifiedTable,
): readonly ThresholdAnswer[] {
  const wanted = nameKey(productType, "productType");
  const found = list(rows, "table.rows").flatMap((row, i) => {
    const at = `table.rows[${i}]`;
    const { figure, ...ends } = record(row, at, known.certifiedThreshold);
    if (!certifiedFigures.includes(figure))
      return refuse("input", `${at}.figure`, figure, `one of ${certifiedFigures.join(", ")}`);
    const min = ends.min === undefined ? undefined : exactShare(ends.min, `${at}.min`);
    const max = ends.max === undefined ? undefined : exactShare(ends.max, `${at}.max`);
    if (min === undefined && max === undefined) return refuse("input", at, row, "a min, a max or both");
    if (nameKey(ends.productType, `${at}.productType`) !== wanted) return [];

    const between = figureOf(lines, figure);
    const inside = (value: NonNullable<typeof min>): boolean =>
      (min === undefined || compare(value, min) >= 0) && (max === undefined || compare(value, max) <= 0);
    let verdict: ThresholdAnswer["verdict"] = "not-known";
    if (!between) verdict = "not-asked";
    else if (inside(between.min) && inside(between.max)) verdict = "met";
    else if ((min && compare(between.max, min) < 0) || (max && compare(between.min, max) > 0)) verdict = "not-met";
    return [{ figure, ...(min && { min: nearestDouble(min) }), ...(max && { max: nearestDouble(max) }), verdict }];
  });
  return found.length ? found : refuse("input", "productType", productType, "a type of product that the table names");
}
