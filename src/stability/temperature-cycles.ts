import { list, positive, record, result, temperature, wholeNumber } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import * as known from "./known.js";
import { between, readTransitions, type Transition } from "./transition.js";

/** One stay of a cycle. */
export interface CycleStay {
  /** [°C]. */
  readonly temperature: number;
  /** How long it stays there, the way to it included [s], above 0. */
  readonly duration: number;
}

/** One stay of the whole test, with its times. */
export interface CycleStep {
  /** Which cycle, from 1. */
  readonly cycle: number;
  /** [°C]. */
  readonly temperature: number;
  /** After the start of the test [s]. */
  readonly timeStart: number;
  /** After the start of the test [s]. */
  readonly timeEnd: number;
}

/** A freeze-thaw test as data. */
export interface TemperatureCycles {
  readonly steps: readonly CycleStep[];
  /** Of the whole test [s]. */
  readonly duration: number;
  /** How often the product goes through each transition, up and down counted each. */
  readonly crossings: readonly {
    readonly name: string;
    /** Times; a stay that ends within the range counts once it is through. */
    readonly count: number;
  }[];
  /** Whether it goes through none: then the test asks the product for nothing but expansion. */
  readonly withoutTransition: boolean;
}

/**
 * A freeze-thaw test as data: which temperature from when to when, and how often the product melts and sets on the way.
 *
 * $$t = n \sum_i t_i$$
 *
 * What counts in such a test is how often the product goes through a transition, so the transitions are counted. A pack
 * takes hours to follow the chamber: a stay shorter than that tests the wall of the pack. No number of cycles stands for a
 * number of years.
 *
 * @param input.stays - Temperature [°C] and duration [s] of each stay of a cycle, in order; two at least.
 * @param input.cycles - How many cycles, a whole number from 1 to 1000.
 * @param input.temperatureStart - Temperature of the product before the first stay [°C].
 * @param input.transitions - Gel points and melting ranges of the product [°C], if it has any.
 * @returns All stays with their times, the whole time [s], and how often each transition is gone through.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition; three to five cycles are common practice, no source
 * @example
 * ```ts
 * import { temperatureCycles } from "gelwright/stability";
 * const day = 86400;
 * const test = temperatureCycles({
 *   stays: [-10, 25, 45, 25].map((temperature) => ({ temperature, duration: day })),
 *   cycles: 3,
 *   temperatureStart: 25,
 *   transitions: [{ name: "oil sets", temperatureMin: -2, temperatureMax: 4 }],
 * });
 * test.duration / day; // => 12
 * test.crossings[0]?.count; // => 6
 * ```
 */
export function temperatureCycles(input: {
  readonly stays: readonly CycleStay[];
  readonly cycles: number;
  readonly temperatureStart: number;
  readonly transitions?: readonly Transition[];
}): TemperatureCycles {
  const { stays, cycles, temperatureStart, transitions } = record(input, "input", known.temperatureCycles);
  const count = wholeNumber(cycles, "cycles", 1, 1000);
  const start = temperature(temperatureStart, "temperatureStart");
  const checked = list(stays, "stays", 2).map((stay, i) => {
    const { temperature: warmth, duration } = record(stay, `stays[${i}]`);
    return {
      temperature: temperature(warmth, `stays[${i}].temperature`),
      duration: positive(duration, `stays[${i}].duration`),
    };
  });
  const named = readTransitions(transitions);
  const one = result(
    checked.reduce((sum, { duration }) => sum + duration, 0),
    "duration of a cycle",
  );
  const steps: CycleStep[] = [];
  for (let cycle = 1; cycle <= count; cycle += 1) {
    let time = (cycle - 1) * one;
    for (const { temperature: at, duration } of checked) {
      steps.push({ cycle, temperature: at, timeStart: time, timeEnd: result(time + duration, "time") });
      time += duration;
    }
  }
  const path = [start, ...steps.map(({ temperature: at }) => at)];
  const crossings = named.map((transition) => ({ name: transition.name, count: timesThrough(transition, path) }));
  const touched = between(named, minOf(path), maxOf(path));
  return { steps, duration: result(count * one, "duration"), crossings, withoutTransition: touched.length === 0 };
}

/** How often a path comes out of a transition on the other side than it went in. */
function timesThrough({ temperatureMin, temperatureMax }: Transition, path: readonly number[]): number {
  let side = 0;
  let times = 0;
  for (const at of path) {
    const now = at < temperatureMin ? -1 : at > temperatureMax ? 1 : 0;
    if (now !== 0 && side !== 0 && now !== side) times += 1;
    if (now !== 0) side = now;
  }
  return times;
}
