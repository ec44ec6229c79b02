import { notNegative, positive, record, refuse, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";

/**
 * The yield stress that holds a flake in a set gel, even edge on, where least of the gel is in its way.
 *
 * $$\tau_y = \frac{|\rho_p - \rho_f|\,g\,h}{2}$$
 *
 * The gel pulls on both faces, so the thickness counts and the diameter does not; the rim, which is left out, helps the
 * gel. A flake that sticks to nothing, because the gel slips on its faces, needs more.
 *
 * @param input.thickness - Thickness of the flake [m], above 0.
 * @param input.densityParticle - Density of the flake [kg/m³], above 0.
 * @param input.densityFluid - Density of the gel [kg/m³], above 0.
 * @returns Yield stress [Pa]; 0 where the densities are equal.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition (the balance of weight, buoyancy and shear on two faces)
 * @example
 * ```ts
 * import { yieldStressToSuspendFlake } from "gelwright/particles";
 * yieldStressToSuspendFlake({ thickness: 20e-6, densityParticle: 1400, densityFluid: 910 }); // => 0.048052585
 * ```
 */
export function yieldStressToSuspendFlake(input: {
  readonly thickness: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
}): number {
  const { thickness, densityParticle, densityFluid } = record(input, "input", known.yieldStressToSuspendFlake);
  const difference = Math.abs(positive(densityParticle, "densityParticle") - positive(densityFluid, "densityFluid"));
  return result((difference * gravity * positive(thickness, "thickness")) / 2, "yield stress");
}

/**
 * The thickest flake that a set gel holds, however it lies; the inverse of `yieldStressToSuspendFlake`.
 *
 * $$h = \frac{2\,\tau_y}{|\rho_p - \rho_f|\,g}$$
 *
 * @param input.yieldStress - Yield stress of the gel at rest [Pa], 0 or more.
 * @param input.densityParticle - Density of the flake [kg/m³], above 0.
 * @param input.densityFluid - Density of the gel [kg/m³], above 0 and another than that of the flake.
 * @returns Thickness [m].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the densities are equal,
 *   since every thickness is held then.
 * @source definition (the balance of weight, buoyancy and shear on two faces)
 * @example
 * ```ts
 * import { thickestSuspendedFlake } from "gelwright/particles";
 * thickestSuspendedFlake({ yieldStress: 0.1, densityParticle: 1400, densityFluid: 910 }); // => 0.00004162106991746646
 * ```
 */
export function thickestSuspendedFlake(input: {
  readonly yieldStress: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
}): number {
  const { yieldStress, densityParticle, densityFluid } = record(input, "input", known.thickestSuspendedFlake);
  const stress = notNegative(yieldStress, "yieldStress");
  const difference = Math.abs(positive(densityParticle, "densityParticle") - positive(densityFluid, "densityFluid"));
  if (difference === 0)
    refuse("unreachable", "densityParticle", densityParticle, "a density other than the gel's, which holds all flakes");
  return result((2 * stress) / (difference * gravity), "thickness");
}
