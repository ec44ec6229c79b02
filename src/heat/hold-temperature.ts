import { notNegative, record, refuse, result, temperature } from "../guards.js";
import { compileHeatBalance, type HeatBalance } from "./heat-balance.js";
import * as known from "./known.js";

/** What it takes to keep a vessel at its temperature. */
export interface Hold {
  /** Mean heat flow of the heat source, which is the loss [W]; negative where the heat source cools. */
  readonly power: number;
  /** Share of the time for which a thermostat has the heat source on, 0 to 1. */
  readonly dutyCycle: number;
  /** Over the whole hold [J]. */
  readonly energySupplied: number;
}

/**
 * What a thermostat draws to hold a vessel at a temperature: power, share of the time, energy.
 *
 * $$\bar q = q_\mathrm{loss}(T) \qquad s = \frac{q_\mathrm{loss}(T)}{q_\mathrm{supply}(T)} \qquad E = q_\mathrm{loss}(T)\,t$$
 *
 * The switching of the thermostat is left out: its swing is taken as small compared with the difference from the room.
 *
 * @param input.temperature - Temperature held [°C].
 * @param input.duration - How long [s], 0 or more.
 * @param input.heatSource - A heater of constant power, or a plate or medium with its temperature.
 * @param input.heatLoss - Heat-loss law.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns Mean power [W], share of the time, energy [J].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the heat source, on all the time, cannot hold the temperature.
 * @source definition
 * @example
 * ```ts
 * import { holdTemperature } from "gelwright/heat";
 * holdTemperature({
 *   temperature: 75,
 *   duration: 1800,
 *   heatSource: { kind: "power", power: 440 },
 *   heatLoss: { law: "newton", conductance: 2 },
 *   temperatureAmbient: 20,
 * }); // => { power: 110, dutyCycle: 0.25, energySupplied: 198000 }
 * ```
 */
export function holdTemperature(
  input: HeatBalance & { readonly temperature: number; readonly duration: number },
): Hold {
  const { sourceAt, lossAt } = compileHeatBalance(record(input, "input", known.holdTemperature));
  const at = temperature(input.temperature, "temperature");
  const duration = notNegative(input.duration, "duration");
  const power = result(lossAt(at), "heat loss");
  const full = sourceAt(at);
  const dutyCycle = power === 0 ? 0 : power / full;
  if (!(dutyCycle >= 0 && dutyCycle <= 1))
    refuse(
      "unreachable",
      "temperature",
      at,
      `one at which the heat source (${full} W) makes up for the loss (${power} W)`,
    );
  return { power, dutyCycle, energySupplied: result(power * duration, "energySupplied") };
}
