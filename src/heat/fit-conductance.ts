import { finite, list, positive, record, refuse, result, show, temperature } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { root } from "../numeric/root.js";
import { studentT } from "../numeric/student.js";
import * as known from "./known.js";

/** One look at the thermometer. */
export interface TemperatureReading {
  /** Time on any clock [s]. */
  readonly time: number;
  /** What was read [°C]. */
  readonly temperature: number;
}

/** The loss to the room that readings speak of, and how sure they are. */
export interface FittedConductance {
  /** Loss to the room per kelvin [W/K]. */
  readonly conductance: number;
  /** Between which it lies with the confidence asked for [W/K]. Left out for two readings, which leave nothing to judge by. */
  readonly interval?: { readonly min: number; readonly max: number };
  /** The fitted temperature at the first reading [°C]. */
  readonly temperatureStart: number;
  /** Each reading less the fitted curve [K], in the order of the readings. */
  readonly residuals: readonly number[];
  /** Readings less the two figures fitted: 0 for two readings. */
  readonly degreesOfFreedom: number;
}

/** The sum of a product over all readings. */
function sumOf(count: number, at: (i: number) => number): number {
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += at(i);
  return sum;
}

/** Rates beyond this many time constants over the readings leave nothing of the difference to read. */
const fastest = 1024;

/**
 * What a vessel loses to the room, from a cooling curve read at the bench: two readings of a thermometer are enough.
 *
 * $$\min_{UA,\,\Delta_0} \sum_i \left(T_i - T_\mathrm{amb} - \Delta_0\,e^{-UA\,(t_i - t_1)/C}\right)^2 \qquad UA \pm t_{n-2}\,s_{UA}$$
 *
 * Least squares on the temperatures themselves, because the error is in the thermometer, not in the clock; the start is
 * fitted too. The interval comes from Student's t and the slope of the curve at the fit, so it is good as long as the
 * curve is nearly straight within it. It covers scatter alone: if the residuals change sign in turn (below, above,
 * below), the loss does not follow Newton's law, and a law of natural convection and radiation should be used.
 *
 * @param input.readings - Time [s] and temperature [°C], at least two, in any order.
 * @param input.temperatureAmbient - Temperature of the room, which must be constant [°C].
 * @param input.heatCapacity - Heat capacity of content and vessel [J/K], above 0.
 * @param input.confidence - Of the interval, above 0 and below 1; default 0.95.
 * @returns The conductance [W/K], its interval where there are three readings or more, and what is left [K].
 * @throws CalculationError `input` where an argument is no number or out of range, or where the readings do not say a
 *   rate: all at one time, the first at the room's temperature, none coming closer to it, or nothing left by the
 *   second.
 * @source abramowitz-stegun-1964 section 26.7 for the interval; the rest is the definition of least squares
 * @example
 * ```ts
 * import { fitConductance } from "gelwright/heat";
 * const fit = fitConductance({
 *   readings: [
 *     { time: 0, temperature: 84.8 },
 *     { time: 1200, temperature: 79.9 },
 *     { time: 2400, temperature: 74.8 },
 *     { time: 3600, temperature: 70.3 },
 *   ],
 *   temperatureAmbient: 20,
 *   heatCapacity: 210000,
 * });
 * fit.conductance; // => 14.81181868563754
 * fit.interval; // => { min: 13.635383445913178, max: 15.988253925361903 }
 * ```
 */
export function fitConductance(input: {
  readonly readings: readonly TemperatureReading[];
  readonly temperatureAmbient: number;
  readonly heatCapacity: number;
  readonly confidence?: number;
}): FittedConductance {
  const {
    readings,
    temperatureAmbient,
    heatCapacity,
    confidence = 0.95,
  } = record(input, "input", known.fitConductance);
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const capacity = positive(heatCapacity, "heatCapacity");
  if (!(typeof confidence === "number" && confidence > 0 && confidence < 1))
    refuse("input", "confidence", show(confidence), "a share above 0 and below 1");
  const times: number[] = [];
  const temperatures: number[] = [];
  list(readings, "readings", 2).forEach((reading, i) => {
    const { time, temperature: warmth } = record(reading, `readings[${i}]`);
    times.push(finite(time, `readings[${i}].time`));
    temperatures.push(temperature(warmth, `readings[${i}].temperature`));
  });
  const count = times.length;
  const first = minOf(times);
  const span = maxOf(times) - first;
  if (!(span > 0 && span < Number.POSITIVE_INFINITY))
    refuse("input", "readings", `all at ${first} s`, "readings at two different times");
  const place = times.map((time) => (time - first) / span);
  const side = Math.sign((temperatures[times.indexOf(first)] as number) - ambient);
  if (side === 0)
    refuse("input", "readings", `the first at ${ambient} °C`, "a first reading off the room's temperature");
  const excess = temperatures.map((warmth) => (warmth - ambient) * side);

  /** Left of a difference of 1 at each reading, where `rate` is the time constants over the readings. */
  const left = (rate: number): number[] => place.map((at) => Math.exp(-rate * at));
  // Proportional to the slope of the sum of squares, the start being the best for each rate: below 0 where too slow.
  const tooFast = (rate: number): number => {
    const e = left(rate);
    const of = (factor: (i: number) => number): number => sumOf(count, (i) => factor(i) * (e[i] as number));
    return (
      of((i) => (excess[i] as number) * (place[i] as number)) * of((i) => e[i] as number) -
      of((i) => excess[i] as number) * of((i) => (place[i] as number) * (e[i] as number))
    );
  };
  if (!(tooFast(0) < 0))
    refuse("input", "readings", "none that comes closer to the room", "readings of a vessel that cools or warms to it");
  let high = 1;
  while (high <= fastest && !(tooFast(high) > 0)) high *= 2;
  if (high > fastest)
    refuse("input", "readings", "no difference left after the first", "a second reading while there is a difference");
  const rate = root(tooFast, 0, high, "readings");

  const e = left(rate);
  const squares = sumOf(count, (i) => (e[i] as number) ** 2);
  const start = sumOf(count, (i) => (excess[i] as number) * (e[i] as number)) / squares;
  if (!(start > 0))
    refuse(
      "input",
      "readings",
      "a fit that begins beyond the room's temperature",
      "readings on one side of the room's temperature, of a vessel that comes closer to it",
    );
  const residuals = excess.map((value, i) => side * (value - start * (e[i] as number)));
  const conductance = result((rate / span) * capacity, "conductance");
  const fit = { conductance, temperatureStart: ambient + side * start, residuals, degreesOfFreedom: count - 2 };
  if (count === 2) return fit;
  const mean = sumOf(count, (i) => (place[i] as number) * (e[i] as number) ** 2) / squares;
  const spread = sumOf(count, (i) => (((place[i] as number) - mean) * (e[i] as number)) ** 2);
  const variance = sumOf(count, (i) => (residuals[i] as number) ** 2) / (count - 2);
  const error = (Math.sqrt(variance / spread) / start / span) * capacity;
  const half = result(studentT(confidence, count - 2) * error, "interval");
  return { ...fit, interval: { min: conductance - half, max: conductance + half } };
}
