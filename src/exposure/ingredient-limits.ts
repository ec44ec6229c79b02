import { type DatedTable, readDatedTable } from "../formula/dated-table.js";
import { byName, nameKey, readName } from "../formula/ingredient-name.js";
import { merged } from "../formula/merged.js";
import { list, record, refuse } from "../guards.js";
import { exactShare, withinWhole } from "../units/exact.js";
import { compare, nearestDouble, type Rational } from "../units/rational.js";
import type { ExposureCaution } from "./caution.js";
import * as known from "./known.js";

/** The largest share of an ingredient in one type of product. */
export interface IngredientLimit {
  /** The ingredient. */
  readonly name: string;
  /** The type of product, in the caller's words. */
  readonly productType: string;
  /** The largest share, as text: that share is within the limit. */
  readonly max: string;
}

/** Limits with the place and the day for which they hold: the caller's data, with no default. */
export interface LimitTable extends DatedTable {
  /** One row for each ingredient and type of product. */
  readonly rows: readonly IngredientLimit[];
}

/** One ingredient against the table. */
export interface LimitAnswer {
  /** The ingredient. */
  readonly name: string;
  /** Its mass fraction of the product [0 to 1]. */
  readonly share: number;
  /** The largest mass fraction [0 to 1]; absent where the table has none. */
  readonly max?: number;
  /** `"no-row"` where the table says nothing of the ingredient in this type of product, which is no permission. */
  readonly status: "within" | "above" | "no-row";
}

/** A product against a table of limits. */
export interface IngredientLimits extends DatedTable {
  /** One answer for each ingredient, by name. */
  readonly answers: readonly LimitAnswer[];
  /** The code of the caution. */
  readonly caution: ExposureCaution;
}

/**
 * The ingredients of a product compared with a table of maximum shares by type of product.
 *
 * Equal names are summed and compared as exact decimals of their text: a share of exactly the limit is within it. The
 * table is the caller's, with its place and date; it has no default. The caller picks the type of product.
 *
 * @param input.ingredients - The ingredients with their shares of the product as text, premixes opened.
 * @param input.productType - The type of product, as the table names it.
 * @param input.table - The limits, with their place and date.
 * @returns An answer for each ingredient.
 * @throws CalculationError `input` where an argument is out of range, an ingredient adds up to more than 100 %, or two rows are for one ingredient and type of product.
 * @source definition
 * @example
 * ```ts
 * import { ingredientLimits } from "gelwright/exposure";
 * const { answers } = ingredientLimits({
 *   ingredients: [{ name: "Essential Oil", amount: "0.3 %" }, { name: "Essential Oil", amount: "0.3 %" }],
 *   productType: "body lotion",
 *   table: {
 *     jurisdiction: "house rule",
 *     date: "2026-11-28",
 *     rows: [{ name: "Essential Oil", productType: "body lotion", max: "0.6 %" }],
 *   },
 * });
 * answers[0]?.status; // => "within"
 * ```
 */
export function ingredientLimits(input: {
  readonly ingredients: readonly { readonly name: string; readonly amount: string }[];
  readonly productType: string;
  readonly table: LimitTable;
}): IngredientLimits {
  const { ingredients, productType, table } = record(input, "input", known.ingredientLimits);
  const limits = limitsFor(record(table, "table").rows, nameKey(productType, "productType"));
  const shares = list(ingredients, "ingredients", 1).map((ingredient, i) => {
    const at = `ingredients[${i}]`;
    const { name, amount } = record(ingredient, at);
    return {
      name: readName(name, `${at}.name`),
      key: nameKey(name, `${at}.name`),
      share: exactShare(amount, `${at}.amount`),
    };
  });
  const answers = merged(shares).map(({ name, key, share }): LimitAnswer => {
    withinWhole(share, `ingredients.${name}`);
    const max = limits.get(key);
    if (!max) return { name, share: nearestDouble(share), status: "no-row" };
    return {
      name,
      share: nearestDouble(share),
      max: nearestDouble(max),
      status: compare(share, max) > 0 ? "above" : "within",
    };
  });
  return {
    answers: [...answers].sort(byName),
    ...readDatedTable(table, "table"),
    caution: "qualified-assessor-decides",
  };
}

function limitsFor(rows: readonly IngredientLimit[], productType: string): ReadonlyMap<string, Rational> {
  const limits = new Map<string, Rational>();
  for (const [i, row] of list(rows, "table.rows").entries()) {
    const at = `table.rows[${i}]`;
    const { name, productType: type, max } = record(row, at);
    const key = nameKey(name, `${at}.name`);
    const limit = exactShare(max, `${at}.max`);
    if (nameKey(type, `${at}.productType`) !== productType) continue;
    if (limits.has(key)) refuse("input", at, name, "one row for each ingredient and type of product");
    limits.set(key, limit);
  }
  return limits;
}
