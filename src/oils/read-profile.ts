import { record } from "../guards.js";
import { shorthandOf } from "./fatty-acid.js";
import * as known from "./known.js";
import { type Profile, sharesOf } from "./profile.js";

/** A profile as the other functions of the room take it. */
export interface ReadProfile {
  /** Each acid by its shorthand [% of the fatty acids]. */
  readonly profile: Profile;
  /** What the percentages add up to [%]. */
  readonly sum: number;
}

/**
 * A fatty-acid profile from percentages under any usual name: `C18:1`, `18:2 n-6`, `oleic acid`.
 *
 * Acids that are not known, percentages out of range, acids listed twice and a sum off 100 are all reported at once. A
 * rest that the analysis did not name is left out of the list; how much may be missing is the caller's to say.
 *
 * @param input.percentages - Each acid in percent by mass of all fatty acids, 0 to 100.
 * @param input.sumTolerance - How far the sum may lie off 100 [%], 0 or more, by default 1.
 * @returns The profile under the shorthands, and its sum [%].
 * @throws CalculationError `input` with everything that is wrong.
 * @source definition
 * @example
 * ```ts
 * import { readProfile } from "gelwright/oils";
 * readProfile({ percentages: { "palmitic acid": 7, "C18:0": 2, "C18:1 n-9": 66, linoleic: 25 } }).profile["18:1 n-9"]; // => 66
 * ```
 */
export function readProfile(input: {
  readonly percentages: Readonly<Record<string, number>>;
  readonly sumTolerance?: number;
}): ReadProfile {
  const { percentages, sumTolerance } = record(input, "input", known.readProfile);
  const named = Object.entries(record(percentages, "percentages")).map(
    ([key, value]) => [shorthandOf(key) ?? key, value] as const,
  );
  const shares = sharesOf(named, sumTolerance, "percentages");
  return {
    profile: Object.fromEntries(shares.map(({ acid, value }) => [acid.shorthand, value])),
    sum: shares.reduce((sum, { value }) => sum + value, 0),
  };
}
