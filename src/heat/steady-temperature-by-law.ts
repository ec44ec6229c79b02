import { finite, record, refuse, result } from "../guards.js";
import { type Balance, balanceBetween, compileBalance } from "./heat-balance.js";

/** No vessel is looked for beyond this [K above the room]. */
const hottest = 10000;

/**
 * The temperature at which any supply and any loss to the room hold each other: none beyond it is ever reached.
 *
 * $$q_\mathrm{supply}(T_\infty) = q_\mathrm{loss}(T_\infty)$$
 *
 * @param input.supply - A heater of constant power, a plate or medium with its temperature, a stirrer by itself or beside them.
 * @param input.heatLoss - Heat-loss law; the loss has to grow with temperature.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns The steady temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where no loss ever takes all the power; `range` where a law ends before.
 * @source definition
 * @example
 * ```ts
 * import { steadyTemperatureByLaw } from "gelwright/heat";
 * steadyTemperatureByLaw({
 *   supply: { supply: "medium", temperature: 120, conductance: 6 },
 *   heatLoss: { law: "newton", conductance: 2 },
 *   temperatureAmbient: 20,
 * }); // => 95
 * ```
 */
export function steadyTemperatureByLaw(input: Balance): number {
  const { netAt, ambient, medium } = compileBalance(record(input, "input"));
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
