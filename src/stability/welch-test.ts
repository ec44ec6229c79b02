import { finite, list, record, refuse, result, within } from "../guards.js";
import type { Interval } from "../laws/interval.js";
import { type Moments, momentsOf } from "../numeric/moments.js";
import { studentBeyond, studentTOf } from "../numeric/tails.js";
import * as known from "./known.js";

/** Whether two sets of readings differ in their mean. */
export interface WelchTest {
  /** Mean of the first less mean of the second [unit of the readings], with the bounds of the confidence asked for. */
  readonly difference: Interval;
  /** The difference in standard errors. */
  readonly t: number;
  /** Degrees of freedom by Welch and Satterthwaite. */
  readonly degreesOfFreedom: number;
  /** How often readings of one and the same mean would differ by as much or more (two-sided p-value). */
  readonly probability: number;
  /** Whether they differ at that confidence; `false` is no proof that they are the same. */
  readonly differs: boolean;
}

function readSet(readings: readonly number[], path: string): Moments {
  const { mean, variance, count } = momentsOf(
    list(readings, path, 2).map((value, i) => finite(value, `${path}[${i}]`)),
  );
  return { mean: result(mean, path), variance: result(variance, path), count };
}

/**
 * Whether two formulas differ: the two-sample test by Welch, which does not ask that both scatter alike.
 *
 * $$t = \frac{\bar x_1 - \bar x_2}{\sqrt{s_1^2/n_1 + s_2^2/n_2}} \qquad \nu = \frac{\left(s_1^2/n_1 + s_2^2/n_2\right)^2}{\dfrac{(s_1^2/n_1)^2}{n_1 - 1} + \dfrac{(s_2^2/n_2)^2}{n_2 - 1}}$$
 *
 * Each reading has to come from a sample of its own: ten weighings of one jar are one reading. Readings of two lots differ
 * by the lots as well as by the formulas.
 *
 * @param input.first - Readings of the first formula, two at least.
 * @param input.second - Readings of the second formula, two at least, in the same unit.
 * @param input.confidence - Above 0 and below 1; default 0.95.
 * @returns The difference with bounds, t, degrees of freedom, p-value, and whether they differ.
 * @throws CalculationError `input` where an argument is out of range, `range` where neither set scatters at all or a
 *   double cannot hold the result.
 * @source welch-1947 from memory
 * @example
 * ```ts
 * import { welchTest } from "gelwright/stability";
 * const test = welchTest({ first: [1.4, 1.7, 1.5, 1.9], second: [1.1, 1.0, 1.3, 1.1] });
 * test.probability.toFixed(3); // => "0.012"
 * test.differs; // => true
 * ```
 */
export function welchTest(input: {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly confidence?: number;
}): WelchTest {
  const { first, second, confidence = 0.95 } = record(input, "input", known.welchTest);
  const level = within(confidence, "confidence", 0, 1);
  const one = readSet(first, "first");
  const other = readSet(second, "second");
  const ofOne = one.variance / one.count;
  const ofOther = other.variance / other.count;
  const square = ofOne + ofOther;
  if (!(square > 0)) refuse("range", "first", "no scatter in either set", "readings that scatter");
  // Shares of the whole, whose squares neither overflow nor vanish.
  const [share, rest] = [ofOne / square, ofOther / square];
  const degreesOfFreedom = result(
    1 / (share ** 2 / (one.count - 1) + rest ** 2 / (other.count - 1)),
    "degrees of freedom",
  );
  const error = Math.sqrt(square);
  const value = result(one.mean - other.mean, "difference");
  const doubt = studentTOf(level, degreesOfFreedom) * error;
  const t = result(value / error, "t");
  const probability = studentBeyond(t, degreesOfFreedom);
  return {
    difference: { min: result(value - doubt, "difference"), value, max: result(value + doubt, "difference") },
    t,
    degreesOfFreedom,
    probability,
    differs: probability < 1 - level,
  };
}
