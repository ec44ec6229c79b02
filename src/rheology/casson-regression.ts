import { record, refuse, result } from "../guards.js";
import { leastSquares } from "../numeric/least-squares.js";
import { type FlowReading, flowReadings } from "./flow-reading.js";
import * as known from "./known.js";

/**
 * Casson's yield stress and plastic viscosity by the straight line through the roots, as chocolate makers have it.
 *
 * $$\sqrt\tau = \sqrt{\tau_y} + \sqrt\eta\,\sqrt{\dot\gamma}$$
 *
 * Ordinary least squares in the roots: not the fit of `fitFlowCurve`, which makes residuals of the stress small. Say
 * which of the two a figure comes from.
 *
 * @param input.points - The readings: shear rate [1/s] and stress [Pa], both above 0; at least two different rates.
 * @returns Yield stress [Pa], plastic viscosity [Pa·s], and the share of the roots' variance that the line explains [-].
 * @throws CalculationError `input` for readings that are too few or none, `unreachable` where they show no yield stress.
 * @source casson-1959 the equation, from memory; the regression is common practice, no source
 * @example
 * ```ts
 * import { cassonRegression } from "gelwright/rheology";
 * const points = [
 *   { shearRate: 1, stress: 9 },
 *   { shearRate: 4, stress: 16 },
 *   { shearRate: 16, stress: 36 },
 * ];
 * cassonRegression({ points }).determination; // => 1
 * ```
 */
export function cassonRegression(input: { readonly points: readonly FlowReading[] }): {
  readonly yieldStress: number;
  readonly plasticViscosity: number;
  readonly determination: number;
} {
  const readings = flowReadings(record(input, "input", known.cassonRegression).points, 2);
  const roots = Float64Array.from(readings, ({ stress }) => Math.sqrt(stress));
  const line = leastSquares(
    [roots.map(() => 1), Float64Array.from(readings, ({ shearRate }) => Math.sqrt(shearRate))],
    roots,
  );
  if (!line) return refuse("input", "points", "one shear rate", "readings at two or more different shear rates");
  const [intercept = 0, slope = 0] = line.coefficients;
  if (!(intercept > 0)) refuse("unreachable", "points", "no yield stress", "readings at lower shear rates");
  if (!(slope > 0)) refuse("unreachable", "points", "a stress that does not rise", "stresses that rise with the rate");
  const mean = roots.reduce((sum, one) => sum + one, 0) / roots.length;
  const spread = roots.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return {
    yieldStress: result(intercept * intercept, "yield stress"),
    plasticViscosity: result(slope * slope, "plastic viscosity"),
    determination: result(1 - line.sumOfSquares / spread, "determination"),
  };
}
