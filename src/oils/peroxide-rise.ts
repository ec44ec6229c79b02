import { finite, list, notNegative, positive, record, refuse, result } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import * as known from "./known.js";
import { bends, straightLine } from "./straight-line.js";

/** A peroxide value and when it was measured. */
export interface PeroxideReading {
  /** Time on any clock [s]. */
  readonly time: number;
  /** Peroxide value [meq O2/kg], 0 or more. */
  readonly peroxideValue: number;
}

/** A rise of the peroxide value that readings show to be straight, as far as they can. */
export interface PeroxideRise {
  /** Rise [meq O2/(kg·s)], above 0. */
  readonly rate: number;
  /** The fitted value at the first reading [meq O2/kg]. */
  readonly peroxideValueStart: number;
  /** Between which the rate lies with the confidence asked for [meq O2/(kg·s)]. */
  readonly interval: { readonly min: number; readonly max: number };
}

/**
 * How fast the peroxide value rises, where the readings lie on a straight line, and a refusal where they do not.
 *
 * $$\mathrm{PV} = \mathrm{PV}_0 + k\,t, \qquad \text{refused where } |c_2| > t_{n-3}\,s_{c_2} \text{ in } \mathrm{PV} = c_0 + c_1 t + c_2 t^2$$
 *
 * A peroxide value stays low for an induction time, rises, passes a maximum and falls again while the oil gets worse.
 * A straight line is true to one stretch of that at most: readings that bend, or do not rise, are refused, and what was
 * fitted must not be drawn on beyond the last reading. At least four readings are needed to show a bend.
 *
 * @param input.readings - Time [s] and peroxide value [meq O2/kg], four at least, at four times at least, in any order.
 * @param input.confidence - Of the interval and of the test for a bend, above 0 and below 1; default 0.95.
 * @returns The rate [meq O2/(kg·s)] with its interval, and the fitted value at the first reading.
 * @throws CalculationError `input` where an argument is out of range or readings are missing, `range` where the readings
 *   bend or do not rise.
 * @source abramowitz-stegun-1964 section 26.7 for the interval; that the value passes a maximum is common practice
 * @example
 * ```ts
 * import { peroxideRise } from "gelwright/oils";
 * const readings = [
 *   { time: 0, peroxideValue: 2 },
 *   { time: 1e6, peroxideValue: 3.1 },
 *   { time: 2e6, peroxideValue: 3.9 },
 *   { time: 3e6, peroxideValue: 5 },
 * ];
 * peroxideRise({ readings }).rate; // => 9.8e-7
 * ```
 */
export function peroxideRise(input: {
  readonly readings: readonly PeroxideReading[];
  readonly confidence?: number;
}): PeroxideRise {
  const { readings, confidence = 0.95 } = record(input, "input", known.peroxideRise);
  if (!(positive(confidence, "confidence") < 1)) refuse("input", "confidence", confidence, "above 0 and below 1");
  const points = list(readings, "readings", 4).map((reading, i) => {
    const at = `readings[${i}]`;
    const { time, peroxideValue } = record(reading, at);
    return { time: finite(time, `${at}.time`), value: notNegative(peroxideValue, `${at}.peroxideValue`) };
  });
  const times = points.map((point) => point.time);
  const values = points.map((point) => point.value);
  if (new Set(times).size < 4)
    refuse("input", "readings", `${new Set(times).size} times`, "readings at four times at least");
  const start = minOf(times);
  const span = result(maxOf(times) - start, "span of time");
  // Places from 0 to 1, so that neither the clock's zero nor its unit costs digits.
  const places = times.map((time) => (time - start) / span);
  const line = straightLine(places, values);
  const slack = line?.slopeDoubt(confidence);
  if (!line || slack === undefined) return refuse("input", "readings", "one time", "readings at four times at least");
  if (bends(places, values, confidence))
    refuse("range", "readings", "a bend", "readings on a straight line: between the induction time and the maximum");
  if (line.slope <= 0) refuse("range", "readings", "values that do not rise", "a rise: the maximum may be passed");
  const rate = (slope: number) => result(slope / span, "rate");
  return {
    rate: rate(line.slope),
    peroxideValueStart: line.at(0),
    interval: { min: rate(line.slope - slack), max: rate(line.slope + slack) },
  };
}
