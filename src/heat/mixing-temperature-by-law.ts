import { record } from "../guards.js";
import { root } from "../numeric/root.js";
import { type ChargeByLaw, heatGiven } from "./charge-by-law.js";

/**
 * The temperature at which charges meet whose specific heats depend on temperature, or of which some melt or set on the way.
 *
 * $$\sum_i m_i \int_{T_\mathrm{mix}}^{T_i} c_i\,\mathrm dT = 0$$
 *
 * It is the balance of `mixingTemperature` with laws, and what melts takes its latent heat from the others. Each law
 * has to hold from its charge's temperature to that of the mix. Cold oil on a melt that sets may take minutes to
 * come to this: it is the end, before anything is lost to the room.
 *
 * @param input.charges - What is poured together: mass [kg], specific-heat law and temperature [°C] of each; at least one.
 * @returns The common temperature [°C], between the coldest and the warmest charge.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends before the common temperature.
 * @source openstax-university-physics-2 section 1.4, calorimetry
 * @example
 * ```ts
 * import { mixingTemperatureByLaw } from "gelwright/heat";
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * mixingTemperatureByLaw({
 *   charges: [
 *     { mass: 70, specificHeat: oil, temperature: 82 },
 *     { mass: 30, specificHeat: oil, temperature: 21 },
 *   ],
 * }); // => 63.87835669311306
 * ```
 */
export function mixingTemperatureByLaw(input: { readonly charges: readonly ChargeByLaw[] }): number {
  const { charges } = record(input, "input");
  const given = heatGiven(charges, "charges");
  // Where a law ends at its charge's own temperature, the search still has to look at the others'.
  const sought = heatGiven(charges, "charges", "extend");
  const own = charges.map(({ temperature }) => temperature);
  const coldest = Math.min(...own);
  const warmest = Math.max(...own);
  const common = coldest === warmest ? coldest : root(sought, coldest, warmest, "mixing temperature", 1e-12);
  given(common);
  return common;
}
