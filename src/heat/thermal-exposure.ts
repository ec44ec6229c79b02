import { record, temperature } from "../guards.js";
import { type AgeingKinetics, relativeRateFunction } from "./ageing-kinetics.js";
import * as known from "./known.js";
import { alongSegments, type Segment } from "./segments.js";

/** What a material has been through. */
export interface ThermalExposure {
  /** All of it [s]. */
  readonly duration: number;
  /** Time at the reference temperature that does the same [s]. */
  readonly equivalentTime: number;
  /** Time above `temperatureAbove` [s]; absent where none was given. */
  readonly durationAbove?: number;
  /** [°C]. */
  readonly temperatureMax: number;
}

/**
 * How much heat a sensitive oil is exposed to in a run: the time above a temperature, and the time at a reference
 * temperature that does the same.
 *
 * $$t_\mathrm{eq} = \int \exp\left[-\frac{E_a}{R}\left(\frac1T - \frac1{T_\mathrm{ref}}\right)\right] \mathrm dt \qquad t_\mathrm{eq} = \int Q_{10}^{(T - T_\mathrm{ref})/10}\,\mathrm dt$$
 *
 * List the segments from the moment at which the material is in the vessel, and compare two processes by it. It ranks
 * them; it does not predict a peroxide value or a shelf life, which depend on air, light, metals and
 * antioxidants. A factor for 10 K holds near the temperatures at which it was measured.
 *
 * @param input.segments - Ramps and vessel segments, at least one, one after another.
 * @param input.ageingKinetics - How much faster the material changes where it is warmer.
 * @param input.temperatureAbove - The time above this temperature is reported [°C]; optional.
 * @returns Times [s] and the highest temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; what `vesselSegment` throws for a segment.
 * @source definition, over the relative rate of `relativeRateFunction`
 * @example
 * ```ts
 * import { thermalExposure } from "gelwright/heat";
 * thermalExposure({
 *   segments: [
 *     { kind: "ramp", temperatureStart: 65, temperatureEnd: 65, duration: 1800 },
 *     { kind: "ramp", temperatureStart: 65, temperatureEnd: 25, duration: 7200 },
 *   ],
 *   ageingKinetics: { law: "q10", q10: 2, temperatureReference: 25 },
 *   temperatureAbove: 45,
 * }).durationAbove; // => 5400
 * ```
 */
export function thermalExposure(input: {
  readonly segments: readonly Segment[];
  readonly ageingKinetics: AgeingKinetics;
  readonly temperatureAbove?: number;
}): ThermalExposure {
  const { segments, ageingKinetics, temperatureAbove } = record(input, "input", known.thermalExposure);
  const equivalentTime = relativeRateFunction(ageingKinetics);
  if (temperatureAbove === undefined) {
    const { duration, temperatureMax, totals } = alongSegments(segments, { equivalentTime }, []);
    return { duration, equivalentTime: totals.equivalentTime, temperatureMax };
  }
  const above = temperature(temperatureAbove, "temperatureAbove");
  const durationAbove = (at: number): number => (at > above ? 1 : 0);
  const { duration, temperatureMax, totals } = alongSegments(segments, { equivalentTime, durationAbove }, [above]);
  return { duration, ...totals, temperatureMax };
}
