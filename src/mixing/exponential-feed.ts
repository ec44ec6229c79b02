import { notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** A stream of oil that grows with what is in the vessel. */
export interface ExponentialFeed {
  /** Share of the vessel's content that goes in each second [1/s]. */
  readonly specificRate: number;
  /** Feed rate at the start [kg/s]. */
  readonly rateStart: number;
  /** Feed rate at the end [kg/s]. */
  readonly rateEnd: number;
  /** Mass in the vessel at the time asked for [kg]. */
  readonly massInVessel: number;
  /** Feed rate at that time [kg/s]. */
  readonly rate: number;
}

/**
 * A stream of oil over a stated time whose rate is at every moment the same share of what is in the vessel.
 *
 * $$M(t) = M_0\,e^{k t} \qquad \dot m = k\,M \qquad k = \frac{\ln(M_\mathrm{end}/M_0)}{t_\mathrm{end}}$$
 *
 * @param input.massStart - Mass in the vessel at the start [kg], above 0.
 * @param input.massEnd - Mass in the vessel at the end [kg], above the mass at the start.
 * @param input.duration - Time for all of it [s], above 0.
 * @param input.time - Time since the start [s], 0 to the duration; default the end.
 * @returns The share a second, the rates at both ends, and mass and rate at the time.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition, growth in proportion
 * @example
 * ```ts
 * import { exponentialFeed } from "gelwright/mixing";
 * const feed = exponentialFeed({ massStart: 10, massEnd: 100, duration: 1800, time: 900 });
 * feed.massInVessel.toFixed(2); // => "31.62"
 * (60 * feed.rate).toFixed(2); // => "2.43"
 * ```
 */
export function exponentialFeed(input: {
  readonly massStart: number;
  readonly massEnd: number;
  readonly duration: number;
  readonly time?: number;
}): ExponentialFeed {
  const { massStart, massEnd, duration, time } = record(input, "input", known.exponentialFeed);
  const start = positive(massStart, "massStart");
  const end = positive(massEnd, "massEnd");
  if (!(end > start)) refuse("input", "massEnd", end, `above massStart, ${start}`);
  const whole = positive(duration, "duration");
  const at = notNegative(time ?? whole, "time");
  if (at > whole) refuse("input", "time", at, `0 to the duration, ${whole}`);
  // As a difference of logarithms a small growth would lose its digits, as a logarithm of the growth a large one overflows.
  const growth = end < 2 * start ? Math.log1p((end - start) / start) : Math.log(end) - Math.log(start);
  const specificRate = result(growth / whole, "feed");
  const massInVessel = at === whole ? end : Math.min(end, start * Math.exp(growth * (at / whole)));
  const rate = (mass: number): number => result(specificRate * mass, "feed rate");
  return { specificRate, rateStart: rate(start), rateEnd: rate(end), massInVessel, rate: rate(massInVessel) };
}
