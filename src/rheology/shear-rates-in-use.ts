import { list, positive, record, refuse, show } from "../guards.js";
import { compileFlowCurve, viscosityAtRate } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import * as known from "./known.js";

/** Something that is done with a gel, and how fast it is sheared by it. */
export interface ShearInUse {
  /** What is done. */
  readonly use: string;
  /** Shear rate [1/s]. */
  readonly shearRate: number;
}

/**
 * Shear rates of use [1/s], each in the middle of a span of ten to a hundred: common practice, no source. A rate that
 * can be worked out from the case (a speed over a gap, a nozzle) is always to be preferred. The handbook's table
 * (mezger-2020) has 10 to 1000 for extrusion, 10 to 10,000 for stirring, 100 to 10,000 for brushing, 1000 to 100,000 for
 * rubbing; its spraying, 1000 to 10,000, ends below the figure here.
 */
export const shearRatesInUse: readonly ShearInUse[] = [
  { use: "standing: particles sink, oil bleeds", shearRate: 1e-3 },
  { use: "levelling and sagging", shearRate: 0.1 },
  { use: "pouring", shearRate: 30 },
  { use: "scooping, squeezing from a tube", shearRate: 100 },
  { use: "stirring", shearRate: 100 },
  { use: "brushing on", shearRate: 1000 },
  { use: "rubbing in", shearRate: 3000 },
  { use: "spraying", shearRate: 30_000 },
];

/** The viscosity of a gel in one use. */
export interface ViscosityInUse extends ShearInUse {
  /** Viscosity at that rate [Pa·s]. */
  readonly viscosity: number;
}

/**
 * The viscosity of a gel at rest, poured, rubbed, brushed, sprayed: side by side.
 *
 * $$\eta_i = \frac{\tau(\dot\gamma_i)}{\dot\gamma_i}$$
 *
 * Whether the curve was measured there is the caller's to see: most rheometers end near 1000 1/s.
 *
 * @param input.curve - The flow curve.
 * @param input.uses - What is done, with its shear rate [1/s], above 0; by default `shearRatesInUse`.
 * @returns For each use its shear rate [1/s] and the viscosity there [Pa·s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source common practice, no source for the rates
 * @example
 * ```ts
 * import { viscositiesInUse } from "gelwright/rheology";
 * const curve = { law: "bingham", yieldStress: 10, plasticViscosity: 0.5 } as const;
 * const uses = [{ use: "a finger at 0.1 m/s over 0.1 mm", shearRate: 1000 }];
 * viscositiesInUse({ curve, uses })[0]?.viscosity; // => 0.51
 * ```
 */
export function viscositiesInUse(input: {
  readonly curve: FlowCurve;
  readonly uses?: readonly ShearInUse[];
}): readonly ViscosityInUse[] {
  const { curve, uses = shearRatesInUse } = record(input, "input", known.viscositiesInUse);
  const compiled = compileFlowCurve(curve, "curve");
  return list(uses, "uses").map((one, i) => {
    const { use, shearRate } = record(one, `uses[${i}]`);
    if (typeof use !== "string") refuse("input", `uses[${i}].use`, show(use), "a text");
    const rate = positive(shearRate, `uses[${i}].shearRate`);
    return { use, shearRate: rate, viscosity: viscosityAtRate(compiled, rate) };
  });
}
