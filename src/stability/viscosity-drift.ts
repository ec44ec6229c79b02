import { list, notNegative, positive, record, result } from "../guards.js";
import type { Interval } from "../laws/interval.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { through } from "./interval.js";
import * as known from "./known.js";
import { type Trend, trend } from "./trend.js";

/** How the viscosity of a product moves in storage. */
export interface ViscosityDrift {
  /** Relative change per time [1/s], with the bounds of the confidence asked for. */
  readonly rate: Interval;
  /** Viscosity after the time asked for beside that at the first reading, with bounds: 1 is no change. */
  readonly factor: Interval;
  /** Which way it moves, if the readings show it; `not known` is no proof that it stands still. */
  readonly direction: Trend["direction"];
  /** Whether the time asked for goes beyond the last reading: there the line is extended, and nothing was measured. */
  readonly extrapolated: boolean;
}

/**
 * How the viscosity drifts in storage, as a share of itself: a gel that goes on building, or one that falls back.
 *
 * $$\ln\eta = \ln\eta_0 + k\,t \qquad \frac{\eta}{\eta_0} = e^{k\,t}$$
 *
 * Measure all readings alike: same temperature, same shear rate or spindle, same rest before. The first day's build-up of
 * a gel is no drift: let the first reading be of a gel that has set.
 *
 * @param input.readings - Time [s] and viscosity [Pa·s] of each, three at least, at two times at least, in any order.
 * @param input.duration - After the first reading, for the factor [s], 0 or more.
 * @param input.confidence - Of the intervals, above 0 and below 1; default 0.95.
 * @returns The relative rate [1/s], the factor after the time, the direction, and whether the time was measured.
 * @throws CalculationError `input` where an argument is out of range or all readings are at one time, `range` where a
 *   double cannot hold the result.
 * @source abramowitz-stegun-1964 section 26.7 for the interval; that the drift is a share of itself is common practice
 * @example
 * ```ts
 * import { viscosityDrift } from "gelwright/stability";
 * const week = 604800;
 * const readings = [24.1, 24.9, 25.2, 26.4].map((viscosity, i) => ({ time: 4 * i * week, viscosity }));
 * const year = viscosityDrift({ readings, duration: 52 * week });
 * year.factor.value.toFixed(2); // => "1.45"
 * year.extrapolated; // => true
 * ```
 */
export function viscosityDrift(input: {
  readonly readings: readonly {
    /** Time on any clock [s]. */
    readonly time: number;
    /** [Pa·s], above 0. */
    readonly viscosity: number;
  }[];
  readonly duration: number;
  readonly confidence?: number;
}): ViscosityDrift {
  const { readings, duration, confidence } = record(input, "input", known.viscosityDrift);
  const after = notNegative(duration, "duration");
  const logarithms = list(readings, "readings", 3).map((reading, i) => {
    const { time, viscosity } = record(reading, `readings[${i}]`);
    return { time, value: Math.log(positive(viscosity, `readings[${i}].viscosity`)) };
  });
  const line = trend({ readings: logarithms, ...(confidence === undefined ? {} : { confidence }) });
  const times = logarithms.map(({ time }) => time);
  return {
    rate: line.slope,
    factor: through(line.slope, (rate) => result(Math.exp(rate * after), "factor")),
    direction: line.direction,
    extrapolated: after > maxOf(times) - minOf(times),
  };
}
