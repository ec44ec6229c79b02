import { notNegative, record, refuse } from "../guards.js";
import type { GelAnswer } from "./answer.js";
import * as known from "./known.js";

/** A ratio this near to a limit, in parts of itself, lies on it. */
const slack = 1e-12;

/**
 * Whether a ratio of oil to gel former lies in the range in which the gel former is known to work.
 *
 * The library states no working range of its own: it comes from the supplier's data or from trials, and
 * without one the answer is `not-known`. A ratio within 1e-12 of a limit lies on it, so that the rounding of a
 * percentage does not change the answer.
 *
 * @param input.ratio - Oil per gel former by mass, 0 or more.
 * @param input.min - Smallest ratio of the working range, 0 or more, if there is one.
 * @param input.max - Largest ratio of the working range, `min` or more, if there is one.
 * @returns The answer, with the ratio and the range [kg oil per kg gel former].
 * @throws CalculationError `input` where an argument is no number or out of range, or the range is the wrong way round.
 * @source definition
 * @example
 * ```ts
 * import { checkRatio } from "gelwright/gel";
 * checkRatio({ ratio: 11.5, min: 8, max: 12 }).verdict; // => "met"
 * checkRatio({ ratio: 12.5, min: 8, max: 12 }).side; // => "above"
 * ```
 */
export function checkRatio(input: {
  readonly ratio: number;
  readonly min?: number;
  readonly max?: number;
}): GelAnswer<"gel-former-ratio"> {
  const { ratio, min, max } = record(input, "input", known.checkRatio);
  const found = notNegative(ratio, "ratio");
  const low = min === undefined ? undefined : notNegative(min, "min");
  const high = max === undefined ? undefined : notNegative(max, "max");
  if (low !== undefined && high !== undefined && high < low) refuse("input", "max", high, `the min (${low}) or more`);
  const answer = { id: "gel-former-ratio", figure: { min: found, max: found } } as const;
  if (low === undefined && high === undefined) return { ...answer, verdict: "not-known", side: "none" };
  const isBelow = low !== undefined && found < low - slack * found;
  const isAbove = high !== undefined && found > high + slack * found;
  return {
    ...answer,
    verdict: isBelow || isAbove ? "not-met" : "met",
    side: isBelow ? "below" : isAbove ? "above" : "none",
    limit: { ...(low !== undefined && { min: low }), ...(high !== undefined && { max: high }) },
  };
}
