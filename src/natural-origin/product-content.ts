import { record } from "../guards.js";
import { type ContentBounds, contentOf, type IndexName, type Ingredient, type Line, linesOf } from "./ingredient.js";
import * as known from "./known.js";

/** One content of a product, as fractions from 0 to 1. */
export interface Content {
  /** Over the whole product. */
  readonly withFormulationWater: ContentBounds;
  /** Over the product less its formulation water; absent where nothing else is in it. */
  readonly withoutFormulationWater?: ContentBounds;
}

/**
 * The natural, natural origin, organic and organic origin content of a product.
 *
 * $$C = \frac{\sum_i m_i\,I_i}{\sum_i m_i}$$
 *
 * Without formulation water, that water leaves both sums. Formulation water counts as natural (index 1)
 * and never as organic (index 0). Water that came inside a raw material stays where it is.
 *
 * An index that is not given makes a range of the figure. The range is as narrow as the other indices of
 * that ingredient allow, because organic is part of natural and of organic origin, and both of these are
 * part of natural origin; indices that contradict this are refused. ISO 16128 sets no threshold for a
 * claim, and neither does this.
 *
 * @param input.ingredients - What is in the product: mass [kg] and indices [0 to 1] of each; at least one with a mass.
 * @returns Each of the four contents [0 to 1], between bounds that are equal where every index is known.
 * @throws CalculationError `input` where an argument is out of range or two indices contradict each other.
 * @source iso-16128-2-2017 clause 5, from memory
 * @source cosmed-2021, the indices of formulation water
 * @source from memory, that organic is part of natural and both are part of natural origin (the table of indices in iso-16128-2-2017)
 * @example
 * ```ts
 * import { productContent } from "gelwright/natural-origin";
 * const gel = productContent({
 *   ingredients: [
 *     { name: "sunflower oil", mass: 88, naturalOrigin: 1 },
 *     { name: "gel former", mass: 9, naturalOrigin: 0.7 },
 *     { name: "fragrance", mass: 3 },
 *   ],
 * });
 * gel.naturalOrigin.withFormulationWater.min; // => 0.943
 * gel.naturalOrigin.withFormulationWater.max; // => 0.973
 * ```
 */
export function productContent(input: {
  readonly ingredients: readonly Ingredient[];
}): Readonly<Record<IndexName, Content>> {
  const lines = linesOf(record(input, "input", known.productContent).ingredients);
  const rest = lines.filter((line) => !line.water);
  const bounds = (of: readonly Line[], index: IndexName): ContentBounds => ({
    min: contentOf(of, index, "min"),
    max: contentOf(of, index, "max"),
  });
  const content = (index: IndexName): Content => ({
    withFormulationWater: bounds(lines, index),
    ...(rest.some((line) => line.mass) && { withoutFormulationWater: bounds(rest, index) }),
  });
  return {
    natural: content("natural"),
    naturalOrigin: content("naturalOrigin"),
    organic: content("organic"),
    organicOrigin: content("organicOrigin"),
  };
}
