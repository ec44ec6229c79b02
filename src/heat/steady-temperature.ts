import { notNegative, positive, record, result, temperature } from "../guards.js";

/**
 * The temperature at which a heater and the loss to the room hold each other: none beyond it is ever reached.
 *
 * $$T_\infty = T_\mathrm{amb} + \frac{P}{UA}$$
 *
 * @param input.power - Heat that reaches the charge [W], 0 or more.
 * @param input.conductance - Loss to the room per kelvin [W/K], above 0.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns The steady temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { steadyTemperature } from "gelwright/heat";
 * steadyTemperature({ power: 300, conductance: 1.25, temperatureAmbient: 20 }); // => 260
 * ```
 */
export function steadyTemperature(input: {
  readonly power: number;
  readonly conductance: number;
  readonly temperatureAmbient: number;
}): number {
  const { power, conductance, temperatureAmbient } = record(input, "input");
  return result(
    temperature(temperatureAmbient, "temperatureAmbient") +
      notNegative(power, "power") / positive(conductance, "conductance"),
    "steady temperature",
  );
}
