import { byName } from "../formula/ingredient-name.js";
import { record, refuse } from "../guards.js";
import { compare, nearestDouble, nought } from "../units/rational.js";
import {
  type CertifiedClass,
  type CertifiedFigure,
  type CertifiedLine,
  certifiedLines,
  shortfallsOf,
} from "./certified-line.js";
import * as known from "./known.js";

/** A figure that a standard wants to be large. */
export type CertifiedGoal = Exclude<CertifiedFigure, "petrochemical moieties of product" | "other of product">;

const goals: readonly CertifiedGoal[] = [
  "organic of product",
  "organic of physically processed",
  "organic of agro-ingredients",
  "natural origin of product",
];

/** How much one ingredient takes from a figure of a certification. */
export interface CertificationShortfall {
  /** Its name. */
  readonly name: string;
  /** Its class: water and minerals are never organic, whatever is certified. */
  readonly class: CertifiedClass;
  /** What it takes for certain, as a share of what the figure is of [0 to 1]. */
  readonly min: number;
  /** What it may take while something is not stated [0 to 1]; equal to `min` if all is. */
  readonly max: number;
}

/**
 * Which ingredients keep an organic or natural figure below 100 %, the one that takes most from it first.
 *
 * $$s_i = \frac{w_i\,(1 - c_i)}{\sum_j w_j}, \qquad \sum_i s_i = 1 - C$$
 *
 * over the lines of the figure's classes, c being what counts of a line. Ingredients that count whole are left out. What
 * is not stated is ranked by what it may take.
 *
 * @param input.lines - The formula, as for `certifiedShares`.
 * @param input.figure - Which figure is meant.
 * @returns The ingredients that keep the figure below 1.
 * @throws CalculationError `input` where an argument is out of range or amounts do not add up to 100 %.
 * @source definition
 * @example
 * ```ts
 * import { certificationShortfalls } from "gelwright/labelling";
 * const [first] = certificationShortfalls({
 *   lines: [
 *     { name: "Almond Oil", amount: "80 %", class: "physically processed agro-ingredient", organic: "90 %" },
 *     { name: "Gel Former", amount: "20 %", class: "chemically processed agro-ingredient", organic: "0 %" },
 *   ],
 *   figure: "organic of product",
 * });
 * [first?.name, first?.max]; // => ["Gel Former", 0.2]
 * ```
 */
export function certificationShortfalls(input: {
  readonly lines: readonly CertifiedLine[];
  readonly figure: CertifiedGoal;
}): readonly CertificationShortfall[] {
  const { lines, figure } = record(input, "input", known.certificationShortfalls);
  if (!goals.includes(figure)) refuse("input", "figure", figure, `one of ${goals.join(", ")}`);
  return shortfallsOf(certifiedLines(lines), figure)
    .filter(({ max }) => compare(max, nought) > 0)
    .sort((a, b) => compare(b.max, a.max) || compare(b.min, a.min) || byName(a.line, b.line))
    .map(({ line, min, max }) => ({
      name: line.name,
      class: line.class,
      min: nearestDouble(min),
      max: nearestDouble(max),
    }));
}
