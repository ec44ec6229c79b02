import { CalculationError, type Fault } from "../error.js";
import { record, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import { extremesOf, feasible } from "./extremes.js";
import * as known from "./known.js";
import { entriesOf, type Profile, type ProfileRanges, type Range, sharesOf } from "./profile.js";
import { type Ratio, ratioOf } from "./ratio.js";
import { type ProfileValues, valuesOfAcids } from "./values-of-acids.js";

/**
 * How sure a calculated iodine value is against a titration of another day [g/100 g]: over 13 oils it was 2.4 above on
 * the mean, 3.6 rms, 7.5 at most.
 */
export const iodineValueBand: Band = { by: "difference", min: -8, max: 4, basis: "spread", sources: ["fgregg-svo"] };

/** The same values, each as a range. */
export type ProfileValueRanges = { readonly [Value in keyof ProfileValues]: Range };

/**
 * What follows from a fatty-acid profile: molar masses, calculated iodine and saponification value, oxidisability.
 *
 * $$\mathrm{IV} = \sum_i f_i\,p_i, \qquad \mathrm{SV} = \frac{3 \cdot 56.1 \cdot 1000}{3 \sum_i x_i M_i + 92.09 - 3 \cdot 18}, \qquad \mathrm{Cox} = \frac{p_{18:1} + 10.3\,p_{18:2} + 21.6\,p_{18:3}}{100}$$
 *
 * $$\bar M = \frac{\sum_i p_i}{\sum_i p_i/M_i}, \qquad \bar M_\mathrm{triglyceride} = 3 \bar M + 0.038049\ \mathrm{kg/mol}, \qquad \mathrm{APE} = \sum_i 2\,p_i\,[d_i \ge 1], \qquad \mathrm{BAPE} = \sum_i (d_i - 1)\,p_i\,[d_i \ge 2]$$
 *
 * The iodine factors are the method's own for 16:1, 18:1, 18:2, 18:3, 20:1 and 22:1; for other unsaturated acids, which
 * the method does not list, theory gives them (3 d · 253.809/M, which agrees with the printed ones to 0.001). What
 * the percentages leave unnamed counts as saturated in the iodine value, as in the method, and as the mean of the rest
 * in everything that is per mole or per kilogram.
 *
 * Knothe's formula of the allylic positions names 18:1, 18:2 and 18:3 (from memory); here every unsaturated acid counts,
 * as its definition by positions has it, so that ours is higher by 2 for each % of 16:1, 20:1 and 22:1: 186 against 179
 * for a rapeseed oil. The molar saponification value has the same form with the mean by amount, the triglyceride by its
 * atoms (38.049 in place of 38.09 g/mol) and potassium hydroxide by its own (56.105 in place of 56.1).
 *
 * The calculated iodine value is low where there are more than 0.5 % of unsaponifiables or little unsaturation; the
 * saponification value knows no free acids or partial glycerides. Oxidisability and positions rank oils: tocopherols,
 * peroxides, metals and light decide how long one keeps.
 *
 * @param input.profile - Each acid by its shorthand in percent by mass of the fatty acids.
 * @param input.sumTolerance - How far the sum may lie off 100 [%], 0 or more, by default 1.
 * @returns The values, with their units in `ProfileValues`.
 * @throws CalculationError `input` with every fault of the profile at once.
 * @source aocs-cd-1c-85, the iodine value and its limits
 * @source pettursson-2002, other unsaturated acids by the same reasoning
 * @source aocs-cd-3a-94, the saponification value
 * @source fatemi-hammond-1980, the Cox value; knothe-2002, the position equivalents
 * @example
 * ```ts
 * import { profileValues } from "gelwright/oils";
 * const sunflower = profileValues({ profile: { "16:0": 5, "18:0": 6, "18:1": 30, "18:2": 59 } });
 * sunflower.iodineValue; // => 127.988
 * sunflower.oxidisability; // => 6.377
 * ```
 */
export function profileValues(input: { readonly profile: Profile; readonly sumTolerance?: number }): ProfileValues {
  const { profile, sumTolerance } = record(input, "input", known.profileValues);
  const shares = sharesOf(Object.entries(record(profile, "profile")), sumTolerance);
  const acids = shares.map(({ acid }) => acid);
  const percentages = shares.map(({ value }) => value);
  return each((ratio, name) => result(ratioOf(ratio, acids, percentages), name));
}

/**
 * What follows from the limits of a fatty-acid profile: the minimum and maximum of each value over all oils that fit them.
 *
 * $$\min_p, \max_p \; \frac{\sum_i a_i\,p_i}{\sum_i b_i\,p_i} \quad \text{where} \quad l_i \le p_i \le u_i, \quad \sum_i p_i = 100$$
 *
 * The sum of all lower limits is no oil, nor is that of all upper ones: where one acid is high another has to be low.
 * These are the true extremes, each reached by a profile of its own; the values of every profile within the limits lie
 * between them. Equations and their limits stand at `profileValues`.
 *
 * @param input.ranges - Each acid by its shorthand with its minimum and maximum percentage; an acid that is not listed is absent.
 * @returns The values as ranges, with their units in `ProfileValues`.
 * @throws CalculationError `input` with every fault of the limits at once, `unreachable` where no profile within them adds up to 100 %.
 * @source aocs-cd-1c-85, aocs-cd-3a-94, fatemi-hammond-1980 and knothe-2002 as `profileValues`
 * @source dinkelbach-1967, the extremes of a ratio, from memory
 * @example
 * ```ts
 * import { profileValueRanges } from "gelwright/oils";
 * const ranges = { "16:0": [4, 10], "18:1": [60, 80], "18:2": [15, 30] } as const;
 * profileValueRanges({ ranges }).iodineValue; // => [90.48, 108.72]
 * ```
 */
export function profileValueRanges(input: { readonly ranges: ProfileRanges }): ProfileValueRanges {
  const faults: Fault[] = [];
  const entries = entriesOf(
    Object.entries(record(record(input, "input", known.profileValueRanges).ranges, "ranges")),
    "ranges",
    faults,
    faultOfLimits,
  );
  if (faults.length) throw new CalculationError("input", faults);
  feasible(entries, "ranges");
  return each((ratio) => extremesOf(ratio, entries));
}

function faultOfLimits(limits: Range): string | undefined {
  const [min, max] = Array.isArray(limits) ? limits : [];
  return typeof min === "number" && typeof max === "number" && 0 <= min && min <= max && max <= 100
    ? undefined
    : "two percentages from 0 to 100, the least first";
}

function each<T>(of: (ratio: Ratio, name: string) => T): { readonly [Value in keyof ProfileValues]: T } {
  const named = Object.entries(valuesOfAcids).map(([name, ratio]) => [name, of(ratio, name)]);
  return Object.fromEntries(named) as { readonly [Value in keyof ProfileValues]: T };
}
