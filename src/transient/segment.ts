import { finite, notNegative, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";
import { march } from "./march.js";
import { callback, layTrack, type SegmentInput } from "./track.js";

/** Where a segment ends: at a temperature, or after a time. */
export type SegmentEnd =
  | {
      /** [°C], between the start and the limit. */
      readonly temperatureEnd: number;
      readonly duration?: undefined;
    }
  | {
      /** [s], 0 or more. */
      readonly duration: number;
      readonly temperatureEnd?: undefined;
    };

/** What a segment comes to. */
export interface SegmentResult<Name extends string> {
  /** [°C]. */
  readonly temperatureEnd: number;
  /** [s]. */
  readonly duration: number;
  /** What has accumulated, for each name of the rates. */
  readonly totals: Readonly<Record<Name, number>>;
}

/**
 * How long one stretch of cooling or heating takes, and what accumulates on the way: settling, age, heat.
 *
 * $$t = \int_{T_1}^{T_2}\frac{C(T)}{q(T)}\,\mathrm dT \qquad S_k = \int_{T_1}^{T_2} r_k(T)\,\frac{C(T)}{q(T)}\,\mathrm dT$$
 *
 * Heat capacity, heat flow and rates depend on temperature alone, so that time need not be stepped: all integrals are
 * taken over ln|T − T_limit| at once, by Gauss–Legendre panels that are split at the breakpoints and halved until resolved.
 * The error is near that of doubles for smooth functions and about 1e-10 where a breakpoint is not named. Name the ends of a
 * melting range: a jump that is not named costs about 1e-6, and one narrower than 1 K can be missed.
 *
 * @param input - Start [°C], limit [°C], heat capacity [J/K], net heat flow [W], rates [1/s] and breakpoints [°C]; and either
 *   `temperatureEnd` [°C] or `duration` [s].
 * @returns The end [°C], the duration [s] and the totals.
 * @throws CalculationError `input` where an argument is out of range or a function gives no number, `unreachable` where
 *   the flow stops or turns before the end, `not-converged` where the functions swing wildly.
 * @source bergman-2011 section 5.3
 * @example
 * ```ts
 * import { transientSegment } from "gelwright/transient";
 * const cooling = transientSegment({
 *   temperatureStart: 85,
 *   temperatureEnd: 45,
 *   temperatureLimit: 20,
 *   heatCapacity: 210000,
 *   heatFlow: (temperature) => -15 * (temperature - 20),
 *   rates: { heatLost: (temperature) => 15 * (temperature - 20) },
 * });
 * cooling.duration; // => 13377.16023038411
 * cooling.totals.heatLost; // => 8400000
 * ```
 */
export function transientSegment<Name extends string = never>(
  input: SegmentInput<Name> & SegmentEnd,
): SegmentResult<Name> {
  return runSegment(input, record(input, "input", known.transientSegment));
}

/** A segment whose end stands in another object than the rest of it. */
export function runSegment<Name extends string>(input: SegmentInput<Name>, until: SegmentEnd): SegmentResult<Name> {
  const { temperatureEnd, duration } = until;
  const start = temperature(input.temperatureStart, "temperatureStart");
  if ((duration === undefined) === (temperatureEnd === undefined))
    refuse("input", "duration", duration, "either a duration or a temperatureEnd");
  const sense = Math.sign(
    duration === undefined
      ? temperature(temperatureEnd, "temperatureEnd") - start
      : notNegative(duration, "duration") && finite(callback(input.heatFlow, "heatFlow")(start), "heatFlow"),
  );
  const track = layTrack(input, start, temperatureEnd ?? start, sense);
  const { from, names } = track;
  const arrival =
    sense === 0
      ? { position: from, temperature: start, rest: duration ?? 0, near: 0 }
      : duration === undefined
        ? { position: track.positionOf(temperatureEnd), temperature: temperatureEnd, rest: 0, near: 0 }
        : march(track, duration);
  const sums = track.between(from, arrival.position, names.length + 1);
  const resting = new Float64Array(names.length + 1);
  if (arrival.rest !== 0) track.fill(arrival.temperature, arrival.rest, resting);
  const nearing = new Float64Array(names.length + 1);
  if (arrival.near > 0) track.fill(track.temperatureOf(arrival.position), arrival.near, nearing);
  const totals: Record<string, number> = {};
  names.forEach((name, i) => {
    totals[name] = result(
      (sums[i + 1] as number) + (resting[i + 1] as number) + (nearing[i + 1] as number),
      `totals.${name}`,
    );
  });
  return {
    temperatureEnd: arrival.temperature,
    duration: duration ?? result(sums[0] as number, "duration"),
    totals: totals as SegmentResult<Name>["totals"],
  };
}

/** When a segment passes each of several temperatures [s since its start], which run from its start to its end. */
export function timesOfPassing(input: SegmentInput<never>, temperatures: readonly number[]): readonly number[] {
  const start = temperature(input.temperatureStart, "temperatureStart");
  const end = temperatures[temperatures.length - 1] as number;
  const sense = Math.sign(end - start);
  const track = layTrack(input, start, end, sense);
  let at = start;
  const positions = temperatures.map((next, i) => {
    if ((next - at) * sense < 0)
      refuse("input", `temperatures[${i}]`, next, `${at} °C or beyond, on the way from ${start} to ${end} °C`);
    at = next;
    return track.positionOf(next);
  });
  return track.passing(positions).map((time, i) => result(time, `times[${i}]`));
}
