import { notNegative, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/**
 * The heat that stirring leaves in a batch: all of its power, since no other work is done on it.
 *
 * $$Q = P\,t \qquad \Delta T = \frac{P\,t}{m\,c}$$
 *
 * @param input.power - What the impeller gives to the batch [W], 0 or more.
 * @param input.duration - How long it is stirred [s], 0 or more.
 * @param input.mass - Mass of the batch [kg], above 0.
 * @param input.specificHeat - Its specific heat [J/(kg·K)], above 0.
 * @returns Heat [J], and by how much the batch would warm if it lost nothing [K].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { heatOfStirring } from "gelwright/mixing";
 * heatOfStirring({ power: 2000, duration: 900, mass: 100, specificHeat: 2000 }); // => { heat: 1800000, temperatureRise: 9 }
 * ```
 */
export function heatOfStirring(input: {
  readonly power: number;
  readonly duration: number;
  readonly mass: number;
  readonly specificHeat: number;
}): { readonly heat: number; readonly temperatureRise: number } {
  const { power, duration, mass, specificHeat } = record(input, "input", known.heatOfStirring);
  const heat = result(notNegative(power, "power") * notNegative(duration, "duration"), "heat");
  const capacity = positive(mass, "mass") * positive(specificHeat, "specificHeat");
  return { heat, temperatureRise: result(heat / capacity, "temperature rise") };
}
