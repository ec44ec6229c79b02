import { list, notNegative, positive, record, refuse, result } from "../guards.js";
import { minOf } from "../numeric/extremes.js";
import { type LeastSquares, leastSquares } from "../numeric/least-squares.js";
import { root } from "../numeric/root.js";
import { confidenceFactor } from "../numeric/student.js";
import type { Estimate } from "./estimate.js";
import * as known from "./known.js";

/** One trial: a dose of gel former, and the strength that its gel had. */
export interface Trial {
  /** Dose of gel former, above 0, in the unit of all doses: a mass fraction, or %. */
  readonly dose: number;
  /** Yield stress, modulus or another strength, above 0, in the unit of all strengths [Pa]. */
  readonly strength: number;
}

/** Gel strength as a power of the dose above a threshold, as it came out of trials: plain data. */
export interface DoseResponse {
  /** A, with its confidence limits. */
  readonly factor: Estimate;
  /** n, with its confidence limits. */
  readonly exponent: Estimate;
  /** c₀, the dose below which there is no gel, with its confidence limits; all three alike where it was given. */
  readonly threshold: Estimate;
  /** Standard deviation of the trials about the curve, in ln strength: 0.1 is about 10 %. */
  readonly scatter: number;
  /** Trials less fitted parameters. */
  readonly degreesOfFreedom: number;
  /** Covariance of ln A, n and c₀, by rows. */
  readonly covariance: readonly (readonly number[])[];
  /** The smallest and the largest dose that was tried. */
  readonly doses: readonly [number, number];
}

/** How close to the lowest dose the threshold is looked for, as shares of that dose: from all of it to a millionth. */
const gaps: readonly number[] = /*#__PURE__*/ Array.from({ length: 61 }, (_, k) => 10 ** (-k / 10));

/**
 * Fits gel strength as a power of the dose above a threshold to trials.
 *
 * $$G = A\,(c - c_0)^n$$
 *
 * Least squares in ln G, since strengths scatter in proportion: ln A and n by linear regression for each c₀, and c₀
 * where the sum of squares of that regression is smallest. The limits come from the curve's slopes at that place. If
 * all trials are far above the threshold they do not determine it; then give it, from a dose that did not gel.
 *
 * @param input.trials - Doses and strengths: at least four, with doses above the threshold; three where it is given.
 * @param input.threshold - c₀ where it is known, 0 or more and below every dose, in the unit of the doses.
 * @param input.confidence - Confidence of the limits, above 0 and below 1; default 0.95.
 * @returns The curve, as plain data.
 * @throws CalculationError `input` where the trials are too few or do not rise; `not-converged` where they show no threshold.
 * @source definition of least squares; the power above a threshold is common practice, no source
 * @example
 * ```ts
 * import { fitDoseResponse } from "gelwright/gel";
 * const doses = [0.03, 0.04, 0.06, 0.08, 0.11];
 * const trials = doses.map((dose) => ({ dose, strength: 9000 * (dose - 0.02) ** 2 }));
 * Math.round(fitDoseResponse({ trials }).threshold.value * 1e6) / 1e6; // => 0.02
 * ```
 */
export function fitDoseResponse(input: {
  readonly trials: readonly Trial[];
  readonly threshold?: number;
  readonly confidence?: number;
}): DoseResponse {
  const { trials, threshold, confidence } = record(input, "input", known.fitDoseResponse);
  const given = threshold !== undefined;
  const rows = list(trials, "trials", given ? 3 : 4);
  const doses = Float64Array.from(rows, (trial, i) =>
    positive(record(trial, `trials[${i}]`).dose, `trials[${i}].dose`),
  );
  const logs = Float64Array.from(rows, (trial, i) => Math.log(positive(trial.strength, `trials[${i}].strength`)));
  const sorted = doses.slice().sort();
  const [doseMin, doseMax] = [sorted[0] as number, sorted[sorted.length - 1] as number];
  if (new Set(doses).size < (given ? 2 : 3))
    refuse(
      "input",
      "trials",
      "too few different doses",
      `trials at ${given ? "two" : "three"} different doses or more`,
    );
  const at = given ? notNegative(threshold, "threshold") : thresholdOf(doses, logs, doseMin);
  if (at >= doseMin) refuse("input", "threshold", at, `a dose below the lowest trial, ${doseMin}`);

  const { line, steep } = lineFrom(doses, logs, at);
  const exponent = line.coefficients[1] as number;
  if (!(exponent > 0)) refuse("input", "trials", `an exponent of ${exponent}`, "strengths that rise with the dose");
  // With the threshold among the unknowns, its column widens the limits of the other two.
  const columns = [doses.map(() => 1), doses.map((dose) => Math.log(dose - at)), steep.map((one) => -exponent * one)];
  const whole = given ? line : leastSquares(columns, logs);
  if (!whole) return flat();
  const degreesOfFreedom = rows.length - (given ? 2 : 3);
  const variance = line.sumOfSquares / degreesOfFreedom;
  const of = (i: number, j: number): number => result(variance * (whole.inverse[i]?.[j] ?? 0), "covariance");
  const factor = confidenceFactor(confidence, degreesOfFreedom);
  const within = (value: number, i: number): Estimate => {
    const half = factor * Math.sqrt(of(i, i));
    return { value, min: result(value - half, "limit"), max: result(value + half, "limit") };
  };
  const lnFactor = within(line.coefficients[0] as number, 0);
  return {
    factor: {
      value: result(Math.exp(lnFactor.value), "factor"),
      min: result(Math.exp(lnFactor.min), "factor"),
      max: result(Math.exp(lnFactor.max), "factor"),
    },
    exponent: within(exponent, 1),
    threshold: within(at, 2),
    scatter: Math.sqrt(variance),
    degreesOfFreedom,
    covariance: [0, 1, 2].map((i) => [0, 1, 2].map((j) => of(i, j))),
    doses: [doseMin, doseMax],
  };
}

/** The regression of ln strength on ln (dose − threshold), and 1/(dose − threshold). */
function lineFrom(doses: Float64Array, logs: Float64Array, at: number): { line: LeastSquares; steep: Float64Array } {
  const line = leastSquares([doses.map(() => 1), doses.map((dose) => Math.log(dose - at))], logs);
  return line ? { line, steep: doses.map((dose) => 1 / (dose - at)) } : flat();
}

function flat(): never {
  return refuse("input", "trials", "doses too close together", "trials at doses that differ");
}

/** Where the sum of squares is least: its slope by c₀ is 2 n Σ r/(c − c₀), r being what the line leaves. */
function thresholdOf(doses: Float64Array, logs: Float64Array, doseMin: number): number {
  const slope = (at: number): number => {
    const { line, steep } = lineFrom(doses, logs, at);
    const [lnFactor, exponent] = line.coefficients as [number, number];
    return doses.reduce((sum, dose, i) => {
      const left = (logs[i] as number) - lnFactor - exponent * Math.log(dose - at);
      return sum + exponent * left * (steep[i] as number);
    }, 0);
  };
  const places = gaps.map((gap) => doseMin * (1 - gap));
  const sums = places.map((at) => lineFrom(doses, logs, at).line.sumOfSquares);
  const best = sums.indexOf(minOf(sums));
  const before = places[best - 1] ?? 0;
  const after = places[best + 1];
  if (after === undefined)
    refuse("not-converged", "trials", "a threshold at the lowest dose", "more trials near the lowest dose");
  if (best === 0 && !(slope(0) < 0))
    refuse(
      "not-converged",
      "trials",
      "no threshold above 0",
      "trials at lower doses, near the threshold, or the threshold given",
    );
  return root(slope, before, after as number, "threshold");
}
