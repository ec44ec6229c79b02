import { finite, list, refuse, result } from "../guards.js";
import { studentT } from "../numeric/student.js";

/** A value read off a fitted curve, and the limits of its confidence. */
export interface Estimate {
  /** The best estimate. */
  readonly value: number;
  /** Lower confidence limit. */
  readonly least: number;
  /** Upper confidence limit. */
  readonly greatest: number;
}

/** Student's t of both sides for a confidence above 0 and below 1, 0.95 where none is given. */
export function confidenceFactor(confidence: number | undefined, degreesOfFreedom: number): number {
  const level = confidence ?? 0.95;
  if (!(typeof level === "number" && level > 0 && level < 1))
    refuse("input", "confidence", level, "a number above 0 and below 1");
  if (!(Number.isInteger(degreesOfFreedom) && degreesOfFreedom > 0 && degreesOfFreedom <= 1e6))
    refuse("input", "degreesOfFreedom", degreesOfFreedom, "a whole number from 1 to 1e6");
  return studentT(level, degreesOfFreedom);
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
