import { list, positive, record, result, temperature } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { root } from "../numeric/root.js";
import { anyLaw, type Charge, heatGiven } from "./charge.js";
import * as known from "./known.js";

/**
 * The temperature of a mix of charges of different temperature, before anything is lost to the room.
 *
 * $$\sum_i m_i \int_{T_\mathrm{mix}}^{T_i} c_i\,\mathrm dT = 0 \qquad c_i\ \text{constant}:\; T_\mathrm{mix} = \frac{\sum_i m_i\,c_i\,T_i}{\sum_i m_i\,c_i}$$
 *
 * Where a specific heat is a law, what melts takes its latent heat from the others, and each law has to hold from its
 * charge's temperature to that of the mix. A charge whose specific heat is a number may not melt or set on the way.
 * Cold oil on a melt that sets may take minutes to reach it: this is the final temperature, without loss to the room.
 *
 * @param input.charges - What is poured together: mass [kg], specific heat [J/(kg·K)] or specific-heat law, and temperature [°C] of each; at least one.
 * @returns The common temperature [°C], between the coldest and the warmest charge.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends before the common temperature.
 * @source openstax-university-physics-2 section 1.4, calorimetry
 * @example
 * ```ts
 * import { mixingTemperature } from "gelwright/heat";
 * mixingTemperature({
 *   charges: [
 *     { mass: 70, specificHeat: 2150, temperature: 82 },
 *     { mass: 30, specificHeat: 1980, temperature: 21 },
 *   ],
 * }); // => 64.73749404478323
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * mixingTemperature({
 *   charges: [
 *     { mass: 70, specificHeat: oil, temperature: 82 },
 *     { mass: 30, specificHeat: oil, temperature: 21 },
 *   ],
 * }); // => 63.87835669311306
 * ```
 */
export function mixingTemperature(input: { readonly charges: readonly Charge[] }): number {
  const { charges } = record(input, "input", known.mixingTemperature);
  return anyLaw(list(charges, "charges", 1)) ? byLaw(charges) : closedForm(charges);
}

/** The mean of the temperatures, weighted by heat capacity. */
function closedForm(charges: readonly Charge[]): number {
  let heat = 0;
  let capacity = 0;
  charges.forEach((charge, i) => {
    const at = `charges[${i}]`;
    const { mass, specificHeat, temperature: warmth } = record(charge, at);
    const mc = positive(mass, `${at}.mass`) * positive(specificHeat, `${at}.specificHeat`);
    heat += mc * temperature(warmth, `${at}.temperature`);
    capacity += mc;
  });
  return result(heat / capacity, "mixing temperature");
}

/** The temperature at which the charges give off no more than they take up. */
function byLaw(charges: readonly Charge[]): number {
  const given = heatGiven(charges, "charges");
  // Where a law ends at its charge's own temperature, the search still has to look at the others'.
  const sought = heatGiven(charges, "charges", "extend");
  const own = charges.map(({ temperature }) => temperature);
  const coldest = minOf(own);
  const warmest = maxOf(own);
  const common = coldest === warmest ? coldest : root(sought, coldest, warmest, "mixing temperature", 1e-12);
  given(common);
  return common;
}
