import { finite, list, notNegative, record, refuse, result, show, within } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import { root } from "../numeric/root.js";
import { studentT } from "../numeric/student.js";
import * as known from "./known.js";
import { type LotFit, type LotReadings, type PoolingTest, poolLots, type ShelfLifeModel } from "./pooling.js";

/** A shelf life by regression. */
export interface ShelfLife {
  /** The shortest of the lots [s]: 0 where the limit is passed at the start, `null` where the line never reaches it. */
  readonly duration: number | null;
  /** Which lot is the shortest; left out where `duration` is `null`. */
  readonly lot?: string;
  /** Which limit it reaches first; left out where `duration` is `null`. */
  readonly limit?: "min" | "max";
  /** Which lines the lots share. */
  readonly model: ShelfLifeModel;
  /** Whether the lots may share a slope, and an intercept; left out for a single lot. */
  readonly tests?: {
    readonly slopes: PoolingTest;
    readonly intercepts: PoolingTest;
  };
  readonly lots: readonly {
    readonly name: string;
    /** Fitted value at time 0 [unit of the readings]. */
    readonly intercept: number;
    /** [unit of the readings per s]. */
    readonly slope: number;
    /** As above, of this lot [s]. */
    readonly duration: number | null;
  }[];
  /** Time of the last reading [s]. */
  readonly timeLast: number;
  /** Whether the shelf life reaches beyond the last reading: there the line is extended, and nothing was measured. */
  readonly extrapolated: boolean;
}

/** The first time at which the confidence limit of a lot's line passes a limit; null if it never does. */
function crossing(lot: LotFit, factor: number, limit: number, side: "min" | "max"): number | null {
  const sign = side === "min" ? 1 : -1;
  const room = sign * (lot.intercept - limit);
  const slope = sign * lot.slope;
  const [c0, c1, c2] = lot.variance;
  const doubt = (time: number): number => factor * Math.sqrt(Math.max(0, c0 + time * (2 * c1 + time * c2)));
  // The room that is left is concave in time, so it passes through 0 once at most.
  const left = (time: number): number => room + slope * time - doubt(time);
  if (!(left(0) > 0)) return 0;
  if (slope - factor * Math.sqrt(c2) >= 0) return null;
  let late = lot.timeLast > 0 ? lot.timeLast : 1;
  while (left(late) > 0) late = result(2 * late, "duration");
  return root(left, 0, late, "shelf life");
}

/**
 * The shelf life by regression: until when the mean of a lot keeps within its specification, with 95 % confidence.
 *
 * $$y = a + b\,t \qquad \hat a + \hat b\,t \mp t_{1-\alpha,\nu}\,s\sqrt{\mathbf x^\top (\mathbf X^\top \mathbf X)^{-1}\mathbf x} = L$$
 *
 * Lots are pooled as ICH Q1E does it: by an analysis of covariance, first of the slopes, then of the intercepts, each at a
 * significance of 0.25, since few readings would hide a difference at 0.05. What cannot be pooled keeps a line of its own,
 * with the scatter of all lots, and the shortest lot counts. With one limit the confidence limit is one-sided, with two it
 * is two-sided. Time is the age of the product.
 *
 * It takes for granted that the value goes in a straight line, or that the caller has taken logarithms, and it speaks of
 * the storage at which the readings were taken. A peroxide value passes an induction time and a maximum: no straight line
 * goes through it (`peroxideRise` of the room `oils` tests for that). How far beyond the last reading a shelf life may
 * reach is a rule of the guideline and a judgement of a qualified person, so it is told and not cut.
 *
 * @param input.lots - Name and readings (age [s], 0 or more, and value) of each lot, at two ages at least; one lot at least.
 * @param input.limits - The specification: `min`, `max` or both, in the unit of the values.
 * @param input.confidence - Of the limit, above 0.5 and below 1; default 0.95.
 * @param input.significance - Below which a test keeps lots apart, above 0 and below 1; default 0.25.
 * @param input.scatter - Of lines of their own: `"pooled"` over all lots (default) or `"by lot"`.
 * @returns The shelf life [s], the lot and limit that set it, the tests and lines, and whether it is extrapolated.
 * @throws CalculationError `input` where an argument is out of range, a name stands twice or readings are too few, `range`
 *   where a double cannot hold the result.
 * @source ich-q1e the level of significance read, sections B.1 to B.4 from memory; leblond-2011 the method with its worked examples, read in a restatement
 * @example
 * ```ts
 * import { shelfLife } from "gelwright/stability";
 * const month = 2629800;
 * const lot = (name: string, values: readonly number[]) => ({
 *   name,
 *   readings: values.map((value, i) => ({ time: 3 * i * month, value })),
 * });
 * const lots = [lot("A", [100.4, 99.1, 98.4, 97.2, 96.3]), lot("B", [100.2, 99.4, 98.1, 97.4, 96.4])];
 * const life = shelfLife({ lots, limits: { min: 90 } });
 * life.model; // => "common line"
 * ((life.duration ?? 0) / month).toFixed(1); // => "29.9"
 * life.extrapolated; // => true
 * ```
 */
export function shelfLife(input: {
  readonly lots: readonly LotReadings[];
  readonly limits: {
    /** [unit of the readings]. */
    readonly min?: number;
    /** [unit of the readings]. */
    readonly max?: number;
  };
  readonly confidence?: number;
  readonly significance?: number;
  readonly scatter?: "pooled" | "by lot";
}): ShelfLife {
  const {
    lots,
    limits,
    confidence = 0.95,
    significance = 0.25,
    scatter = "pooled",
  } = record(input, "input", known.shelfLife);
  const { min, max } = record(limits, "limits", known.shelfLifeLimits);
  if (min === undefined && max === undefined) refuse("input", "limits", "no limit", "min, max or both");
  const sides = [
    ...(min === undefined ? [] : [{ side: "min", limit: finite(min, "limits.min") } as const]),
    ...(max === undefined ? [] : [{ side: "max", limit: finite(max, "limits.max") } as const]),
  ];
  if (min !== undefined && max !== undefined && !(min < max))
    refuse("input", "limits", `${min}, ${max}`, "min below max");
  const share = within(confidence, "confidence", 0.5, 1);
  const threshold = within(significance, "significance", 0, 1);
  if (scatter !== "pooled" && scatter !== "by lot") refuse("input", "scatter", show(scatter), '"pooled" or "by lot"');
  const checked = readLots(lots);
  const pooled = poolLots(checked, threshold, scatter);
  const level = sides.length === 2 ? share : 2 * share - 1;
  const lives = pooled.lots.map((lot) => {
    const factor = studentT(level, lot.degreesOfFreedom);
    const reached = sides.map(({ side, limit }) => ({ side, time: crossing(lot, factor, limit, side) }));
    return { lot, first: reached.reduce((one, other) => (sooner(other.time, one.time) ? other : one)) };
  });
  const shortest = lives.reduce((one, other) => (sooner(other.first.time, one.first.time) ? other : one));
  const duration = shortest.first.time;
  const timeLast = maxOf(pooled.lots.map((lot) => lot.timeLast));
  return {
    duration,
    ...(duration === null ? {} : { lot: shortest.lot.name, limit: shortest.first.side }),
    model: pooled.model,
    ...(pooled.tests ? { tests: pooled.tests } : {}),
    lots: lives.map(({ lot: { name, intercept, slope }, first }) => ({ name, intercept, slope, duration: first.time })),
    timeLast,
    extrapolated: duration === null || duration > timeLast,
  };
}

function sooner(one: number | null, other: number | null): boolean {
  return one !== null && (other === null || one < other);
}

function readLots(lots: readonly LotReadings[]): readonly LotReadings[] {
  const names = new Set<string>();
  return list(lots, "lots", 1).map((lot, i) => {
    const { name, readings } = record(lot, `lots[${i}]`);
    if (typeof name !== "string" || name === "" || names.has(name))
      refuse("input", `lots[${i}].name`, show(name), "a name of its own");
    names.add(name);
    const points = list(readings, `lots[${i}].readings`, 2).map((reading, k) => {
      const at = `lots[${i}].readings[${k}]`;
      const { time, value } = record(reading, at);
      return { time: notNegative(time, `${at}.time`), value: finite(value, `${at}.value`) };
    });
    if (new Set(points.map(({ time }) => time)).size < 2)
      refuse("input", `lots[${i}].readings`, "one time", "readings at two times at least");
    return { name, readings: points };
  });
}
