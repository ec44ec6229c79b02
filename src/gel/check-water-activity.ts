import { fraction, record, refuse } from "../guards.js";
import type { GelAnswer } from "./answer.js";
import * as known from "./known.js";

/** Below this ISO 29621 counts a product among those of low microbiological risk. */
const limit = 0.75;

/**
 * Whether the water activity of the outer phase lies below 0.75, where ISO 29621 treats the microbiological risk as
 * low.
 *
 * It does not replace a test: a gel with water needs preservation, shown by a challenge test. For a computed figure
 * give both ends, as with `waterActivityBand`; for a measured one give the same value twice. If the limit lies between
 * the ends, the answer is `not-known`.
 *
 * @param input.min - Smallest water activity, 0 to 1, measured or computed.
 * @param input.max - Largest water activity, `min` to 1.
 * @returns The answer, with the water activity and its limit. A value at the limit does not count as below it.
 * @throws CalculationError `input` where an argument is no fraction, or the two are the wrong way round.
 * @source iso-29621 second-hand
 * @example
 * ```ts
 * import { checkWaterActivity } from "gelwright/gel";
 * checkWaterActivity({ min: 0.72, max: 0.77 }).verdict; // => "not-known"
 * ```
 */
export function checkWaterActivity(input: { readonly min: number; readonly max: number }): GelAnswer<"water-activity"> {
  const { min, max } = record(input, "input", known.checkWaterActivity);
  const [low, high] = [fraction(min, "min"), fraction(max, "max")];
  if (high < low) refuse("input", "max", high, `the min (${low}) or more`);
  const isBelow = high < limit;
  const isAbove = low >= limit;
  return {
    id: "water-activity",
    verdict: isBelow ? "met" : isAbove ? "not-met" : "not-known",
    side: isAbove ? "above" : "none",
    figure: { min: low, max: high },
    limit: { max: limit },
  };
}
