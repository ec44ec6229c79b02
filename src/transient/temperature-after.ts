import { record } from "../guards.js";
import * as known from "./known.js";
import { runSegment } from "./segment.js";
import type { SegmentInput } from "./track.js";

/**
 * The temperature that a stretch of cooling or heating has come to after a time.
 *
 * $$\int_{T_1}^{T}\frac{C(T)}{q(T)}\,\mathrm dT = t$$
 *
 * @param input - Start [°C], limit [°C], heat capacity [J/K], net heat flow [W] and breakpoints [°C] as for `transientSegment`, and
 *   `duration` [s], 0 or more.
 * @returns Temperature [°C].
 * @throws CalculationError `input` where an argument is out of range or a function gives no number, `unreachable` where
 *   the flow turns within the duration, `not-converged` where the functions swing wildly.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { temperatureAfter } from "gelwright/transient";
 * temperatureAfter({
 *   temperatureStart: 85,
 *   temperatureLimit: 20,
 *   heatCapacity: 210000,
 *   heatFlow: (temperature) => -15 * (temperature - 20),
 *   duration: 1800,
 * }); // => 77.1577987114749
 * ```
 */
export function temperatureAfter(input: SegmentInput<string> & { readonly duration: number }): number {
  return runSegment(input, { duration: record(input, "input", known.temperatureAfter).duration }).temperatureEnd;
}
