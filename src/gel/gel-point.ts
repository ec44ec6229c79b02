import { finite, list, positive, record, refuse, result, temperature } from "../guards.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import { leastSquares } from "../numeric/least-squares.js";
import { confidenceFactor } from "../numeric/student.js";
import { type Estimate, varianceOf } from "./estimate.js";
import * as known from "./known.js";
import type { DosePoint } from "./setting-temperature.js";

/** The line of gel points against dose, as it came out of readings: plain data. */
export interface GelPointLine {
  /** a, where ln c = a + b/T. */
  readonly intercept: number;
  /** b [K], below 0. */
  readonly slope: number;
  /** Heat of forming a mole of the gel's junctions, R b [J/mol]: below 0, since it is given off. */
  readonly enthalpy: number;
  /** Standard deviation of the readings about the line, in ln dose. */
  readonly scatter: number;
  /** Readings less two. */
  readonly degreesOfFreedom: number;
  /** Covariance of a and b, by rows. */
  readonly covariance: readonly (readonly number[])[];
}

/**
 * Fits the gel point (setting, dissolving or melting) against the dose of gel former.
 *
 * $$\ln c = a + \frac{b}{T} \qquad \Delta H = R\,b$$
 *
 * The form of Eldridge and Ferry for gels whose junctions form and melt with temperature. All readings have to be of one
 * direction and of one rate of heating or cooling.
 *
 * @param input.points - Doses and temperatures [°C]: at least three, at two doses or more.
 * @returns The line, as plain data.
 * @throws CalculationError `input` where the readings are too few, or the temperature does not rise with the dose.
 * @source eldridge-ferry-1954 the form of the law, from memory
 * @example
 * ```ts
 * import { fitGelPoint } from "gelwright/gel";
 * const points = [{ dose: 0.05, temperature: 48 }, { dose: 0.08, temperature: 55 }, { dose: 0.16, temperature: 65 }];
 * Math.round(fitGelPoint({ points }).enthalpy / 1000); // => -62
 * ```
 */
export function fitGelPoint(input: { readonly points: readonly DosePoint[] }): GelPointLine {
  const points = list(record(input, "input", known.fitGelPoint).points, "points", 3);
  const doses = Float64Array.from(points, (point, i) =>
    Math.log(positive(record(point, `points[${i}]`).dose, `points[${i}].dose`)),
  );
  const inverse = Float64Array.from(
    points,
    (point, i) => 1 / (temperature(point.temperature, `points[${i}].temperature`) + kelvin),
  );
  const line = leastSquares([doses.map(() => 1), inverse], doses);
  if (!line) return refuse("input", "points", "temperatures too close together", "readings that differ");
  const [intercept, slope] = line.coefficients as [number, number];
  if (!(slope < 0)) refuse("input", "points", "a temperature that falls", "temperatures that rise with the dose");
  const degreesOfFreedom = points.length - 2;
  const variance = line.sumOfSquares / degreesOfFreedom;
  return {
    intercept: result(intercept, "intercept"),
    slope: result(slope, "slope"),
    enthalpy: result(gasConstant * slope, "enthalpy"),
    scatter: Math.sqrt(variance),
    degreesOfFreedom,
    covariance: line.inverse.map((row) => row.map((one) => result(variance * one, "covariance"))),
  };
}

function lineOf(line: GelPointLine): { intercept: number; slope: number } {
  const slope = finite(record(line, "line").slope, "line.slope");
  if (slope >= 0) refuse("input", "line.slope", slope, "a slope below 0");
  return { intercept: finite(line.intercept, "line.intercept"), slope };
}

/**
 * The gel point at a dose, on the fitted line, with the line's confidence limits.
 *
 * $$T = \frac{b}{\ln c - a}$$
 *
 * @param input.line - The fitted line.
 * @param input.dose - Dose of gel former, above 0, in the unit of the readings.
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @returns The temperature [°C] and its limits.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where the line has no temperature for it.
 * @source eldridge-ferry-1954 the form of the law, from memory
 * @example
 * ```ts
 * import { fitGelPoint, gelPointAtDose } from "gelwright/gel";
 * const points = [{ dose: 0.05, temperature: 48 }, { dose: 0.08, temperature: 55 }, { dose: 0.16, temperature: 65 }];
 * Math.round(gelPointAtDose({ line: fitGelPoint({ points }), dose: 0.1 }).value); // => 58
 * ```
 */
export function gelPointAtDose(input: {
  readonly line: GelPointLine;
  readonly dose: number;
  readonly confidence?: number;
}): Estimate {
  const { line, dose, confidence } = record(input, "input", known.gelPointAtDose);
  const { intercept, slope } = lineOf(line);
  const inverse = (Math.log(positive(dose, "dose")) - intercept) / slope;
  if (!(inverse > 0)) refuse("unreachable", "dose", dose, `less than ${Math.exp(intercept)}`);
  const kelvins = 1 / inverse;
  const spread = Math.sqrt(varianceOf(line.covariance, [1, inverse], "line.covariance")) / -slope;
  const half = confidenceFactor(confidence, line.degreesOfFreedom) * spread * kelvins * kelvins;
  const value = result(kelvins - kelvin, "gel point");
  return { value, min: result(value - half, "gel point"), max: result(value + half, "gel point") };
}

/**
 * The dose of gel former whose gel point is a temperature, on the fitted line, with the line's confidence limits.
 *
 * $$c = \exp\left(a + \frac{b}{T}\right)$$
 *
 * @param input.line - The fitted line.
 * @param input.temperature - Gel point wanted [°C].
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @returns The dose [unit of the readings] and its limits.
 * @throws CalculationError `input` where an argument is out of range.
 * @source eldridge-ferry-1954 the form of the law, from memory
 * @example
 * ```ts
 * import { doseForGelPoint, fitGelPoint } from "gelwright/gel";
 * const points = [{ dose: 0.05, temperature: 48 }, { dose: 0.08, temperature: 55 }, { dose: 0.16, temperature: 65 }];
 * Math.round(doseForGelPoint({ line: fitGelPoint({ points }), temperature: 60 }).value * 1000); // => 114
 * ```
 */
export function doseForGelPoint(input: {
  readonly line: GelPointLine;
  readonly temperature: number;
  readonly confidence?: number;
}): Estimate {
  const { line, temperature: wanted, confidence } = record(input, "input", known.doseForGelPoint);
  const { intercept, slope } = lineOf(line);
  const inverse = 1 / (temperature(wanted, "temperature") + kelvin);
  const value = result(Math.exp(intercept + slope * inverse), "dose");
  const half =
    confidenceFactor(confidence, line.degreesOfFreedom) *
    Math.sqrt(varianceOf(line.covariance, [1, inverse], "line.covariance"));
  return { value, min: value * Math.exp(-half), max: result(value * Math.exp(half), "dose") };
}
