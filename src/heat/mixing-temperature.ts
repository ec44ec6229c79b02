import { list, positive, record, result, temperature } from "../guards.js";

/** A mass that brings its own temperature to a mix. */
export interface Charge {
  /** Mass [kg], above 0. */
  readonly mass: number;
  /** Specific heat [J/(kg·K)], above 0. */
  readonly specificHeat: number;
  /** Temperature before mixing [°C]. */
  readonly temperature: number;
}

/**
 * The temperature at which charges of different temperature meet, before anything is lost to the room.
 *
 * $$T_\mathrm{mix} = \frac{\sum_i m_i\,c_i\,T_i}{\sum_i m_i\,c_i}$$
 *
 * No charge may melt or set on the way: latent heat is not in this balance.
 *
 * @param input.charges - What is poured together: mass [kg], specific heat [J/(kg·K)] and temperature [°C] of each; at least one.
 * @returns The common temperature [°C], between the coldest and the warmest charge.
 * @throws CalculationError `input` where an argument is no number or out of range.
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
 * ```
 */
export function mixingTemperature(input: { readonly charges: readonly Charge[] }): number {
  const { charges } = record(input, "input");
  let heat = 0;
  let capacity = 0;
  list(charges, "charges", 1).forEach((charge, i) => {
    const at = `charges[${i}]`;
    const { mass, specificHeat, temperature: warmth } = record(charge, at);
    const mc = positive(mass, `${at}.mass`) * positive(specificHeat, `${at}.specificHeat`);
    heat += mc * temperature(warmth, `${at}.temperature`);
    capacity += mc;
  });
  return result(heat / capacity, "mixing temperature");
}
