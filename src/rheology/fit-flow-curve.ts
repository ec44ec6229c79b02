import { notNegative, record, refuse, result, show } from "../guards.js";
import { compileFlowCurve } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { fitForm } from "./fit-form.js";
import { type FlowModel, flowForm } from "./flow-forms.js";
import { type FlowReading, flowReadings } from "./flow-reading.js";
import * as known from "./known.js";
import { refuseUnseen } from "./unseen.js";

/** Which residuals are made small: `"relative"` those in parts of each stress, `"absolute"` those in Pa. */
export type Weighting = "relative" | "absolute";

/** A flow curve fitted to readings. */
export interface FlowFit {
  /** The model asked for. */
  readonly model: FlowModel;
  /** The curve, to be handed to whatever takes one. */
  readonly curve: FlowCurve;
  /** Which residuals were made small. */
  readonly weighting: Weighting;
  /** The names of the fitted parameters, in the order of `covariance`. */
  readonly parameters: readonly string[];
  /** Standard error of each fitted parameter, by its name and in its unit. */
  readonly standardErrors: Readonly<Record<string, number>>;
  /** Covariance of the fitted parameters, in the products of their units. */
  readonly covariance: readonly (readonly number[])[];
  /** Stress read less stress of the curve [Pa], in the order of the readings. */
  readonly residuals: readonly number[];
  /** Sum of the weighted residuals' squares [Pa²], or [-] where they are relative. */
  readonly sumOfSquares: number;
  /** Root of that sum over the degrees of freedom [Pa], or [-] where they are relative. */
  readonly standardDeviation: number;
  /** Readings less fitted parameters. */
  readonly degreesOfFreedom: number;
  /** Lowest shear rate read [1/s]. */
  readonly shearRateMin: number;
  /** Highest shear rate read [1/s]. */
  readonly shearRateMax: number;
}

/** Refuses readings that are too few for a model, and says how many it takes. */
function refuseTooFew(points: readonly FlowReading[], wanted: number, model: FlowModel): void {
  const rates = new Set(points.map(({ shearRate }) => shearRate)).size;
  if (points.length > wanted && rates >= wanted) return;
  const found = `${points.length} readings at ${rates} shear rates`;
  const expected = `for ${model} at least ${wanted + 1} readings at ${wanted} or more different shear rates`;
  refuse("input", "points", found, expected);
}

/**
 * A flow curve of one model, fitted to rheometer readings by least squares.
 *
 * $$\min_p \sum_i w_i^2\,\bigl[\tau_i - \tau(\dot\gamma_i; p)\bigr]^2 \qquad w_i = \frac{1}{\tau_i} \;\text{or}\; 1
 *   \qquad \operatorname{cov} p = s^2 (J^\mathsf{T} J)^{-1}$$
 *
 * Stresses that span decades are read to some percent, not to some pascal: so residuals are relative unless
 * `weighting` says otherwise. For every shape on a grid (a flow index, a time) the other parameters follow by linear
 * least squares; the best goes on by Gauss and Newton's method to the minimum in all parameters, those that the stress
 * is linear in being solved for anew at each step.
 *
 * `carreau` has its bend held at 2, `carreau-yasuda` fits it. Both fit the viscosity that no shear goes below, unless
 * `viscosityInfinite` gives it: the oil's own viscosity is a fair bound, and readings seldom reach it.
 *
 * @param input.model - The model.
 * @param input.points - The readings: shear rate [1/s] and stress [Pa], both above 0; more of them than parameters, at
 *   as many different rates as parameters.
 * @param input.weighting - `"relative"` (default) or `"absolute"`.
 * @param input.viscosityInfinite - For the two Carreau models: the viscosity [Pa·s] at high shear, held; 0 or more.
 * @returns The curve with standard errors, covariance and residuals.
 * @throws CalculationError `input` for readings that are too few or none; `unreachable` where they do not show what
 *   the model asks for, with what is missing; `not-converged` where no minimum is found.
 * @source marquardt-1963 the damping, golub-pereyra-1973 the start and the linear parameters; the covariance by seber-wild-1989; all from memory
 * @example
 * ```ts
 * import { fitFlowCurve } from "gelwright/rheology";
 * const points = [
 *   { shearRate: 1, stress: 18 },
 *   { shearRate: 4, stress: 26 },
 *   { shearRate: 9, stress: 34 },
 *   { shearRate: 25, stress: 50 },
 * ];
 * const { curve } = fitFlowCurve({ model: "herschel-bulkley", points });
 * const flowIndex = curve.law === "herschel-bulkley" ? curve.flowIndex : 0;
 * Math.round(flowIndex * 1e9) / 1e9; // => 0.5
 * ```
 */
export function fitFlowCurve(input: {
  readonly model: FlowModel;
  readonly points: readonly FlowReading[];
  readonly weighting?: Weighting;
  readonly viscosityInfinite?: number;
}): FlowFit {
  const { model, points, weighting = "relative", viscosityInfinite } = record(input, "input", known.fitFlowCurve);
  if (viscosityInfinite !== undefined) notNegative(viscosityInfinite, "viscosityInfinite");
  if (weighting !== "relative" && weighting !== "absolute")
    refuse("input", "weighting", show(weighting), '"relative" or "absolute"');
  const form = flowForm(model, viscosityInfinite) ?? refuse("input", "model", show(model), "a flow model");
  const { names } = form;
  const readings = flowReadings(points, 1);
  refuseTooFew(readings, names.length, model);
  const rates = readings.map(({ shearRate }) => shearRate);
  const weights = readings.map(({ stress }) => (weighting === "relative" ? 1 / stress : 1));
  const { start, fit } = fitForm(form, readings, weights);
  refuseUnseen(model, names, fit?.parameters ?? start, rates);
  if (!fit)
    return refuse(
      "not-converged",
      "points",
      `no end for ${model}`,
      "readings that show what it asks for, over a wider span of shear rates",
    );
  const degreesOfFreedom = readings.length - names.length;
  const variance = fit.sumOfSquares / degreesOfFreedom;
  const unroot = (k: number): number => (form.rooted ? 2 * (fit.parameters[k] as number) : 1);
  const covariance = fit.inverse.map((row, j) =>
    row.map((value, k) => result(value * variance * unroot(j) * unroot(k), "covariance")),
  );
  const curve = form.curve(fit.parameters);
  const { stressOf } = compileFlowCurve(curve, "curve");
  return {
    model,
    curve,
    weighting,
    parameters: names,
    standardErrors: Object.fromEntries(names.map((name, k) => [name, Math.sqrt(covariance[k]?.[k] as number)])),
    covariance,
    residuals: readings.map(({ shearRate, stress }) => result(stress - stressOf(shearRate), "residual")),
    sumOfSquares: result(fit.sumOfSquares, "sum of squares"),
    standardDeviation: Math.sqrt(variance),
    degreesOfFreedom,
    shearRateMin: minOf(rates),
    shearRateMax: maxOf(rates),
  };
}
