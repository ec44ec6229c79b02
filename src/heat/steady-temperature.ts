import { finite, notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import type { HeatLossLaw } from "../laws/heat-loss.js";
import { balanceBetween, compileHeatBalance, type HeatBalance } from "./heat-balance.js";
import type { HeatSource } from "./heat-source.js";
import * as known from "./known.js";

/** No vessel is looked for beyond this [K above the room]. */
const hottest = 10000;

/**
 * The temperature at which the heating of a vessel balances its loss to the room: it never gets hotter.
 *
 * $$q_\mathrm{supply}(T_\infty) = q_\mathrm{loss}(T_\infty) \qquad P,\,U\!A\ \text{constant}:\; T_\infty = T_\mathrm{amb} + \frac{P}{U\!A}$$
 *
 * @param input.heatSource - Heat that reaches the charge [W], 0 or more; or a heat source: a heater, a plate or medium with its temperature, a stirrer by itself or beside them.
 * @param input.heatLoss - Loss to the room per kelvin [W/K], above 0; or a heat-loss law, whose loss has to grow with temperature.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns The steady temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where no loss ever takes all the power; `range` where a law ends before.
 * @source definition
 * @example
 * ```ts
 * import { steadyTemperature } from "gelwright/heat";
 * steadyTemperature({ heatSource: 300, heatLoss: 1.25, temperatureAmbient: 20 }); // => 260
 * steadyTemperature({
 *   heatSource: { kind: "medium", temperature: 120, conductance: 6 },
 *   heatLoss: { law: "newton", conductance: 2 },
 *   temperatureAmbient: 20,
 * }); // => 95
 * ```
 */
export function steadyTemperature(input: {
  readonly heatSource: number | HeatSource;
  readonly heatLoss: number | HeatLossLaw;
  readonly temperatureAmbient: number;
}): number {
  const { heatSource, heatLoss, temperatureAmbient } = record(input, "input", known.steadyTemperature);
  const power = typeof heatSource === "object" ? undefined : notNegative(heatSource, "heatSource");
  const conductance = typeof heatLoss === "object" ? undefined : positive(heatLoss, "heatLoss");
  if (power !== undefined && conductance !== undefined)
    return result(temperature(temperatureAmbient, "temperatureAmbient") + power / conductance, "steady temperature");
  return byLaw({
    heatSource: typeof heatSource === "object" ? heatSource : { kind: "power", power: heatSource },
    heatLoss: typeof heatLoss === "object" ? heatLoss : { law: "newton", conductance: heatLoss },
    temperatureAmbient,
  });
}

/** Where the loss by a law takes all that a heat source gives. */
function byLaw(balance: HeatBalance): number {
  const { netAt, ambient, medium } = compileHeatBalance(balance);
  const warmest = Math.max(ambient, medium ?? ambient);
  // Only a stirrer warms beyond both medium and room.
  if (medium !== undefined && netAt(warmest) <= 0) return balanceBetween(netAt, ambient, medium);
  let low = warmest;
  // Loss and power may have no common scale: the excess is doubled from a hundredth of a kelvin until loss prevails.
  for (let excess = 0.01; excess < hottest; excess *= 2) {
    const high = warmest + excess;
    if (finite(netAt(high), "heatLoss") <= 0) return balanceBetween(netAt, low, high);
    low = high;
  }
  return refuse(
    "unreachable",
    "heatLoss",
    `${result(netAt(low), "net heat flow")} W left at ${low} °C`,
    "a loss that takes all the power",
  );
}
