import { finite, list, result } from "../guards.js";

/** A value read off a fitted curve, and the limits of its confidence. */
export interface Estimate {
  /** The best estimate. */
  readonly value: number;
  /** Lower confidence limit. */
  readonly min: number;
  /** Upper confidence limit. */
  readonly max: number;
}

/** The variance of a linear combination, from the covariance of its parts; never below zero by rounding. */
export function varianceOf(
  covariance: readonly (readonly number[])[],
  weights: readonly number[],
  path: string,
): number {
  const rows = list(covariance, path, weights.length);
  let sum = 0;
  weights.forEach((one, i) => {
    const row = list(rows[i] ?? [], `${path}[${i}]`, weights.length);
    weights.forEach((other, j) => {
      sum += one * other * finite(row[j], `${path}[${i}][${j}]`);
    });
  });
  return Math.max(0, result(sum, "variance"));
}
