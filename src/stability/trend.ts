import { finite, list, record, refuse, result } from "../guards.js";
import type { Interval } from "../laws/interval.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { confidenceFactor } from "../numeric/student.js";
import * as known from "./known.js";
import { fitColumns } from "./line.js";

/** A value and when it was measured. */
export interface TimedReading {
  /** Time on any clock [s]. */
  readonly time: number;
  /** What was measured, in a unit of the caller's. */
  readonly value: number;
}

/** How a value moves over time. */
export interface Trend {
  /** Change per time [unit of the value per s], with the bounds of the confidence asked for. */
  readonly slope: Interval;
  /** The fitted value at the first reading [unit of the value]. */
  readonly valueStart: number;
  /** Which way it moves, if the readings show it; `not known` is no proof that it stands still. */
  readonly direction: "rises" | "falls" | "not known";
}

/**
 * Which way a measured value moves over time, and how fast: oil bleed, colour, weight, whatever was read on several days.
 *
 * $$y = a + b\,t \qquad b \pm t_{n-2}\,s_b$$
 *
 * Where the interval of the slope holds 0 the direction is `not known`: more or better readings may show one. A straight
 * line is taken for granted; bleed often slows down, so do not draw the line on beyond the last reading.
 *
 * @param input.readings - Time [s] and value of each reading, three at least, at two times at least, in any order.
 * @param input.confidence - Of the interval, above 0 and below 1; default 0.95.
 * @returns The slope with its bounds, the fitted start, and the direction.
 * @throws CalculationError `input` where an argument is out of range or all readings are at one time, `range` where a
 *   double cannot hold the result.
 * @source abramowitz-stegun-1964 section 26.7 for the interval; the rest is the definition of least squares
 * @example
 * ```ts
 * import { trend } from "gelwright/stability";
 * const week = 604800;
 * const percent = [0.2, 0.5, 0.9, 1.1, 1.6];
 * const bleed = trend({ readings: percent.map((value, i) => ({ time: i * week, value })) });
 * (bleed.slope.value * week).toFixed(3); // => "0.340"
 * bleed.direction; // => "rises"
 * ```
 */
export function trend(input: { readonly readings: readonly TimedReading[]; readonly confidence?: number }): Trend {
  const { readings, confidence } = record(input, "input", known.trend);
  const points = list(readings, "readings", 3).map((reading, i) => {
    const { time, value } = record(reading, `readings[${i}]`);
    return { time: finite(time, `readings[${i}].time`), value: finite(value, `readings[${i}].value`) };
  });
  const start = minOf(points.map(({ time }) => time));
  const span = result(maxOf(points.map(({ time }) => time)) - start, "span of time");
  if (span === 0) refuse("input", "readings", "one time", "readings at two times at least");
  // Places from 0 to 1, so that neither the clock's zero nor its unit costs digits.
  const places = points.map(({ time }) => (time - start) / span);
  const { fit, degreesOfFreedom } = fitColumns(
    [points.map(() => 1), places],
    points.map(({ value }) => value),
    "readings",
  );
  const factor = confidenceFactor(confidence, degreesOfFreedom);
  const [intercept = 0, rise = 0] = fit.coefficients;
  const doubt = factor * Math.sqrt((fit.sumOfSquares / degreesOfFreedom) * (fit.inverse[1]?.[1] as number));
  const per = (change: number): number => result(change / span, "slope");
  const slope = { min: per(rise - doubt), value: per(rise), max: per(rise + doubt) };
  return {
    slope,
    valueStart: result(intercept, "valueStart"),
    direction: slope.min > 0 ? "rises" : slope.max < 0 ? "falls" : "not known",
  };
}
