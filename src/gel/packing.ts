import { fraction, record } from "../guards.js";
import type { GelAnswer } from "./answer.js";
import * as known from "./known.js";
import { volumeFractionClosestPacking } from "./volume-fraction.js";

/** Random close packing of equal spheres, as measured. */
export const randomPacking: number = 0.64;

/** How far a volume fraction of oil lies from where droplets begin to press on one another, and from a maximum oil fraction. */
export interface Packing {
  /** Above random close packing, 0.64: below 0 the droplets swim. */
  readonly aboveRandom: number;
  /** Above the closest packing of equal spheres, 0.7405: from here on every droplet is flattened. */
  readonly aboveClosest: number;
  /** What is left to the caller's own maximum oil fraction; absent where none is given, below 0 where it is passed. */
  readonly belowMax?: number;
}

/**
 * How far the oil is past the packing at which strength begins, and how near the maximum oil fraction found in trials.
 *
 * $$\varphi - 0.64 \qquad \varphi - \frac{\pi}{3\sqrt2} \qquad \varphi_\mathrm{max} - \varphi$$
 *
 * Neither packing is where the emulsion inverts. That maximum oil fraction is set by the surfactant and the rate of addition: it is the
 * caller's, from trials.
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.volumeFractionOilMax - Volume fraction at which trials inverted or broke, 0 to 1, if it is known.
 * @returns The three distances.
 * @throws CalculationError `input` where an argument is no fraction.
 * @source openstax-chemistry section 10.6, the closest packing; 0.64 from memory
 * @example
 * ```ts
 * import { packingOf } from "gelwright/gel";
 * packingOf({ volumeFractionOil: 0.75, volumeFractionOilMax: 0.875 }).belowMax; // => 0.125
 * ```
 */
export function packingOf(input: {
  readonly volumeFractionOil: number;
  readonly volumeFractionOilMax?: number;
}): Packing {
  const { volumeFractionOil, volumeFractionOilMax } = record(input, "input", known.packingOf);
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  const distances = { aboveRandom: oil - randomPacking, aboveClosest: oil - volumeFractionClosestPacking };
  return volumeFractionOilMax === undefined
    ? distances
    : { ...distances, belowMax: fraction(volumeFractionOilMax, "volumeFractionOilMax") - oil };
}

/**
 * Asks whether the oil stays below the maximum oil fraction at which the emulsion inverted or broke in trials.
 *
 * The maximum depends on the surfactant and on the rate of addition, and comes from trials: without one the answer is
 * `not-known`.
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.volumeFractionOilMax - The maximum oil fraction, 0 to 1, if it is known.
 * @returns The answer, with the oil fraction and its limit. A value at the maximum does not count as below it.
 * @throws CalculationError `input` where an argument is no fraction.
 * @source definition
 * @example
 * ```ts
 * import { checkOilFraction } from "gelwright/gel";
 * checkOilFraction({ volumeFractionOil: 0.86, volumeFractionOilMax: 0.84 }).verdict; // => "not-met"
 * ```
 */
export function checkOilFraction(input: {
  readonly volumeFractionOil: number;
  readonly volumeFractionOilMax?: number;
}): GelAnswer<"maximum-oil-fraction"> {
  const { volumeFractionOil, volumeFractionOilMax } = record(input, "input", known.checkOilFraction);
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  const answer = { id: "maximum-oil-fraction", figure: { min: oil, max: oil } } as const;
  if (volumeFractionOilMax === undefined) return { ...answer, verdict: "not-known", side: "none" };
  const max = fraction(volumeFractionOilMax, "volumeFractionOilMax");
  const isBelow = oil < max;
  return { ...answer, verdict: isBelow ? "met" : "not-met", side: isBelow ? "none" : "above", limit: { max } };
}
