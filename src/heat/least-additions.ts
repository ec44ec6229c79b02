import { record, refuse, result, temperature } from "../guards.js";
import { largestAddition } from "./additions.js";
import { type Charge, mixingTemperature } from "./mixing-temperature.js";

/** In how many parts an addition goes in, and how cold the mix becomes at its coldest. */
export interface EqualAdditions {
  /** How many equal parts, 1 or more. */
  readonly number: number;
  /** Mass of each [kg]. */
  readonly mass: number;
  /** The mix at its coldest [°C]: after the first part, unless specific heats vary. */
  readonly temperatureLowest: number;
}

/**
 * The least number of equal parts in which an addition goes in without bringing the mix below a temperature, when the
 * vessel is brought back to the melt's temperature before each part.
 *
 * $$n = \left\lceil \frac{m_c}{m_{c,\mathrm{max}}} \right\rceil \qquad m_{c,\mathrm{max}} = \frac{m_h\,c_h\,(T_h - T_\mathrm{least})}{c_c\,(T_\mathrm{least} - T_c)}$$
 *
 * The first part cools the most, since the vessel holds the least then. Without heat between the parts no number of them
 * helps: the end is that of a single addition. The gel former is diluted on the way; take the setting temperature of the
 * whole mix, or, if it falls with dilution, that of the melt.
 *
 * @param input.melt - The melt: mass [kg], specific heat [J/(kg·K)], temperature [°C].
 * @param input.addition - All that is to go in: mass [kg], specific heat [J/(kg·K)], temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C]: the setting temperature with a margin.
 * @returns The number, the mass of each part [kg], and the lowest temperature of the mix [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the melt is not above the least temperature.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { leastAdditions } from "gelwright/heat";
 * leastAdditions({
 *   melt: { mass: 0.75, specificHeat: 2200, temperature: 75 },
 *   addition: { mass: 1.2, specificHeat: 2000, temperature: 23 },
 *   temperatureLeast: 55,
 * }).number; // => 3
 * ```
 */
export function leastAdditions(input: {
  readonly melt: Charge;
  readonly addition: Charge;
  readonly temperatureLeast: number;
}): EqualAdditions {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const whole = mixingTemperature({ charges: [melt, addition] });
  if (whole >= temperature(temperatureLeast, "temperatureLeast"))
    return { number: 1, mass: addition.mass, temperatureLowest: whole };
  const most = largestAddition({ melt, addition, temperatureLeast });
  if (most === 0)
    refuse("unreachable", "melt.temperature", melt.temperature, `above temperatureLeast (${temperatureLeast} °C)`);
  // A quotient that is whole but for rounding is whole.
  const number = result(Math.ceil((addition.mass / most) * (1 - 4 * Number.EPSILON)), "number");
  const mass = addition.mass / number;
  const temperatureLowest = mixingTemperature({ charges: [melt, { ...addition, mass }] });
  return { number, mass, temperatureLowest };
}
