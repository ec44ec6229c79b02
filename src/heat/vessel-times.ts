import { list, record, refuse, temperature } from "../guards.js";
import { timesOfPassing } from "../transient/segment.js";
import type { SegmentInput } from "../transient/track.js";
import * as known from "./known.js";
import { type HeatedVessel, laidOut } from "./vessel-segment.js";

/**
 * When a vessel that is heated or cooled passes each of several temperatures: a curve to plot, or to settle particles over.
 *
 * $$t_i = \int_{T_0}^{T_i} \frac{C(T)}{q_\mathrm{supply}(T) - q_\mathrm{loss}(T)}\,\mathrm dT$$
 *
 * It gives what `vesselSegment` gives for each temperature by itself, in one pass.
 *
 * @param input - Start [°C], heat capacity [J/K], heat source, heat-loss law, room [°C], largest rate [K/s], breakpoints [°C];
 *   and `temperatures` [°C], one or more, all falling or all rising away from the start.
 * @returns The time of each of them since the start [s].
 * @throws CalculationError `input` where an argument is out of range or the temperatures turn back; `unreachable` where heat
 *   source and loss hold each other before the last; `range` where a law ends before.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { vesselTimes } from "gelwright/heat";
 * const times = vesselTimes({
 *   temperatureStart: 85,
 *   temperatures: [85, 65, 45],
 *   heatCapacity: 210000,
 *   heatSource: { kind: "power", power: 0 },
 *   heatLoss: { law: "newton", conductance: 15 },
 *   temperatureAmbient: 20,
 * });
 * times.map(Math.round); // => [0, 5148, 13377]
 * ```
 */
export function vesselTimes(
  input: HeatedVessel &
    Pick<SegmentInput<never>, "breakpoints"> & {
      /** What it passes [°C], all falling or all rising away from the start. */
      readonly temperatures: readonly number[];
    },
): readonly number[] {
  const temperatures = list(record(input, "input", known.vesselTimes).temperatures, "temperatures", 1).map((at, i) =>
    temperature(at, `temperatures[${i}]`),
  );
  const end = temperatures[temperatures.length - 1] as number;
  const start = temperature(input.temperatureStart, "temperatureStart");
  const before = (temperatures[0] as number) - start;
  if (before * (end - start) < 0)
    refuse("input", "temperatures[0]", temperatures[0], `${start} °C or beyond, on the way to ${end} °C`);
  return timesOfPassing(laidOut(input, end).segment, temperatures);
}
