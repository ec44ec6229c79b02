import { positive, record, result } from "../guards.js";
import { compileFlowCurve, viscosityAtRate } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import { root } from "../numeric/root.js";
import { flowMoment } from "./flow-moment.js";
import * as known from "./known.js";

/** How a fluid is sheared in a nozzle, a needle or a pipe. */
export interface NozzleFlow {
  /** 4Q/(πR³), the rate at the wall if it were Newton's fluid [1/s]. */
  readonly shearRateApparent: number;
  /** True rate at the wall [1/s]. */
  readonly shearRateWall: number;
  /** True over apparent rate [-]: (3n + 1)/(4n) for a power law. */
  readonly correction: number;
  /** Stress at the wall [Pa]. */
  readonly stressWall: number;
  /** Viscosity at the wall [Pa·s]. */
  readonly viscosityWall: number;
  /** Pressure that it takes on each metre of length [Pa/m], without the loss at the inlet. */
  readonly pressureGradient: number;
  /** Share of the radius that moves as a plug [-]. */
  readonly plug: number;
}

/**
 * The shear at the wall of a nozzle, with the pressure that pushes a flow through it.
 *
 * $$\frac{Q}{\pi R^3} = \frac{1}{\tau_w^3}\int_0^{\tau_w}\tau^2\,\dot\gamma(\tau)\,d\tau \qquad
 *   \dot\gamma_w = \frac{4Q}{\pi R^3}\cdot\frac{1}{4}\left(3 + \frac{d\ln Q}{d\ln\tau_w}\right)$$
 *
 * The equation of Rabinowitsch and Mooney, solved for the flow curve that is given, so that its correction comes out.
 * For a long round bore, laminar flow, no slip at the wall.
 *
 * @param input.curve - The flow curve, at the shear rates of the nozzle.
 * @param input.diameter - Bore [m], above 0.
 * @param input.flowRate - Volume that passes [m³/s], above 0.
 * @returns Shear rates, stress and viscosity at the wall, pressure gradient, and how much moves as a plug.
 * @throws CalculationError `input` where an argument is out of range.
 * @source rabinowitsch-1929 by steffe-1996 for the equation, from memory
 * @example
 * ```ts
 * import { nozzleFlow } from "gelwright/rheology";
 * const curve = { law: "power-law", consistency: 20, flowIndex: 0.5 } as const;
 * Math.round(nozzleFlow({ curve, diameter: 0.002, flowRate: 1e-6 }).correction * 1e9) / 1e9; // => 1.25
 * ```
 */
export function nozzleFlow(input: {
  readonly curve: FlowCurve;
  readonly diameter: number;
  readonly flowRate: number;
}): NozzleFlow {
  const { curve, diameter, flowRate } = record(input, "input", known.nozzleFlow);
  const radius = positive(diameter, "diameter") / 2;
  const compiled = compileFlowCurve(curve, "curve");
  const flow = result(positive(flowRate, "flowRate") / (Math.PI * radius ** 3), "flow");
  const off = (log: number): number => flowMoment(curve, Math.exp(log), 2) / flow - 1;
  // At the wall the rate is greatest, so that 3 Q/(πR³) is a lower bound of it.
  const low = Math.log(3 * flow) - 1e-9;
  let reach = 1;
  while (off(low + reach) < 0 && reach < 1e3) reach *= 2;
  const shearRateWall = result(Math.exp(root(off, low, low + reach, "wall shear rate", 1e-15)), "wall shear rate");
  const stressWall = result(compiled.stressOf(shearRateWall), "wall stress");
  return {
    shearRateApparent: result(4 * flow, "apparent shear rate"),
    shearRateWall,
    correction: result(shearRateWall / (4 * flow), "correction"),
    stressWall,
    viscosityWall: result(viscosityAtRate(compiled, shearRateWall), "wall viscosity"),
    pressureGradient: result((2 * stressWall) / radius, "pressure gradient"),
    plug: result(compiled.yieldStress / stressWall, "plug"),
  };
}

/**
 * The flow that a pressure pushes through a nozzle, nothing where the yield stress holds it.
 *
 * $$\tau_w = \frac{R}{2}\,\frac{\Delta p}{L} \qquad
 *   Q = \frac{\pi R^3}{\tau_w^3}\int_0^{\tau_w}\tau^2\,\dot\gamma(\tau)\,d\tau$$
 *
 * @param input.curve - The flow curve, at the shear rates of the nozzle.
 * @param input.diameter - Bore [m], above 0.
 * @param input.pressureGradient - Pressure on each metre of length [Pa/m], above 0.
 * @returns Volume that passes [m³/s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source rabinowitsch-1929 by steffe-1996 for the equation, from memory
 * @example
 * ```ts
 * import { flowThroughNozzle } from "gelwright/rheology";
 * const curve = { law: "bingham", yieldStress: 20, plasticViscosity: 0.5 } as const;
 * flowThroughNozzle({ curve, diameter: 0.004, pressureGradient: 20_000 }); // => 0
 * ```
 */
export function flowThroughNozzle(input: {
  readonly curve: FlowCurve;
  readonly diameter: number;
  readonly pressureGradient: number;
}): number {
  const { curve, diameter, pressureGradient } = record(input, "input", known.flowThroughNozzle);
  const radius = positive(diameter, "diameter") / 2;
  const stressWall = result((radius * positive(pressureGradient, "pressureGradient")) / 2, "wall stress");
  const rate = result(compileFlowCurve(curve, "curve").rateOf(stressWall), "wall shear rate");
  return result(Math.PI * radius ** 3 * flowMoment(curve, rate, 2), "flow rate");
}
