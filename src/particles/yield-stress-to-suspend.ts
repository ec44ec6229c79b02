import { positive, record, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";

/** Yield stress over weight of a sphere, τ/(Δρ g d): what was computed, and how far measured values spread around it. */
export const yieldBand: YieldStressToSuspend = {
  min: 0.04,
  value: 0.143 / 3,
  max: 0.2,
};

/** Between which values the yield stress lies that holds a particle at rest [Pa]. */
export interface YieldStressToSuspend {
  /** Below this no published value holds it. */
  readonly min: number;
  /** What Beris and others computed for a sphere in a Bingham fluid. */
  readonly value: number;
  /** From here on every published value holds it. */
  readonly max: number;
}

/**
 * The yield stress that holds a particle in a set gel for as long as the gel stays as it is.
 *
 * $$\frac{3\,\tau_y}{\Delta\rho\,g\,d} = Y_g \qquad Y_{g,\mathrm{crit}} = 0.143$$
 *
 * Published experiments put the critical value anywhere from 0.04 to 0.2 in τ/(Δρ g d), so a band is returned: below
 * `min` the particle moves, above `max` it is held, between them it is not known. A particle lighter than the
 * gel is held in the same way; a flake is not, see `yieldStressToSuspendFlake`. The yield stress has to be that of the gel
 * at rest, after its full setting time.
 *
 * @param input.diameter - Diameter of the sphere of equal volume [m], above 0.
 * @param input.densityParticle - Density of the particle [kg/m³], above 0.
 * @param input.densityFluid - Density of the gel [kg/m³], above 0.
 * @returns The band [Pa]; all 0 where the densities are equal.
 * @throws CalculationError `input` where an argument is out of range.
 * @source beris-1985 critical yield parameter 0.143 and its definition second-hand; spread of the experiments from memory
 * @example
 * ```ts
 * import { yieldStressToSuspend } from "gelwright/particles";
 * yieldStressToSuspend({ diameter: 200e-6, densityParticle: 1400, densityFluid: 910 }).max; // => 0.19221034000000004
 * ```
 */
export function yieldStressToSuspend(input: {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
}): YieldStressToSuspend {
  const { diameter, densityParticle, densityFluid } = record(input, "input", known.yieldStressToSuspend);
  const difference = Math.abs(positive(densityParticle, "densityParticle") - positive(densityFluid, "densityFluid"));
  const weight = result(difference * gravity * positive(diameter, "diameter"), "yield stress");
  return {
    min: yieldBand.min * weight,
    value: yieldBand.value * weight,
    max: yieldBand.max * weight,
  };
}
