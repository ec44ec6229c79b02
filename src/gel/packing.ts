import type { Check } from "../formula/check.js";
import { fraction, record, refuse } from "../guards.js";
import { volumeFractionClosestPacking } from "./volume-fraction.js";

/** Random close packing of equal spheres, as measured. */
const random = 0.64;

/** How far a volume fraction of oil lies from where droplets begin to press on one another, and from a ceiling. */
export interface Packing {
  /** Above random close packing, 0.64: below 0 the droplets swim. */
  readonly aboveRandom: number;
  /** Above the closest packing of equal spheres, 0.7405: from here on every droplet is flattened. */
  readonly aboveClosest: number;
  /** What is left to the caller's own ceiling; absent where none is given, below 0 where it is passed. */
  readonly belowCeiling?: number;
}

/**
 * How far the oil is past the packing at which strength begins, and how near the ceiling found in trials.
 *
 * $$\varphi - 0.64 \qquad \varphi - \frac{\pi}{3\sqrt2} \qquad \varphi_\mathrm{max} - \varphi$$
 *
 * Neither packing is where the emulsion inverts. That ceiling is set by the surfactant and the rate of addition: it is the
 * caller's, from trials.
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.ceiling - Volume fraction at which trials inverted or broke, 0 to 1, if it is known.
 * @returns The three distances.
 * @throws CalculationError `input` where an argument is no fraction.
 * @source openstax-chemistry section 10.6, the closest packing; 0.64 from memory
 * @example
 * ```ts
 * import { packingOf } from "gelwright/gel";
 * packingOf({ volumeFractionOil: 0.75, ceiling: 0.875 }).belowCeiling; // => 0.125
 * ```
 */
export function packingOf(input: { readonly volumeFractionOil: number; readonly ceiling?: number }): Packing {
  const { volumeFractionOil, ceiling } = record(input, "input");
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  const distances = { aboveRandom: oil - random, aboveClosest: oil - volumeFractionClosestPacking };
  return ceiling === undefined ? distances : { ...distances, belowCeiling: fraction(ceiling, "ceiling") - oil };
}

/**
 * Asks whether the oil stays below the ceiling at which the emulsion inverted or broke in trials.
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.ceiling - The ceiling, 0 to 1, if it is known.
 * @param input.source - Where the ceiling comes from, in the caller's words.
 * @returns The check; `not known` without a ceiling.
 * @throws CalculationError `input` where an argument is no fraction, or the source no text.
 * @source definition
 * @example
 * ```ts
 * import { checkOilFraction } from "gelwright/gel";
 * checkOilFraction({ volumeFractionOil: 0.86, ceiling: 0.84, source: "bench trials" }).verdict; // => "not met"
 * ```
 */
export function checkOilFraction(input: {
  readonly volumeFractionOil: number;
  readonly ceiling?: number;
  readonly source?: string;
}): Check {
  const { volumeFractionOil, ceiling, source = "ceiling stated by the caller" } = record(input, "input");
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  if (typeof source !== "string" || source === "") refuse("input", "source", source, "a text");
  const check = { id: "oil-fraction-ceiling", value: `${Number((100 * oil).toPrecision(4))} % v/v of oil`, source };
  if (ceiling === undefined)
    return {
      ...check,
      verdict: "not known",
      statement:
        "No ceiling is stated: it depends on the surfactant and on the rate of addition, and comes from trials.",
      limit: "not stated",
    };
  const met = oil < fraction(ceiling, "ceiling");
  return {
    ...check,
    verdict: met ? "met" : "not met",
    statement: met
      ? "The oil stays below the ceiling found in trials."
      : "The oil reaches the ceiling at which trials inverted or broke.",
    limit: `below ${Number((100 * ceiling).toPrecision(4))} % v/v`,
  };
}
