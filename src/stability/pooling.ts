import { refuse, result } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import { fisherAbove } from "../numeric/tails.js";
import { fitColumns, type LineFit, roundingOf } from "./line.js";
import type { TimedReading } from "./trend.js";

/** Readings of one lot. */
export interface LotReadings {
  readonly name: string;
  /** Age [s] and value of each reading, in any order. */
  readonly readings: readonly TimedReading[];
}

/** Which lines the lots share: all of it, the slope, or nothing. */
export type ShelfLifeModel = "common line" | "common slope" | "separate lines";

/** Whether lots may be taken together in one respect. */
export interface PoolingTest {
  /** Ratio of variances (F). */
  readonly ratio: number;
  /** Degrees of freedom, above and below the line. */
  readonly degreesOfFreedom: readonly [number, number];
  /** How often lots that are alike would differ by as much or more (p-value). */
  readonly probability: number;
}

/** The line of one lot under the model chosen. */
export interface LotFit {
  readonly name: string;
  readonly intercept: number;
  readonly slope: number;
  /** Variance of the line at a time t: c0 + 2 c1 t + c2 t². */
  readonly variance: readonly [number, number, number];
  readonly degreesOfFreedom: number;
  readonly timeLast: number;
}

/** Ratio of what lots differ by to what readings scatter by. */
function compare(more: number, fewer: number, above: number, full: LineFit, rounding: number): PoolingTest {
  const difference = Math.max(0, fewer - more);
  const below = full.degreesOfFreedom;
  const noise = full.fit.sumOfSquares / below;
  // Readings without scatter: lots are alike, or they are not; F has no size then, and 1 and 1e300 stand for the two.
  if (noise === 0) {
    const alike = difference <= rounding;
    return { ratio: alike ? 0 : 1e300, degreesOfFreedom: [above, below], probability: alike ? 1 : 0 };
  }
  const ratio = result(difference / above / noise, "ratio of variances");
  return { ratio, degreesOfFreedom: [above, below], probability: fisherAbove(ratio, above, below) };
}

/** Pools the lots as far as the two tests allow, and gives the line of each. */
export function poolLots(
  lots: readonly LotReadings[],
  significance: number,
  scatter: "pooled" | "by lot",
): {
  readonly model: ShelfLifeModel;
  readonly tests?: { readonly slopes: PoolingTest; readonly intercepts: PoolingTest };
  readonly lots: readonly LotFit[];
} {
  const points = lots.flatMap(({ readings }, lot) => readings.map((reading) => ({ ...reading, lot })));
  const values = points.map(({ value }) => value);
  const times = points.map(({ time }) => time);
  const ofLot = lots.map((_, lot) => points.map((point) => (point.lot === lot ? 1 : 0)));
  const lasts = lots.map(({ readings }) => maxOf(readings.map(({ time }) => time)));
  const rounding = 4 * roundingOf(values);
  const full = fitColumns(
    [...ofLot, ...ofLot.map((own) => own.map((is, i) => is * (times[i] as number)))],
    values,
    "lots",
  );
  if (full.degreesOfFreedom < 1)
    refuse("input", "lots", `${values.length} readings`, `${2 * lots.length + 1} at least`);
  const slope = fitColumns([...ofLot, times], values, "lots");
  const line = fitColumns([times.map(() => 1), times], values, "lots");
  const more = lots.length - 1;
  const tests = more > 0 && {
    slopes: compare(full.fit.sumOfSquares, slope.fit.sumOfSquares, more, full, rounding),
    intercepts: compare(slope.fit.sumOfSquares, line.fit.sumOfSquares, more, full, rounding),
  };
  const at = (fit: LineFit, place: (lot: number) => readonly [number, number]): readonly LotFit[] =>
    lots.map(({ name }, lot) => lineOf(name, fit, place(lot), lasts[lot] as number));
  if (tests && tests.slopes.probability < significance) {
    const separate =
      scatter === "by lot"
        ? lots.map((lot, i) => ownLine(lot, lasts[i] as number))
        : at(full, (lot) => [lot, lots.length + lot]);
    return { model: "separate lines", tests, lots: separate };
  }
  if (tests && tests.intercepts.probability < significance)
    return { model: "common slope", tests, lots: at(slope, (lot) => [lot, lots.length]) };
  return { model: "common line", ...(tests ? { tests } : {}), lots: at(line, () => [0, 1]) };
}

/** The line whose intercept and slope stand at two places of a fit. */
function lineOf(
  name: string,
  { fit, degreesOfFreedom }: LineFit,
  [a, b]: readonly [number, number],
  timeLast: number,
): LotFit {
  const noise = fit.sumOfSquares / degreesOfFreedom;
  const covariance = (i: number, k: number): number =>
    result(noise * (fit.inverse[i]?.[k] as number), "variance of the line");
  return {
    name,
    intercept: fit.coefficients[a] as number,
    slope: fit.coefficients[b] as number,
    variance: [covariance(a, a), covariance(a, b), covariance(b, b)],
    degreesOfFreedom,
    timeLast,
  };
}

/** The line of a lot with its own scatter. */
function ownLine({ name, readings }: LotReadings, timeLast: number): LotFit {
  if (readings.length < 3)
    refuse("input", "lots", `${readings.length} readings of ${name}`, "three of each lot at least");
  const times = readings.map(({ time }) => time);
  const own = fitColumns(
    [times.map(() => 1), times],
    readings.map(({ value }) => value),
    "lots",
  );
  return lineOf(name, own, [0, 1], timeLast);
}
