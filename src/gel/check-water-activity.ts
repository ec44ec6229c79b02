import type { Check } from "../formula/check.js";
import { fraction, record, refuse } from "../guards.js";

/** Below this ISO 29621 counts a product among those of low microbiological risk. */
const limit = 0.75;

/**
 * Asks whether the water activity of the outer phase lies below 0.75, where ISO 29621 counts microbiological risk as low.
 *
 * It waives no test: a gel with water is preserved, and its preservation is shown by a challenge test. Give both values
 * where two laws differ; with the limit between them the answer is `not known`.
 *
 * @param input.min - Least water activity, 0 to 1, measured or computed.
 * @param input.max - Greatest water activity, 0 to 1; `min` unless given.
 * @param input.source - Where the values come from, in the caller's words.
 * @returns The check, with its caution.
 * @throws CalculationError `input` where an argument is no fraction, the two are the wrong way round, or the source no text.
 * @source iso-29621 from memory
 * @example
 * ```ts
 * import { checkWaterActivity } from "gelwright/gel";
 * checkWaterActivity({ min: 0.72, max: 0.77, source: "two laws" }).verdict; // => "not known"
 * ```
 */
export function checkWaterActivity(input: {
  readonly min: number;
  readonly max?: number;
  readonly source: string;
}): Check {
  const { min, max = input.min, source } = record(input, "input");
  const [low, high] = [fraction(min, "min"), fraction(max, "max")];
  if (high < low) refuse("input", "max", high, `the least (${low}) or more`);
  if (typeof source !== "string" || source === "") refuse("input", "source", source, "a text");
  const verdict = high < limit ? "met" : low < limit ? "not known" : "not met";
  const where = { met: "lies below", "not known": "may lie on either side of", "not met": "is not below" }[verdict];
  return {
    id: "water-activity",
    verdict,
    statement: `The water activity ${where} 0.75, below which ISO 29621 counts microbiological risk as low. This waives no test: preservation is shown by a challenge test.`,
    value: low === high ? shown(low) : `${shown(low)} to ${shown(high)}`,
    limit: "below 0.75",
    source: `${source}; limit from ISO 29621`,
  };
}

/** Three digits; as many as it takes where three would put it on the limit. */
function shown(value: number): string {
  const short = Number(value.toPrecision(3));
  return String(short === limit ? value : short);
}
