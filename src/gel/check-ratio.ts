import type { Check } from "../formula/check.js";
import { notNegative, record, refuse } from "../guards.js";

/**
 * Asks whether a ratio of oil to gel former lies in the range in which the gel former is known to work.
 *
 * The library states no working range of its own: it comes from the supplier's data or from trials, and
 * without one the answer is `not known`. A ratio within 1e-12 of a limit lies on it, so that the rounding of
 * a percentage decides nothing.
 *
 * @param input.ratio - Oil per gel former by mass, 0 or more.
 * @param input.min - Least ratio of the working range, if there is one.
 * @param input.max - Greatest ratio of the working range, if there is one.
 * @param input.source - Where the working range comes from, in the caller's words.
 * @returns The check, with the ratio and the range as text.
 * @throws CalculationError `input` where an argument is no number or out of range, or the range is the wrong way round.
 * @source definition
 * @example
 * ```ts
 * import { checkRatio } from "gelwright/gel";
 * checkRatio({ ratio: 11.5, min: 8, max: 12, source: "bench trials" }).verdict; // => "met"
 * ```
 */
export function checkRatio(input: {
  readonly ratio: number;
  readonly min?: number;
  readonly max?: number;
  readonly source?: string;
}): Check {
  const { ratio, min, max, source = "working range stated by the caller" } = record(input, "input");
  const found = notNegative(ratio, "ratio");
  const low = min === undefined ? undefined : notNegative(min, "min");
  const high = max === undefined ? undefined : notNegative(max, "max");
  if (low !== undefined && high !== undefined && high < low)
    refuse("input", "max", high, `the least ratio (${low}) or more`);
  if (typeof source !== "string" || source === "") refuse("input", "source", source, "a text");

  const value = `${shown(found, low, high)} parts of oil to 1 of gel former`;
  const check = { id: "gel-former-ratio", value, source };
  if (low === undefined && high === undefined)
    return {
      ...check,
      verdict: "not known",
      statement: "No working range is stated for this gel former.",
      limit: "not stated",
    };
  const slack = 1e-12 * found;
  const scant = low !== undefined && found < low - slack;
  const rich = high !== undefined && found > high + slack;
  return {
    ...check,
    verdict: scant || rich ? "not met" : "met",
    statement: scant
      ? "There is less oil to the gel former than its working range."
      : rich
        ? "There is more oil to the gel former than its working range."
        : "The ratio of oil to gel former lies in its working range.",
    limit: [low === undefined ? "" : `at least ${low}`, high === undefined ? "" : `at most ${high}`]
      .filter((text) => text !== "")
      .join(", "),
  };
}

/** Four digits; twelve, all that a ratio can differ in, where four would put it on a limit that it misses. */
function shown(ratio: number, ...limits: readonly (number | undefined)[]): string {
  const short = Number(ratio.toPrecision(4));
  return String(short !== ratio && limits.includes(short) ? Number(ratio.toPrecision(12)) : short);
}
