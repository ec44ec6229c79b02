import type { DatedTable } from "../formula/dated-table.js";
import { record } from "../guards.js";
import { compare, nearestDouble } from "../units/rational.js";
import { type AllergenTable, allergenTotals, type ProductUse } from "./allergen-totals.js";
import type { LabellingCaution } from "./caution.js";
import * as known from "./known.js";
import { type LabelLine, openLines } from "./line.js";

/** An ingredient or a substance with its share of the product. */
export interface NamedShare {
  /** Its name. */
  readonly name: string;
  /** Its mass fraction of the product [0 to 1]. */
  readonly share: number;
}

/** An allergen of the list that is in the product. */
export interface FoundAllergen extends NamedShare {
  /** The materials that bring it, the larger share first. */
  readonly sources: readonly NamedShare[];
}

/** Which fragrance allergens are to be named. */
export interface FragranceAllergens extends DatedTable {
  /** Those above the threshold, the larger share first. */
  readonly toName: readonly FoundAllergen[];
  /** Those found that are not above it. */
  readonly notAbove: readonly FoundAllergen[];
  /** Materials whose allergens are not stated: while there are any, `toName` may be too short. */
  readonly notStated: readonly string[];
  /**
   * Substances stated of materials that the list does not name, under this spelling at least: they are not looked at, so
   * compare the spelling with the list's.
   */
  readonly notInTable: readonly string[];
  /** The threshold [0 to 1]. */
  readonly threshold: number;
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/**
 * The fragrance allergens that a label has to name, each summed over all materials.
 *
 * $$w_a = \sum_i w_i\,w_{a,i}, \qquad \text{named if}\; w_a > w_\mathrm{threshold}$$
 *
 * Shares are summed as exact decimals of their text, so that a sum of exactly 0.001 % is not above 0.001 %. The list of
 * substances is the caller's, with its place and date; it has no default. The entries of a group are
 * summed. A material that is itself on the list counts whole, whatever it is there for, and what else of the list is in it
 * counts beside. A material without `allergens` is reported in `notStated`, and is not taken as free of them; a substance
 * that the list does not name is reported in `notInTable`.
 *
 * @param input.lines - The formula: names and amounts as text, premixes with their parts, and the allergens of each material.
 * @param input.use - Whether the product stays on the skin or is rinsed off.
 * @param input.table - The list, with its place, date and thresholds; by default `euAllergenThresholds` for `"EU"`, and none for any other place.
 * @returns What is to be named, what is not above the threshold, of which materials nothing is stated, and what the list does not name.
 * @throws CalculationError `input` where an argument is out of range, amounts do not add up to 100 %, or a name stands in two entries of the list.
 * @source eu-2023-1545 recitals, as an announcement of the regulation quotes them
 * @example
 * ```ts
 * import { fragranceAllergens } from "gelwright/labelling";
 * const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }, { name: "Limonene" }] };
 * const lines = [
 *   { name: "Almond Oil", amount: "q.s.", allergens: [] },
 *   { name: "Parfum", amount: "0.5 %", allergens: [{ name: "Linalool", amount: "0.8 %" }, { name: "Limonene", amount: "0.2 %" }] },
 * ];
 * const { toName, notAbove } = fragranceAllergens({ lines, use: "leave-on", table });
 * toName.map(({ name, share }) => [name, share]); // => [["Linalool", 0.00004]]
 * notAbove.map(({ name, share }) => [name, share]); // => [["Limonene", 0.00001]]
 * ```
 */
export function fragranceAllergens(input: {
  readonly lines: readonly LabelLine[];
  readonly use: ProductUse;
  readonly table: AllergenTable;
}): FragranceAllergens {
  const { lines, ...list } = record(input, "input", known.fragranceAllergens);
  const { found, threshold, ...totals } = allergenTotals(openLines(lines), list);
  const all = found.map(({ name, share, sources }) => ({
    above: compare(share, threshold) > 0,
    found: {
      name,
      share: nearestDouble(share),
      sources: sources.map((source) => ({ name: source.name, share: nearestDouble(source.share) })),
    },
  }));
  return {
    toName: all.filter(({ above }) => above).map((each) => each.found),
    notAbove: all.filter(({ above }) => !above).map((each) => each.found),
    threshold: nearestDouble(threshold),
    ...totals,
    caution: "responsible-person-decides",
  };
}
