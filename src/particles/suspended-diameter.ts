import { notNegative, positive, record, refuse, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { yieldBand } from "./yield-stress-to-suspend.js";

/** Up to where a set gel holds particles: three values, because published criteria differ. */
export interface SuspendedUpTo {
  /** Up to here every published value says that it is held. */
  readonly min: number;
  /** Up to here it is held by what Beris and others computed for a sphere in a Bingham fluid. */
  readonly value: number;
  /** Above this no published value says that it is held; between `min` and here it is not known. */
  readonly max: number;
}

/** The weight that a yield stress carries, by each of the three criteria. */
function carriedBy(yieldStress: number, divisor: number, path: string): SuspendedUpTo {
  return {
    min: result(yieldStress / (yieldBand.max * divisor), path),
    value: result(yieldStress / (yieldBand.value * divisor), path),
    max: result(yieldStress / (yieldBand.min * divisor), path),
  };
}

/**
 * The largest sphere that a set gel holds at rest, for as long as the gel stays as it is: a grain, or a bubble of air.
 *
 * $$d = \frac{\tau_y}{Y\,|\rho_p - \rho_f|\,g}$$
 *
 * with Y = 0.2, 0.143/3 and 0.04: the inverse of `yieldStressToSuspend`. For bubbles it supposes that they are round:
 * those drawn out in length by the gel come loose sooner.
 *
 * @param input.yieldStress - Yield stress of the gel at rest [Pa], 0 or more.
 * @param input.densityParticle - Density of the particle or gas [kg/m³], above 0; air has 1.2.
 * @param input.densityFluid - Density of the gel [kg/m³], above 0 and another than that of the particle.
 * @returns Diameters [m].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the densities are equal,
 *   since every size is held then.
 * @source beris-1985 critical yield parameter 0.143; definition and spread of the experiments from memory; pourzahedi-2021 for bubbles
 * @example
 * ```ts
 * import { largestSuspendedDiameter } from "gelwright/particles";
 * const bubble = largestSuspendedDiameter({ yieldStress: 5, densityParticle: 1.2, densityFluid: 910 });
 * bubble.min; // => 0.002805117223200727
 * bubble.max; // => 0.014025586116003635
 * ```
 */
export function largestSuspendedDiameter(input: {
  readonly yieldStress: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
}): SuspendedUpTo {
  const { yieldStress, densityParticle, densityFluid } = record(input, "input", known.largestSuspendedDiameter);
  const stress = notNegative(yieldStress, "yieldStress");
  const difference = Math.abs(positive(densityParticle, "densityParticle") - positive(densityFluid, "densityFluid"));
  if (difference === 0)
    refuse("unreachable", "densityParticle", densityParticle, "a density other than the gel's, which holds all sizes");
  return carriedBy(stress, difference * gravity, "diameter");
}

/**
 * How far a particle's density may lie from that of a set gel that is to hold it at rest.
 *
 * $$|\rho_p - \rho_f| = \frac{\tau_y}{Y\,g\,d}$$
 *
 * A difference above the gel's own density means that nothing of this size is too light.
 *
 * @param input.yieldStress - Yield stress of the gel at rest [Pa], 0 or more.
 * @param input.diameter - Diameter of the sphere of equal volume [m], above 0.
 * @returns Differences of density [kg/m³], upwards and downwards alike.
 * @throws CalculationError `input` where an argument is out of range.
 * @source beris-1985 critical yield parameter 0.143; definition and spread of the experiments from memory
 * @example
 * ```ts
 * import { largestSuspendedDensityDifference } from "gelwright/particles";
 * largestSuspendedDensityDifference({ yieldStress: 0.5, diameter: 400e-6 }).min; // => 637.3226331112052
 * ```
 */
export function largestSuspendedDensityDifference(input: {
  readonly yieldStress: number;
  readonly diameter: number;
}): SuspendedUpTo {
  const { yieldStress, diameter } = record(input, "input", known.largestSuspendedDensityDifference);
  const stress = notNegative(yieldStress, "yieldStress");
  return carriedBy(stress, positive(diameter, "diameter") * gravity, "density difference");
}
