import { finite, list, positive, record, refuse, result, show } from "../guards.js";
import { compileFlowCurve } from "../laws/compile-flow-curve.js";
import { confidenceFactor } from "../numeric/student.js";
import type { FlowFit } from "./fit-flow-curve.js";
import { flowForm } from "./flow-forms.js";
import * as known from "./known.js";

/** What a fitted flow curve says at a shear rate, and how well it knows it. */
export interface FittedStress {
  /** Stress of the curve [Pa]. */
  readonly stress: number;
  /** Standard error of that stress [Pa], from the scatter of the readings alone. */
  readonly standardError: number;
  /** Lower confidence limit of that stress [Pa]; a curve that is hardly known may have it below 0. */
  readonly min: number;
  /** Upper confidence limit [Pa]. */
  readonly max: number;
  /** True outside the shear rates that were read, where the model is a guess. */
  readonly extrapolated: boolean;
}

/**
 * The stress of a fitted flow curve with its standard error and its confidence limits: the band to draw around the curve.
 *
 * $$s_\tau^2 = g^\mathsf{T}\,(\operatorname{cov} p)\,g \qquad g_k = \frac{\partial\tau}{\partial p_k}
 *   \qquad \tau \pm t_{\nu}\,s_\tau$$
 *
 * It says how far scatter moves the curve, not whether the model is the right one.
 *
 * @param input.fit - What `fitFlowCurve` gave.
 * @param input.shearRate - Shear rate [1/s], above 0.
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @returns Stress, standard error and limits [Pa], and whether the rate lies outside the readings.
 * @throws CalculationError `input` for a fit that is not whole or a rate out of range.
 * @source seber-wild-1989 from memory
 * @example
 * ```ts
 * import { fitFlowCurve, fittedStressAt } from "gelwright/rheology";
 * const points = [1, 2, 3].map((shearRate, i) => ({ shearRate, stress: [2.1, 3.9, 6.0][i] as number }));
 * const fit = fitFlowCurve({ model: "newton", points, weighting: "absolute" });
 * fittedStressAt({ fit, shearRate: 4 }).extrapolated; // => true
 * ```
 */
export function fittedStressAt(input: {
  readonly fit: FlowFit;
  readonly shearRate: number;
  readonly confidence?: number;
}): FittedStress {
  const { fit, shearRate, confidence } = record(input, "input", known.fittedStressAt);
  const { model, curve, parameters, covariance, degreesOfFreedom, shearRateMin, shearRateMax } = record(fit, "fit");
  const limits = confidenceFactor(confidence, degreesOfFreedom, "fit.degreesOfFreedom");
  const rate = positive(shearRate, "shearRate");
  const stress = result(compileFlowCurve(curve, "fit.curve").stressOf(rate), "stress");
  const named = list(parameters, "fit.parameters", 1);
  const held =
    "viscosityInfinite" in curve && !named.includes("viscosityInfinite") ? curve.viscosityInfinite : undefined;
  const form = flowForm(model, held) ?? refuse("input", "fit.model", show(model), "a flow model");
  const { names } = form;
  if (named.length !== names.length || names.some((name, k) => name !== named[k]))
    refuse("input", "fit.parameters", named, names.join(", "));
  const values = names.map((name) => finite((curve as Readonly<Record<string, unknown>>)[name], `fit.curve.${name}`));
  const inner = form.rooted ? values.map(Math.sqrt) : values;
  const slopes = form.slopes(inner, rate).map((slope, k) => (form.rooted ? slope / (2 * (inner[k] as number)) : slope));
  const rows = list(covariance, "fit.covariance", names.length);
  let variance = 0;
  for (const [j, one] of slopes.entries())
    for (const [k, other] of slopes.entries())
      variance +=
        one *
        other *
        finite(list(rows[j] as readonly number[], `fit.covariance[${j}]`)[k], `fit.covariance[${j}][${k}]`);
  // Rounding may leave a variance of nothing a little below nothing.
  const standardError = result(Math.sqrt(Math.max(0, result(variance, "variance"))), "standard error");
  const reach = limits * standardError;
  return {
    stress,
    standardError,
    min: result(stress - reach, "lower limit"),
    max: result(stress + reach, "upper limit"),
    extrapolated:
      rate < positive(shearRateMin, "fit.shearRateMin") || rate > positive(shearRateMax, "fit.shearRateMax"),
  };
}
