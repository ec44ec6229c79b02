import { record } from "../guards.js";
import { type IndexName, type Ingredient, indexName, linesOf, massOf } from "./ingredient.js";
import * as known from "./known.js";

/** What one ingredient keeps a figure from being 1. */
export interface Shortfall {
  /** Its place in the list that was given, from 0. */
  readonly position: number;
  /** Its name, if it has one. */
  readonly name?: string;
  /** What it costs the figure for certain [0 to 1]. */
  readonly min: number;
  /** What it may cost the figure while its index is unknown [0 to 1]; equal to `min` where it is known. */
  readonly max: number;
}

/**
 * Which ingredients cost the most of a figure, the dearest first.
 *
 * $$s_i = \frac{m_i\,(1 - I_i)}{\sum_j m_j}, \qquad \sum_i s_i = 1 - C$$
 *
 * Ingredients that cost nothing are left out. An unknown index is ranked by what it may cost, so that the
 * declaration most worth asking a supplier for stands high up. For the figure without formulation water,
 * leave that water out of the list.
 *
 * @param input.ingredients - What is in the product, as for `productContent`.
 * @param input.content - Which of the four figures; default natural origin.
 * @returns The ingredients that keep the figure below 1; all `max` add up to 1 less the least figure, all `min` to 1 less the greatest.
 * @throws CalculationError `input` where an argument is out of range or two indices contradict each other.
 * @source definition
 * @example
 * ```ts
 * import { shortfalls } from "gelwright/natural-origin";
 * const [first] = shortfalls({
 *   ingredients: [
 *     { name: "sunflower oil", mass: 90, naturalOrigin: 1 },
 *     { name: "gel former", mass: 10, naturalOrigin: 0.75 },
 *   ],
 * });
 * first?.name; // => "gel former"
 * first?.max; // => 0.025
 * ```
 */
export function shortfalls(input: {
  readonly ingredients: readonly Ingredient[];
  readonly content?: IndexName;
}): readonly Shortfall[] {
  const { ingredients, content = "naturalOrigin" } = record(input, "input", known.shortfalls);
  const lines = linesOf(ingredients);
  const index = indexName(content);
  const mass = massOf(lines);
  return lines
    .map(({ name, ...line }, position) => ({
      position,
      ...(name !== undefined && { name }),
      min: (line.mass / mass) * (1 - line.max[index]),
      max: (line.mass / mass) * (1 - line.min[index]),
    }))
    .filter((line) => line.max > 0)
    .sort((a, b) => b.max - a.max || b.min - a.min);
}
