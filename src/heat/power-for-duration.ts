import { positive, record, refuse, result, temperature } from "../guards.js";
import { compileHeatLoss } from "../laws/heat-loss.js";
import { root } from "../numeric/root.js";
import type { CoolingVessel } from "../transient/cooling-segment.js";
import { runSegment } from "../transient/segment.js";
import * as known from "./known.js";

/**
 * The power that brings a vessel to a temperature in a wanted time, against any loss to the room.
 *
 * $$\int_{T_0}^{T_1} \frac{C(T)}{P - q_\mathrm{loss}(T)}\,\mathrm dT = t$$
 *
 * The loss has to grow with temperature. What is found is heat that reaches the vessel: divide by the efficiency.
 *
 * @param input.duration - Time wanted [s], above 0.
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature wanted [°C], above the start.
 * @param input.heatCapacity - Heat capacity of vessel and content [J/K], above 0; a function of temperature [°C] where it varies or something melts.
 * @param input.heatLoss - Heat-loss law.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.breakpoints - Temperatures at which the heat capacity or the loss has a breakpoint [°C].
 * @param input.powerMax - Maximum power of the heater [W], above 0; left out if there is no limit.
 * @returns The power [W], above 0.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where more than `powerMax` would be needed, or where the room alone is faster.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { powerForDuration } from "gelwright/heat";
 * powerForDuration({
 *   duration: 600,
 *   temperatureStart: 20,
 *   temperatureEnd: 80,
 *   heatCapacity: 2000,
 *   heatLoss: { law: "newton", conductance: 0 },
 *   temperatureAmbient: 20,
 * }); // => 200
 * ```
 */
export function powerForDuration(
  input: CoolingVessel & {
    readonly duration: number;
    readonly temperatureEnd: number;
    readonly breakpoints?: readonly number[];
    readonly powerMax?: number;
  },
): number {
  const { temperatureStart, temperatureEnd, heatCapacity, breakpoints, powerMax } = record(
    input,
    "input",
    known.powerForDuration,
  );
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  if (!(end > start)) refuse("input", "temperatureEnd", end, `above temperatureStart (${start} °C)`);
  const wanted = positive(input.duration, "duration");
  const lossOf = compileHeatLoss(input.heatLoss, "heatLoss");
  const ambient = temperature(input.temperatureAmbient, "temperatureAmbient");
  const timeWith = (heatFlow: (at: number) => number): number =>
    runSegment({ temperatureStart: start, heatCapacity, heatFlow, breakpoints }, { temperatureEnd: end }).duration;
  const lossEnd = lossOf(end, ambient);
  const time = (power: number): number => timeWith((at) => power - lossOf(at, ambient));
  const max = powerMax === undefined ? undefined : positive(powerMax, "powerMax");
  if (max !== undefined && (max <= lossEnd || time(max) > wanted))
    refuse(
      "unreachable",
      "duration",
      wanted,
      max <= lossEnd
        ? `more power: at temperatureEnd the loss takes ${lossEnd} W, and there are ${max} W`
        : `${time(max)} s or more, the time with all of powerMax`,
    );
  // One watt takes as many seconds as joules are stored.
  const mean = timeWith(() => 1) / wanted;
  // The heat loss is smallest at the start and largest at the end, so the power lies between these two.
  const min = mean + lossOf(start, ambient);
  if (min <= 0 && lossEnd < 0 && time(0) <= wanted)
    refuse("unreachable", "duration", wanted, `less than ${time(0)} s, in which the room alone warms the vessel`);
  const low = Math.max(0, lossEnd, min * (1 - 1e-9));
  const high = result((mean + Math.max(0, lossEnd)) * (1 + 1e-9), "power");
  const early = (power: number): number => {
    if (power <= lossEnd) return -1;
    const needed = time(power);
    return (wanted - needed) / Math.max(wanted, needed);
  };
  return root(early, low, high, "power");
}
