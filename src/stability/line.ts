import { refuse, result } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import { type LeastSquares, leastSquares } from "../numeric/least-squares.js";

/** Values over time, fitted by lines that share a slope or an intercept or nothing. */
export interface LineFit {
  readonly fit: LeastSquares;
  /** Readings less coefficients. */
  readonly degreesOfFreedom: number;
}

/** What is left of values of this size after a fit that is exact but for rounding, as a sum of squares. */
export function roundingOf(values: readonly number[]): number {
  const largest = maxOf(values.map(Math.abs));
  return values.length * (1e-13 * largest) ** 2;
}

/** Fits columns to values, and counts what rounding alone leaves as nothing. */
export function fitColumns(columns: readonly (readonly number[])[], values: readonly number[], path: string): LineFit {
  const fit = leastSquares(
    columns.map((column) => Float64Array.from(column)),
    Float64Array.from(values),
  );
  if (!fit) return refuse("input", path, "too few times", "readings at two times at least");
  for (const coefficient of fit.coefficients) result(coefficient, path);
  const left = result(fit.sumOfSquares, path);
  const sumOfSquares = left <= roundingOf(values) ? 0 : left;
  return { fit: { ...fit, sumOfSquares }, degreesOfFreedom: values.length - columns.length };
}
