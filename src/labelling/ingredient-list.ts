import { type DatedTable, readDatedTable } from "../formula/dated-table.js";
import { merged, type Named } from "../formula/merged.js";
import { record, refuse } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { compare, nearestDouble } from "../units/rational.js";
import { type AllergenTable, type AllergenTotals, allergenTotals, type ProductUse } from "./allergen-totals.js";
import type { LabellingCaution } from "./caution.js";
import type { NamedShare } from "./fragrance-allergens.js";
import * as known from "./known.js";
import { type LabelLine, openLines } from "./line.js";

/** By which rule ingredients follow one another, with the place and the day for which it holds. */
export interface OrderRule extends DatedTable {
  /** The share above which they stand by descending weight, as text. */
  readonly orderedAbove: string;
  /** Where an ingredient of exactly that share stands. */
  readonly exactly: "ordered" | "any order";
}

/**
 * The order of the EU: descending weight, any order below 1 %, colourants last. The text speaks of less than 1 % and of
 * more than 1 %; exactly 1 % is kept in the ordered part.
 *
 * @source eu-1223-2009 Article 19(1)(g), in restatements
 */
export const euIngredientOrder: OrderRule = {
  jurisdiction: "EU",
  date: "2009-11-30",
  orderedAbove: "1 %",
  exactly: "ordered",
};

/** What a list of fragrance allergens adds to a label. */
export interface AllergensOnLabel extends DatedTable {
  /** Allergens above the threshold that are no line of the formula, the larger share first. */
  readonly added: readonly string[];
  /** Materials whose allergens are not stated: while there are any, names may be missing. */
  readonly notStated: readonly string[];
  /** Substances stated of materials that the list does not name, under this spelling at least. */
  readonly notInTable: readonly string[];
}

/** The ingredients in the order of a label. */
export interface IngredientList extends DatedTable {
  /** All names, in the order of the label. */
  readonly names: readonly string[];
  /** Those that stand by descending weight; equal shares stand by name. */
  readonly ordered: readonly NamedShare[];
  /** Those that may follow in any order, here by descending weight too. */
  readonly anyOrder: readonly NamedShare[];
  /** Colourants, which may follow in any order, here by descending weight too. */
  readonly colourants: readonly NamedShare[];
  /** What the list of fragrance allergens adds; absent if none was given: then none of them was looked for. */
  readonly allergens?: AllergensOnLabel;
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/**
 * The ingredients in the order of the label: descending weight when added, then those that may stand in any order,
 * then colourants.
 *
 * Weights are those put in, before anything evaporates. Premixes are opened and equal names merged, so that an
 * ingredient of two materials appears once, with its sum; names are compared without capitals and spaces. Shares are
 * compared as exact decimals of their text. The list does not depend on the order of the lines. A fragrance is one line
 * under one name (`"Parfum"`); with `allergens`, the substances above the threshold are added to the list by their
 * share.
 *
 * @param input.lines - The formula: names and amounts as text, premixes with their parts.
 * @param input.rule - The rule of order; left out: `euIngredientOrder`.
 * @param input.allergens - To add fragrance allergens: the use of the product and the list, as for `fragranceAllergens`.
 * @returns Names and shares, in the three groups and in one row, with place and date of the rule.
 * @throws CalculationError `input` where an argument is out of range, amounts do not add up to 100 %, or an ingredient is a colourant in one line and not in another.
 * @source eu-1223-2009 Article 19(1)(g), in restatements
 * @example
 * ```ts
 * import { ingredientList } from "gelwright/labelling";
 * const list = ingredientList({
 *   lines: [
 *     { name: "Mica", amount: "2 %", colourant: true },
 *     { name: "Tocopherol", amount: "0.5 %" },
 *     { name: "Almond Oil", amount: "q.s." },
 *     {
 *       name: "gel base", amount: "20 %",
 *       parts: [{ name: "Gel Former", amount: "70 %" }, { name: "Almond Oil", amount: "30 %" }],
 *     },
 *   ],
 * });
 * list.names; // => ["Almond Oil", "Gel Former", "Tocopherol", "Mica"]
 * list.ordered[0]?.share; // => 0.835
 * ```
 */
export function ingredientList(input: {
  readonly lines: readonly LabelLine[];
  readonly rule?: OrderRule;
  readonly allergens?: { readonly use: ProductUse; readonly table: AllergenTable };
}): IngredientList {
  const { lines, rule = euIngredientOrder, allergens } = record(input, "input", known.ingredientList);
  const { orderedAbove, exactly } = record(rule, "rule");
  const border = exactShare(orderedAbove, "rule.orderedAbove");
  if (exactly !== "ordered" && exactly !== "any order")
    refuse("input", "rule.exactly", exactly, '"ordered" or "any order"');
  const leaves = openLines(lines);
  const colours = new Set(leaves.filter(({ colourant }) => colourant).map(({ key }) => key));
  const other = leaves.filter(({ colourant }) => !colourant);
  const both = other.find(({ key }) => colours.has(key));
  if (both) refuse("input", "lines", both.name, "an ingredient that is a colourant in every line or in none");

  const keys = new Set(leaves.map(({ key }) => key));
  const totals =
    allergens === undefined ? undefined : allergenTotals(leaves, record(allergens, "allergens"), "allergens.");
  const added = totals?.found.filter(({ key, share }) => compare(share, totals.threshold) > 0 && !keys.has(key)) ?? [];
  const all = merged([...other, ...added]);
  const isOrdered = ({ share }: Named): boolean => compare(share, border) >= (exactly === "ordered" ? 0 : 1);
  const shown = (entries: readonly Named[]): readonly NamedShare[] =>
    entries.map(({ name, share }) => ({ name, share: nearestDouble(share) }));
  const ordered = shown(all.filter(isOrdered));
  const anyOrder = shown(all.filter((entry) => !isOrdered(entry)));
  const colourants = shown(merged(leaves.filter(({ colourant }) => colourant)));
  return {
    names: [...ordered, ...anyOrder, ...colourants].map(({ name }) => name),
    ordered,
    anyOrder,
    colourants,
    ...(totals && { allergens: addedTo(added, totals) }),
    ...readDatedTable(rule, "rule"),
    caution: "responsible-person-decides",
  };
}

function addedTo(
  added: readonly Named[],
  { notStated, notInTable, jurisdiction, date }: AllergenTotals,
): AllergensOnLabel {
  return { added: added.map(({ name }) => name), notStated, notInTable, jurisdiction, date };
}
