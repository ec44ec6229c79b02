import { fraction, record, refuse } from "../guards.js";
import { slack } from "../numeric/decimal.js";
import { contentOf, type IndexName, type Ingredient, indexName, type Line, linesOf, massOf } from "./ingredient.js";
import * as known from "./known.js";

/** How far an ingredient can be raised. */
export interface LargestShare {
  /** Its mass fraction of the product [0 to 1]. */
  readonly share: number;
  /** What stops it there: the claim would be lost, or what it replaces is used up. */
  readonly limitedBy: "claim" | "nothing left to replace";
}

/**
 * The most of an ingredient that a product can hold and still keep a claimed figure.
 *
 * What it takes the place of is either the rest of the product in proportion, or one other ingredient
 * (`replacing`). The figure then runs straight from its value with none of the ingredient to that at the
 * greatest share there is room for, and the claim is kept up to
 *
 * $$x = x_\mathrm{room}\,\frac{C_\mathrm{none} - C_\mathrm{claim}}{C_\mathrm{none} - C_\mathrm{room}}$$
 *
 * Unknown indices count at the least that they can be, so the claim holds whatever they turn out to be.
 * A claim that holds only from some share upward is answered with the upper end. For a claim without
 * formulation water, leave that water out of the list; the share is then of the product less its water.
 *
 * @param input.ingredients - What is in the product, as for `productContent`; the names concerned must be there once.
 * @param input.ingredient - The name of the ingredient to be raised; its own mass may be 0.
 * @param input.replacing - The name of the ingredient that it takes the place of; left out: all others in proportion.
 * @param input.claim - The figure to be kept [0 to 1].
 * @param input.content - Which of the four figures; default natural origin.
 * @returns The share of the product [0 to 1], and what limits it.
 * @throws CalculationError `unreachable` where no share keeps the claim, saying what can be reached; `input` where an argument is out of range or a name is not there once.
 * @source definition
 * @example
 * ```ts
 * import { largestShare } from "gelwright/natural-origin";
 * const max = largestShare({
 *   ingredients: [
 *     { name: "sunflower oil", mass: 91, naturalOrigin: 1 },
 *     { name: "gel former", mass: 9, naturalOrigin: 0.75 },
 *   ],
 *   ingredient: "gel former",
 *   claim: 0.95,
 * });
 * max.share; // => 0.2
 * max.limitedBy; // => "claim"
 * ```
 */
export function largestShare(input: {
  readonly ingredients: readonly Ingredient[];
  readonly ingredient: string;
  readonly replacing?: string;
  readonly claim: number;
  readonly content?: IndexName;
}): LargestShare {
  const {
    ingredients,
    ingredient,
    replacing,
    claim,
    content = "naturalOrigin",
  } = record(input, "input", known.largestShare);
  const lines = linesOf(ingredients);
  const index = indexName(content);
  fraction(claim, "claim");

  const raised = named(lines, ingredient, "ingredient");
  const others = lines.filter((line) => line !== raised);
  let room = 1;
  let full = raised.min[index];
  let none: number;
  if (replacing === undefined) {
    massOf(others, "others");
    none = contentOf(others, index, "min");
  } else {
    const replaced = named(others, replacing, "replacing");
    const mass = massOf(lines);
    const step = full - replaced.min[index];
    room = (raised.mass + replaced.mass) / mass;
    none = contentOf(lines, index, "min") - (raised.mass / mass) * step;
    full = none + room * step;
  }
  // Rounding of doubles may be missing, so that a figure of exactly 0.95 meets 0.95.
  const enough = claim - slack;
  if (full >= enough) return { share: room, limitedBy: "nothing left to replace" };
  if (none < enough) refuse("unreachable", "claim", claim, `at most ${+Math.max(none, full).toFixed(12)}`);
  return { share: (room * Math.max(none - claim, 0)) / (none - full), limitedBy: "claim" };
}

function named(lines: readonly Line[], name: string, path: string): Line {
  const [line, another] = lines.filter((each) => each.name === name);
  return line?.name !== undefined && !another ? line : refuse("input", path, name, "one ingredient's name");
}
