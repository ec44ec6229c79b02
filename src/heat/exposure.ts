import { record, temperature } from "../guards.js";
import { relativeRateFunction, type Sensitivity } from "./sensitivity.js";
import { alongStretches, type Stretch } from "./stretches.js";

/** What a material has been through. */
export interface Exposure {
  /** All of it [s]. */
  readonly duration: number;
  /** Time at the reference temperature that does the same [s]. */
  readonly equivalentTime: number;
  /** Time above `temperatureAbove` [s]; absent where none was given. */
  readonly timeAbove?: number;
  /** [°C]. */
  readonly temperatureHighest: number;
}

/**
 * What heat a sensitive oil goes through in a run: the time above a temperature, and the time at a reference temperature that does the same.
 *
 * $$t_\mathrm{eq} = \int \exp\left[-\frac{E_a}{R}\left(\frac1T - \frac1{T_\mathrm{ref}}\right)\right] \mathrm dt \qquad t_\mathrm{eq} = \int Q_{10}^{(T - T_\mathrm{ref})/10}\,\mathrm dt$$
 *
 * List the stretches from the moment at which the material is in the vessel, and compare two orders of work by it. It
 * ranks them; it does not predict a peroxide value or a shelf life, which depend on air, light, metals and
 * antioxidants. Factors of 10 K hold near the temperatures at which they were measured.
 *
 * @param input.stretches - Ramps and vessel legs, at least one, one after another.
 * @param input.sensitivity - How much faster the material changes where it is warmer.
 * @param input.temperatureAbove - The time above this is told [°C]; left out if not of interest.
 * @returns Times [s] and the highest temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; what `vesselLeg` throws for a stretch.
 * @source definition, over the relative rate of `relativeRateFunction`
 * @example
 * ```ts
 * import { exposure } from "gelwright/heat";
 * exposure({
 *   stretches: [
 *     { stretch: "ramp", temperatureStart: 65, temperatureEnd: 65, duration: 1800 },
 *     { stretch: "ramp", temperatureStart: 65, temperatureEnd: 25, duration: 7200 },
 *   ],
 *   sensitivity: { law: "q10", q10: 2, temperatureReference: 25 },
 *   temperatureAbove: 45,
 * }).timeAbove; // => 5400
 * ```
 */
export function exposure(input: {
  readonly stretches: readonly Stretch[];
  readonly sensitivity: Sensitivity;
  readonly temperatureAbove?: number;
}): Exposure {
  const { stretches, sensitivity, temperatureAbove } = record(input, "input");
  const equivalentTime = relativeRateFunction(sensitivity);
  if (temperatureAbove === undefined) {
    const { duration, temperatureHighest, totals } = alongStretches(stretches, { equivalentTime }, []);
    return { duration, equivalentTime: totals.equivalentTime, temperatureHighest };
  }
  const above = temperature(temperatureAbove, "temperatureAbove");
  const timeAbove = (at: number): number => (at > above ? 1 : 0);
  const { duration, temperatureHighest, totals } = alongStretches(stretches, { equivalentTime, timeAbove }, [above]);
  return { duration, ...totals, temperatureHighest };
}
