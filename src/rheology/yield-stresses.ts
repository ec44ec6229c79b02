import { CalculationError } from "../error.js";
import { record, refuse } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import { cassonRegression } from "./casson-regression.js";
import { fitFlowCurve, type Weighting } from "./fit-flow-curve.js";
import { type FlowReading, flowReadings } from "./flow-reading.js";
import * as known from "./known.js";

/** By which reading of a flow curve a yield stress is meant: see `yieldStresses`. */
export type YieldConvention =
  | "herschel-bulkley"
  | "bingham"
  | "casson"
  | "casson-regression"
  | "lowest-rate"
  | "viscosity-maximum";

/** A yield stress with the convention that it follows. */
export interface YieldStress {
  /** How it was read off. */
  readonly convention: YieldConvention;
  /** Yield stress [Pa], where the readings show one by this convention. */
  readonly yieldStress?: number;
  /** Otherwise why not, in words. */
  readonly reason?: string;
}

/** The stress at which the viscosity is largest, if it has risen before and falls behind. */
function viscosityMaximum(readings: readonly FlowReading[]): number {
  const sorted = [...readings].sort((one, other) => one.stress - other.stress);
  const viscosities = sorted.map(({ stress, shearRate }) => stress / shearRate);
  const at = viscosities.indexOf(maxOf(viscosities));
  if (at === 0)
    refuse(
      "unreachable",
      "points",
      "the largest viscosity at the lowest stress",
      "readings at lower stresses, in creep",
    );
  if (at === sorted.length - 1)
    refuse("unreachable", "points", "the largest viscosity at the highest stress", "readings at higher stresses");
  return (sorted[at] as FlowReading).stress;
}

/**
 * The yield stress by every convention that a flow curve allows, side by side.
 *
 * $$\tau_y = \tau(\dot\gamma \to 0) \qquad \tau_y = \tau(\dot\gamma_\mathrm{min}) \qquad
 *   \tau_y = \arg\max_\tau \eta(\tau)$$
 *
 * One gel has as many yield stresses as there are ways to read it, easily a factor of two apart. `herschel-bulkley`,
 * `bingham` and `casson` are intercepts of fitted curves (Bingham's is the largest, for it is drawn by the readings at
 * high rates), `casson-regression` is the line through the roots, `lowest-rate` is the stress at the lowest rate read,
 * an upper bound, and `viscosity-maximum` is the stress at which creep turns into flow. State the convention with the
 * figure, and compare only like with like. What holds a particle is at the low end.
 *
 * @param input.points - The readings: shear rate [1/s] and stress [Pa], both above 0.
 * @param input.weighting - For the fitted curves: `"relative"` (default) or `"absolute"`.
 * @returns One entry a convention: the yield stress [Pa], or the reason why there is none.
 * @throws CalculationError `input` where an argument is out of range.
 * @source common practice, no source
 * @example
 * ```ts
 * import { yieldStresses } from "gelwright/rheology";
 * const points = [1, 4, 9, 25].map((shearRate) => ({ shearRate, stress: 10 + 8 * Math.sqrt(shearRate) }));
 * yieldStresses({ points }).find(({ convention }) => convention === "lowest-rate")?.yieldStress; // => 18
 * ```
 */
export function yieldStresses(input: {
  readonly points: readonly FlowReading[];
  readonly weighting?: Weighting;
}): readonly YieldStress[] {
  const { points, ...options } = record(input, "input", known.yieldStresses);
  const readings = flowReadings(points, 1);
  const fitted = (model: "herschel-bulkley" | "bingham" | "casson") => (): number => {
    const { curve } = fitFlowCurve({ ...options, points: readings, model });
    return "yieldStress" in curve ? curve.yieldStress : 0;
  };
  const lowest = readings.reduce((one, other) => (other.shearRate < one.shearRate ? other : one));
  const conventions: readonly (readonly [YieldConvention, () => number])[] = [
    ["herschel-bulkley", fitted("herschel-bulkley")],
    ["bingham", fitted("bingham")],
    ["casson", fitted("casson")],
    ["casson-regression", () => cassonRegression({ points: readings }).yieldStress],
    ["lowest-rate", () => lowest.stress],
    ["viscosity-maximum", () => viscosityMaximum(readings)],
  ];
  return conventions.map(([convention, read]) => {
    try {
      return { convention, yieldStress: read() };
    } catch (error) {
      if (!(error instanceof CalculationError) || error.faults.some(({ path }) => path !== "points")) throw error;
      return { convention, reason: error.message };
    }
  });
}
