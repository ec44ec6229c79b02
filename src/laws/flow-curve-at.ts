import { notNegative, record, result } from "../guards.js";
import { compileFlowCurve, viscosityAtRate } from "./compile-flow-curve.js";
import type { FlowCurve } from "./flow-curve.js";
import * as known from "./known.js";

/**
 * The shear stress of a fluid at a shear rate.
 *
 * $$\tau = \mu\dot\gamma \qquad \tau = K\dot\gamma^n \qquad \tau = \tau_y + \eta\dot\gamma \qquad
 *   \sqrt\tau = \sqrt{\tau_y} + \sqrt{\eta\dot\gamma} \qquad \tau = \tau_y + K\dot\gamma^n$$
 * $$\frac{\tau}{\dot\gamma} = \eta_\infty + (\eta_0 - \eta_\infty)\left[1 + (\lambda\dot\gamma)^a\right]^{(n-1)/a}$$
 *
 * In this order: Newton, power law, Bingham, Casson, Herschel–Bulkley, Carreau–Yasuda. A curve holds within the rates
 * at which it was measured.
 *
 * @param input.curve - The flow curve, as plain data.
 * @param input.shearRate - Shear rate [1/s], 0 or more; at 0 the limit from above is given, which is the yield stress.
 * @returns Stress [Pa].
 * @throws CalculationError `input` for a curve that is not whole or a rate out of range.
 * @source steffe-1996 for all but the last, from memory; bird-1987 for Carreau–Yasuda
 * @example
 * ```ts
 * import { shearStressAt } from "gelwright/laws";
 * const curve = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
 * shearStressAt({ curve, shearRate: 4 }); // => 26
 * ```
 */
export function shearStressAt(input: { readonly curve: FlowCurve; readonly shearRate: number }): number {
  const { curve, shearRate } = record(input, "input", known.shearStressAt);
  return result(compileFlowCurve(curve, "curve").stressOf(notNegative(shearRate, "shearRate")), "stress");
}

/**
 * The viscosity of a fluid at a shear rate: stress over rate, which is what a viscometer shows.
 *
 * $$\eta(\dot\gamma) = \frac{\tau(\dot\gamma)}{\dot\gamma}$$
 *
 * @param input.curve - The flow curve, as plain data.
 * @param input.shearRate - Shear rate [1/s]: above 0, or 0 for Newton's and the Carreau–Yasuda law, which alone have a
 *   viscosity at rest.
 * @returns Viscosity [Pa·s].
 * @throws CalculationError `input` for a curve that is not whole, `range` at rest where there is no viscosity at rest.
 * @source definition
 * @example
 * ```ts
 * import { apparentViscosityAt } from "gelwright/laws";
 * const curve = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
 * apparentViscosityAt({ curve, shearRate: 4 }); // => 6.5
 * ```
 */
export function apparentViscosityAt(input: { readonly curve: FlowCurve; readonly shearRate: number }): number {
  const { curve, shearRate } = record(input, "input", known.apparentViscosityAt);
  return viscosityAtRate(compileFlowCurve(curve, "curve"), notNegative(shearRate, "shearRate"));
}

/**
 * The shear rate at a stress: the inverse of the flow curve.
 *
 * $$\dot\gamma = \left(\frac{\tau - \tau_y}{K}\right)^{1/n} \qquad \dot\gamma = 0 \;\text{ where }\; \tau \le \tau_y$$
 *
 * @param input.curve - The flow curve, as plain data.
 * @param input.stress - Shear stress [Pa], 0 or more.
 * @returns Shear rate [1/s], 0 at and below the yield stress.
 * @throws CalculationError `input` for a curve that is not whole or a stress out of range.
 * @source definition (the flow curve, solved for the rate)
 * @example
 * ```ts
 * import { shearRateAt } from "gelwright/laws";
 * const curve = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
 * shearRateAt({ curve, stress: 26 }); // => 4
 * ```
 */
export function shearRateAt(input: { readonly curve: FlowCurve; readonly stress: number }): number {
  const { curve, stress } = record(input, "input", known.shearRateAt);
  return result(compileFlowCurve(curve, "curve").rateOf(notNegative(stress, "stress")), "shear rate");
}

/**
 * The yield stress of a flow curve, 0 for a fluid that always flows.
 *
 * $$\tau_y = \lim_{\dot\gamma \to 0} \tau(\dot\gamma)$$
 *
 * @param curve - The flow curve, as plain data.
 * @returns Yield stress [Pa].
 * @throws CalculationError `input` for a curve that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { yieldStressOf } from "gelwright/laws";
 * yieldStressOf({ law: "bingham", yieldStress: 12, plasticViscosity: 0.4 }); // => 12
 * ```
 */
export function yieldStressOf(curve: FlowCurve): number {
  return compileFlowCurve(curve, "curve").yieldStress;
}
