import { positive, record, refuse, result } from "../guards.js";
import { compileFlowCurve, viscosityAtRate } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import * as known from "./known.js";

/**
 * The Ohnesorge number of a spray: how much viscosity damps the break-up of a jet into drops.
 *
 * $$\mathrm{Oh} = \frac{\eta(\dot\gamma)}{\sqrt{\rho\,\sigma\,d}}$$
 *
 * A fluid with a yield stress is refused: the ligaments between drops thin at falling shear rate, where its viscosity
 * grows without end, so that no number of this kind says whether it breaks up. Sprays of mica and pigments carry an
 * inhalation caution, whatever the number.
 *
 * @param input.curve - The flow curve, without yield stress.
 * @param input.shearRate - Shear rate at the nozzle [1/s], above 0: see `nozzleFlow`.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.surfaceTension - Surface tension [N/m], above 0.
 * @param input.diameter - Diameter of the nozzle or of the jet [m], above 0.
 * @returns Ohnesorge number [-].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` for a fluid with a yield stress.
 * @source ohnesorge-1936 by the library fluids, second-hand
 * @example
 * ```ts
 * import { ohnesorgeNumber } from "gelwright/rheology";
 * const curve = { law: "newton", viscosity: 1e-4 } as const;
 * ohnesorgeNumber({ curve, shearRate: 1e4, density: 2000, surfaceTension: 0.1, diameter: 1e-5 }); // => 0.00223606797749979
 * ```
 */
export function ohnesorgeNumber(input: {
  readonly curve: FlowCurve;
  readonly shearRate: number;
  readonly density: number;
  readonly surfaceTension: number;
  readonly diameter: number;
}): number {
  const { curve, shearRate, density, surfaceTension, diameter } = record(input, "input", known.ohnesorgeNumber);
  const compiled = compileFlowCurve(curve, "curve");
  if (compiled.yieldStress > 0) {
    const expected = "a fluid without yield stress: with one, no number says whether a jet breaks up";
    refuse("unreachable", "curve", `a yield stress of ${compiled.yieldStress} Pa`, expected);
  }
  const viscosity = viscosityAtRate(compiled, positive(shearRate, "shearRate"));
  const inertia = positive(density, "density") * positive(surfaceTension, "surfaceTension");
  return result(viscosity / Math.sqrt(inertia * positive(diameter, "diameter")), "Ohnesorge number");
}
