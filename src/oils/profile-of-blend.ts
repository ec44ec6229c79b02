import { record } from "../guards.js";
import { fractionsOf } from "./fractions.js";
import * as known from "./known.js";
import { type Profile, sharesOf } from "./profile.js";
import { ratioOf } from "./ratio.js";
import { perMass } from "./values-of-acids.js";

/**
 * The fatty-acid profile of a blend of oils.
 *
 * $$p_j = \frac{\sum_i m_i\,a_i\,p_{ij}}{\sum_i m_i\,a_i}, \qquad a_i = \frac{3 \bar M_i}{3 \bar M_i + 0.038049\ \mathrm{kg/mol}}$$
 *
 * The acids are mixed by their own mass, and an oil of short acids has fewer of them in a kilogram: $$a_i$$ is their
 * share of the triglyceride. So ester and double bonds of the blend are what the oils brought, to the last digit.
 *
 * @param input.parts - Mass [kg] (or share), 0 or more, and profile of each oil [% of its fatty acids]; at least one.
 * @param input.sumTolerance - How far the sum of a profile may lie off 100 [%], by default 1; each is brought to 100.
 * @returns The profile of the blend [% of its fatty acids].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { profileOfBlend } from "gelwright/oils";
 * const parts = [
 *   { mass: 30, profile: { "8:0": 60, "10:0": 40 } },
 *   { mass: 70, profile: { "18:1": 80, "18:2": 20 } },
 * ];
 * profileOfBlend({ parts })["18:1"]; // => 56.58431724423903
 * ```
 */
export function profileOfBlend(input: {
  readonly parts: readonly { readonly mass: number; readonly profile: Profile }[];
  readonly sumTolerance?: number;
}): Profile {
  const { parts, sumTolerance } = record(input, "input", known.profileOfBlend);
  const masses = fractionsOf(parts, "mass");
  const blend: Record<string, number> = {};
  let sum = 0;
  parts.forEach(({ profile }, i) => {
    const path = `parts[${i}].profile`;
    const shares = sharesOf(Object.entries(record(profile, path)), sumTolerance, path);
    const acids = shares.map(({ acid }) => acid);
    const percentages = shares.map(({ value }) => value);
    const perTriglyceride = (masses[i] as number) / ratioOf({ top: perMass }, acids, percentages);
    for (const { acid, value } of shares) {
      blend[acid.shorthand] = (blend[acid.shorthand] ?? 0) + value * perTriglyceride;
      sum += value * perTriglyceride;
    }
  });
  return Object.fromEntries(Object.entries(blend).map(([acid, amount]) => [acid, (100 * amount) / sum]));
}
