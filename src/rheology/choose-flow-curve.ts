import { CalculationError } from "../error.js";
import { list, positive, record, refuse, result } from "../guards.js";
import { type FlowFit, fitFlowCurve, type Weighting } from "./fit-flow-curve.js";
import type { FlowModel } from "./flow-forms.js";
import { type FlowReading, flowReadings } from "./flow-reading.js";
import * as known from "./known.js";

/** A model that could be fitted, and how it compares with the others. */
export interface FlowCandidate {
  /** The fit. */
  readonly fit: FlowFit;
  /** Akaike's criterion, corrected for few readings [-]: smaller is better, only differences mean anything. */
  readonly criterion: number;
  /** Criterion less the smallest of all [-]. */
  readonly difference: number;
  /** Akaike weight [-]: how much of the evidence among these models is for this one; they add up to 1. */
  readonly weight: number;
}

/** A model that the readings cannot carry or that misses them, and why. */
export interface RefusedModel {
  /** The model. */
  readonly model: FlowModel;
  /** What is missing, or by how much it misses, in words. */
  readonly reason: string;
}

/** Which model the readings bear out, and what was seen of the others. */
export interface FlowChoice {
  /** The model chosen: the fewest parameters among those within 2 of the smallest criterion. */
  readonly best: FlowFit;
  /** All that could be fitted and meet the readings within their scatter, the smallest criterion first. */
  readonly candidates: readonly FlowCandidate[];
  /** The others. */
  readonly refused: readonly RefusedModel[];
}

const usual: readonly FlowModel[] = ["newton", "power-law", "bingham", "casson", "herschel-bulkley", "carreau"];
/** No reading is better than this, in parts of its stress: what is left below it counts as this much. */
const finest = 1e-9;
/** Models this close in the criterion are borne out alike. */
const alike = 2;
/** Scatter of readings of a gel, in parts of each stress. Common practice, no source. */
const usualScatter = 0.1;
/** Deviations of the normal distribution that 99 in 100 stay below. */
const rarely = 2.3263478740408408;

/**
 * The residuals' standard deviation over that of the readings which a true model stays below in 99 cases of 100: the root
 * of chi squared over its degrees of freedom, by Wilson and Hilferty, 0.4 % low with one degree and closer with more.
 */
function spreadOf(degreesOfFreedom: number): number {
  const variance = 2 / (9 * degreesOfFreedom);
  return (1 - variance + rarely * Math.sqrt(variance)) ** 1.5;
}

/** Refuses a fit that misses the readings by more than they scatter. */
function refuseMissing(fit: FlowFit, scatter: number | undefined): void {
  const own = scatter ?? (fit.weighting === "relative" ? usualScatter : undefined);
  if (own === undefined) return;
  const limit = result(own * spreadOf(fit.degreesOfFreedom), "scatter");
  if (fit.standardDeviation <= limit) return;
  const written = (value: number): string =>
    fit.weighting === "relative" ? `${(100 * value).toPrecision(3)} %` : `${value.toPrecision(3)} Pa`;
  const found = `${fit.model} misses them by ${written(fit.standardDeviation)}`;
  refuse("unreachable", "points", found, `at most ${written(limit)} from readings that scatter by ${written(own)}`);
}

function criterionOf(fit: FlowFit, floor: number): number {
  const readings = fit.residuals.length;
  const unknowns = fit.parameters.length + 1;
  const spare = readings - unknowns - 1;
  if (spare < 1) {
    const more = `at least ${unknowns + 2} readings to weigh ${fit.model} against others`;
    refuse("input", "points", `${readings} readings`, more);
  }
  const fitted = readings * Math.log(Math.max(fit.sumOfSquares, floor) / readings);
  return fitted + 2 * unknowns + (2 * unknowns * (unknowns + 1)) / spare;
}

/**
 * The flow-curve model that readings bear out, without a parameter too many.
 *
 * $$\mathrm{AIC_c} = N\ln\frac{S}{N} + 2k + \frac{2k(k+1)}{N-k-1} \qquad
 *   w_i = \frac{e^{-\Delta_i/2}}{\sum_j e^{-\Delta_j/2}}$$
 *
 * S is the sum of squares and k the number of fitted parameters and one more for the scatter. Differences below 2 say
 * nothing: among models that close the one with the fewest parameters is taken, and of equals the smaller criterion.
 * Only models compete whose residuals the scatter of the readings explains: their standard deviation has to stay below
 * that of the readings times a factor which a true model passes in one case of a hundred, 2.6 with one degree of freedom
 * and 1.5 with ten. So a gel that plainly yields is not called Newtonian because its readings are too few for anything
 * else. A model that the readings cannot carry, or that misses them, is listed with the reason.
 *
 * @param input.points - The readings: shear rate [1/s] and stress [Pa], both above 0.
 * @param input.models - The models to weigh, each once; by default all but `carreau-yasuda`.
 * @param input.weighting - `"relative"` (default) or `"absolute"`, as for `fitFlowCurve`.
 * @param input.viscosityInfinite - As for `fitFlowCurve` [Pa·s].
 * @param input.scatter - Standard deviation of a reading: with relative weighting in parts of its stress, default 0.1;
 *   with absolute weighting in Pa, by default whatever it is.
 * @returns The model chosen, all candidates, and those that were refused.
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where no model fits.
 * @source burnham-anderson-2002 from memory
 * @source wilson-hilferty-1931 from memory, the factor; a scatter of 10 % is common practice, no source
 * @example
 * ```ts
 * import { chooseFlowCurve } from "gelwright/rheology";
 * const points = [1, 3, 10, 30, 100, 300].map((shearRate) => ({ shearRate, stress: 12 + 0.4 * shearRate }));
 * chooseFlowCurve({ points }).best.model; // => "bingham"
 * ```
 */
export function chooseFlowCurve(input: {
  readonly points: readonly FlowReading[];
  readonly models?: readonly FlowModel[];
  readonly weighting?: Weighting;
  readonly viscosityInfinite?: number;
  readonly scatter?: number;
}): FlowChoice {
  const { points, models = usual, scatter, ...options } = record(input, "input", known.chooseFlowCurve);
  if (scatter !== undefined) positive(scatter, "scatter");
  const readings = flowReadings(points, 1);
  const weighed: { readonly fit: FlowFit; readonly criterion: number }[] = [];
  const refused: RefusedModel[] = [];
  const floor =
    finest ** 2 * readings.reduce((sum, { stress }) => sum + (options.weighting === "absolute" ? stress ** 2 : 1), 0);
  for (const model of new Set(list(models, "models", 1)))
    try {
      const fit = fitFlowCurve({ ...options, points: readings, model });
      refuseMissing(fit, scatter);
      weighed.push({ fit, criterion: criterionOf(fit, floor) });
    } catch (error) {
      // Only what is between readings and model is a reason to go on with the next model.
      if (!(error instanceof CalculationError) || error.faults.some(({ path }) => path !== "points")) throw error;
      refused.push({ model, reason: error.message });
    }
  weighed.sort((one, other) => one.criterion - other.criterion);
  const smallest =
    weighed[0]?.criterion ??
    refuse("unreachable", "points", "no model that fits", refused.map(({ reason }) => reason).join("; "));
  const shares = weighed.map(({ criterion }) => Math.exp((smallest - criterion) / 2));
  const all = shares.reduce((sum, share) => sum + share, 0);
  const candidates = weighed.map(({ fit, criterion }, i) => ({
    fit,
    criterion,
    difference: criterion - smallest,
    weight: (shares[i] as number) / all,
  }));
  const close = candidates.filter(({ difference }) => difference <= alike).map(({ fit }) => fit);
  const best = close.reduce((one, other) => (other.parameters.length < one.parameters.length ? other : one));
  return { best, candidates, refused };
}
