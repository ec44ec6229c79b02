import { record, temperature } from "../guards.js";
import { compileHeatLoss, type HeatLossLaw } from "../laws/heat-loss.js";
import * as known from "./known.js";
import { runSegment, type SegmentEnd, type SegmentResult } from "./segment.js";
import type { SegmentInput } from "./track.js";

/** A vessel that is left to itself in a room. */
export interface CoolingVessel {
  /** Where it starts [°C]. */
  readonly temperatureStart: number;
  /** Heat capacity of vessel and content [J/K], above 0; a function of temperature [°C] where it varies. */
  readonly heatCapacity: number | ((temperature: number) => number);
  /** How fast heat is lost to the room. */
  readonly heatLoss: HeatLossLaw;
  /** Temperature of the room [°C]. */
  readonly temperatureAmbient: number;
}

/**
 * How long a vessel takes to cool in a room, and what accumulates on the way; a vessel colder than its room warms.
 *
 * $$t = \int_{T_2}^{T_1}\frac{C(T)}{q_\mathrm{loss}(T)}\,\mathrm dT$$
 *
 * @param input - Start [°C], heat capacity [J/K], heat-loss law, room [°C], rates [1/s] and breakpoints [°C]; and either
 *   `temperatureEnd` [°C] or `duration` [s].
 * @returns The end [°C], the duration [s] and the totals.
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the end does not lie between
 *   the start and the room, or where the vessel loses nothing.
 * @source bergman-2011 section 5.1
 * @example
 * ```ts
 * import { coolingSegment } from "gelwright/transient";
 * coolingSegment({
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 *   temperatureAmbient: 20,
 *   heatCapacity: 210000,
 *   heatLoss: { law: "newton", conductance: 15 },
 * }).duration; // => 13377.16023038411
 * ```
 */
export function coolingSegment<Name extends string = never>(
  input: CoolingVessel & Pick<SegmentInput<Name>, "rates" | "breakpoints"> & SegmentEnd,
): SegmentResult<Name> {
  return cool(record(input, "input", known.coolingSegment), input, input.rates, input.breakpoints);
}

/** The same for rooms above, which bring rates of their own to a vessel that they were given. */
export function cool<Name extends string>(
  vessel: CoolingVessel,
  until: SegmentEnd,
  rates: SegmentInput<Name>["rates"],
  breakpoints: SegmentInput<Name>["breakpoints"],
): SegmentResult<Name> {
  const { temperatureStart, heatCapacity, heatLoss, temperatureAmbient } = vessel;
  const lossAt = compileHeatLoss(heatLoss, "heatLoss");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const heatFlow = (at: number): number => -lossAt(at, ambient);
  return runSegment({ temperatureStart, temperatureLimit: ambient, heatCapacity, heatFlow, rates, breakpoints }, until);
}
