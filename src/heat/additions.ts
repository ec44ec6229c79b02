import { positive, record, refuse, result, temperature } from "../guards.js";
import type { Charge } from "./mixing-temperature.js";

/**
 * The most of a cool addition that a hot melt takes before the mix falls to the least temperature allowed.
 *
 * $$m_c = \frac{m_h\,c_h\,(T_h - T_\mathrm{least})}{c_c\,(T_\mathrm{least} - T_c)}$$
 *
 * Nothing is lost to the room and nothing sets. The addition dilutes the gel former, which moves the setting
 * temperature itself: take the one of the mix.
 *
 * @param input.melt - The hot melt: mass [kg], specific heat [J/(kg·K)], temperature [°C].
 * @param input.addition - What is poured in: specific heat [J/(kg·K)] and temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C]: the setting temperature with a margin.
 * @returns The largest mass of the addition [kg].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the melt is already too cool, or the addition so warm that any amount is allowed.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { largestAddition } from "gelwright/heat";
 * largestAddition({
 *   melt: { mass: 0.75, specificHeat: 2200, temperature: 75 },
 *   addition: { specificHeat: 2000, temperature: 23 },
 *   temperatureLeast: 55,
 * }); // => 0.515625
 * ```
 */
export function largestAddition(input: {
  readonly melt: Charge;
  readonly addition: Omit<Charge, "mass">;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  const spare = heatAbove(least, melt, "melt");
  if (spare < 0) refuse("unreachable", "melt.temperature", melt.temperature, `temperatureLeast (${least} °C) or more`);
  const { specificHeat, temperature: cold } = record(addition, "addition");
  const taken = positive(specificHeat, "addition.specificHeat") * (least - temperature(cold, "addition.temperature"));
  if (taken <= 0)
    refuse(
      "unreachable",
      "addition.temperature",
      cold,
      `below temperatureLeast (${least} °C): any amount of it may go in`,
    );
  return result(spare / taken, "largest addition");
}

/**
 * The temperature to which an addition must be warmed so that the mix does not fall below the least temperature allowed.
 *
 * $$T_c = T_\mathrm{least} - \frac{m_h\,c_h\,(T_h - T_\mathrm{least})}{m_c\,c_c}$$
 *
 * It is a bound: for a small addition it can lie below any temperature there is, and then none is too cold.
 *
 * @param input.melt - The melt: mass [kg], specific heat [J/(kg·K)], temperature [°C].
 * @param input.addition - What is poured in: mass [kg] and specific heat [J/(kg·K)].
 * @param input.temperatureLeast - The mix may not fall below this [°C].
 * @returns The least temperature of the addition [°C].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { additionTemperatureLeast } from "gelwright/heat";
 * additionTemperatureLeast({
 *   melt: { mass: 0.75, specificHeat: 2200, temperature: 75 },
 *   addition: { mass: 0.25, specificHeat: 2000 },
 *   temperatureLeast: 55,
 * }); // => -11
 * ```
 */
export function additionTemperatureLeast(input: {
  readonly melt: Charge;
  readonly addition: Omit<Charge, "temperature">;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  return result(
    least - heatAbove(least, melt, "melt") / heatCapacity(addition, "addition"),
    "least temperature of the addition",
  );
}

/**
 * The temperature that the melt must have so that an addition does not bring the mix below the least temperature allowed.
 *
 * $$T_h = T_\mathrm{least} + \frac{m_c\,c_c\,(T_\mathrm{least} - T_c)}{m_h\,c_h}$$
 *
 * It is a bound, as in `additionTemperatureLeast`; compare it with what the oils in the melt stand.
 *
 * @param input.melt - The melt: mass [kg] and specific heat [J/(kg·K)].
 * @param input.addition - What is poured in: mass [kg], specific heat [J/(kg·K)], temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C].
 * @returns The least temperature of the melt [°C].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { meltTemperatureLeast } from "gelwright/heat";
 * meltTemperatureLeast({
 *   melt: { mass: 0.8, specificHeat: 2000 },
 *   addition: { mass: 0.2, specificHeat: 2000, temperature: 23 },
 *   temperatureLeast: 55,
 * }); // => 63
 * ```
 */
export function meltTemperatureLeast(input: {
  readonly melt: Omit<Charge, "temperature">;
  readonly addition: Charge;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  return result(
    least - heatAbove(least, addition, "addition") / heatCapacity(melt, "melt"),
    "least temperature of the melt",
  );
}

/** Heat capacity of a charge [J/K]. */
function heatCapacity(charge: Omit<Charge, "temperature">, path: string): number {
  const { mass, specificHeat } = record(charge, path);
  return positive(mass, `${path}.mass`) * positive(specificHeat, `${path}.specificHeat`);
}

/** What a charge gives off in coming to a temperature [J]; negative if it takes heat up. */
function heatAbove(least: number, charge: Charge, path: string): number {
  return heatCapacity(charge, path) * (temperature(charge.temperature, `${path}.temperature`) - least);
}
