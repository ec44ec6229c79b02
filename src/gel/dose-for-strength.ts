import { finite, list, notNegative, positive, record, refuse, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { confidenceFactor } from "../numeric/student.js";
import type { DoseResponse } from "./dose-response.js";
import { type Estimate, varianceOf } from "./estimate.js";
import * as known from "./known.js";

/** The curve's numbers, checked, since a fit may come back from a file. */
function curveOf(fit: DoseResponse) {
  record(fit, "fit");
  const [doseMin, doseMax] = list(fit.doses, "fit.doses", 2) as readonly [number, number];
  return {
    factor: positive(record(fit.factor, "fit.factor").value, "fit.factor.value"),
    exponent: positive(record(fit.exponent, "fit.exponent").value, "fit.exponent.value"),
    threshold: notNegative(record(fit.threshold, "fit.threshold").value, "fit.threshold.value"),
    doseMin: positive(doseMin, "fit.doses[0]"),
    doseMax: positive(doseMax, "fit.doses[1]"),
  };
}

/** How far the curve may be off at a dose, in ln strength. */
function halfWidth(fit: DoseResponse, exponent: number, above: number, confidence: number | undefined): number {
  const variance = varianceOf(fit.covariance, [1, Math.log(above), -exponent / above], "fit.covariance");
  return confidenceFactor(confidence, fit.degreesOfFreedom) * Math.sqrt(variance);
}

/**
 * The strength that a dose of gel former gives, by a fitted dose–response, with the confidence limits of the curve.
 *
 * $$G = A\,(c - c_0)^n$$
 *
 * The limits are those of the curve, the mean of many batches; a single batch scatters about it by `scatter` as well.
 *
 * @param input.fit - The fitted curve.
 * @param input.dose - Dose of gel former, in the unit of the trials.
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @param input.beyond - Outside the doses tried: `"throw"` (default) or `"extend"`; never at or below the threshold.
 * @returns The strength [unit of the trials' strengths] and its limits.
 * @throws CalculationError `input` where the fit is not whole; `range` outside the doses tried.
 * @source definition (the fitted curve)
 * @example
 * ```ts
 * import { fitDoseResponse, strengthAtDose } from "gelwright/gel";
 * const trials = [{ dose: 3, strength: 12 }, { dose: 5, strength: 41 }, { dose: 8, strength: 98 }, { dose: 12, strength: 230 }];
 * const fit = fitDoseResponse({ trials, threshold: 1 });
 * strengthAtDose({ fit, dose: 9 }).value > 98; // => true
 * ```
 */
export function strengthAtDose(input: {
  readonly fit: DoseResponse;
  readonly dose: number;
  readonly confidence?: number;
  readonly beyond?: Beyond;
}): Estimate {
  const { fit, dose, confidence, beyond } = record(input, "input", known.strengthAtDose);
  const { factor, exponent, threshold, doseMin, doseMax } = curveOf(fit);
  const free = extending(beyond);
  const above = positive(dose, "dose") - threshold;
  if (!(above > 0)) refuse("range", "dose", dose, `a dose above the threshold, ${threshold}`);
  if (!free && (dose < doseMin || dose > doseMax))
    refuse("range", "dose", dose, `a dose tried, ${doseMin} to ${doseMax}`);
  const value = result(factor * above ** exponent, "strength");
  const half = halfWidth(fit, exponent, above, confidence);
  return { value, min: value * Math.exp(-half), max: result(value * Math.exp(half), "strength") };
}

/**
 * The dose of gel former for a wanted yield stress or modulus, by a fitted dose–response, with its confidence limits.
 *
 * $$c = c_0 + \left(\frac{G}{A}\right)^{1/n}$$
 *
 * The limits are the curve's, carried over to the dose along the curve's slope there.
 *
 * @param input.fit - The fitted curve.
 * @param input.strength - Strength wanted, above 0 [unit of the trials' strengths].
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @param input.beyond - Where the dose lies outside those tried: `"throw"` (default) or `"extend"`.
 * @returns The dose [unit of the trials' doses] and its limits.
 * @throws CalculationError `input` where the fit is not whole; `range` where the dose lies outside those tried.
 * @source definition (the fitted curve, solved for the dose)
 * @example
 * ```ts
 * import { doseForStrength, fitDoseResponse } from "gelwright/gel";
 * const trials = [2, 3, 5, 9].map((dose) => ({ dose, strength: 4 * (dose - 1) ** 2 }));
 * Math.round(doseForStrength({ fit: fitDoseResponse({ trials, threshold: 1 }), strength: 100 }).value * 1e9) / 1e9; // => 6
 * ```
 */
export function doseForStrength(input: {
  readonly fit: DoseResponse;
  readonly strength: number;
  readonly confidence?: number;
  readonly beyond?: Beyond;
}): Estimate {
  const { fit, strength, confidence, beyond } = record(input, "input", known.doseForStrength);
  const { factor, exponent, threshold, doseMin, doseMax } = curveOf(fit);
  const free = extending(beyond);
  const above = positive((positive(strength, "strength") / factor) ** (1 / exponent), "dose above the threshold");
  const value = finite(threshold + above, "dose");
  // A strength that was tried may come back a rounding outside.
  const slack = 1e-12 * value;
  if (!free && (value < doseMin - slack || value > doseMax + slack))
    refuse("range", "strength", strength, `a strength at a dose tried, ${doseMin} to ${doseMax} (this needs ${value})`);
  const half = (halfWidth(fit, exponent, above, confidence) * above) / exponent;
  return { value, min: result(value - half, "dose"), max: result(value + half, "dose") };
}
