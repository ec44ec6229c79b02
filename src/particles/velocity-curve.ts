import { positive, record, result } from "../error.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { compileViscosity } from "../laws/compile-viscosity.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { hinderedFactor } from "./hindered-factor.js";
import { creeping, gravity } from "./stokes-velocity.js";

/** Particles in a liquid whose density and viscosity change with temperature. */
export interface Suspension {
  /** Diameter of the particles, taken as spheres [m], above 0. */
  readonly diameter: number;
  /** Density of the particles [kg/m³], above 0. */
  readonly densityParticle: number;
  /** Density of the liquid over temperature. */
  readonly densityFluid: DensityLaw;
  /** Viscosity of the liquid over temperature. */
  readonly viscosity: ViscosityLaw;
  /** Volume of particles per volume of the whole, 0 to 0.5; 0 where it is left out. */
  readonly volumeFraction?: number;
  /** Outside the readings, and at a Reynolds number of 0.1 or more: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

/** How particles move at each temperature. */
export interface VelocityCurve {
  /** Velocity of the particles among their like [m/s], positive downwards. */
  readonly velocityAt: (temperature: number) => number;
  /** Reynolds number of one particle by itself. */
  readonly reynoldsAt: (temperature: number) => number;
  /** Where the viscosity has a kink [°C]. */
  readonly kinks: readonly number[];
}

/** Checks a suspension and gives its velocity as a function of temperature. */
export function velocityCurve(input: Suspension, beyond: Beyond | undefined): VelocityCurve {
  const { diameter, densityParticle, densityFluid, viscosity, volumeFraction = 0 } = record(input, "input");
  const extended = extending(beyond);
  const width = positive(diameter, "diameter");
  const particle = positive(densityParticle, "densityParticle");
  const densityOf = compileDensity(densityFluid, "densityFluid");
  const { viscosityOf, kinks } = compileViscosity(viscosity, beyond, "viscosity");
  const hindered = hinderedFactor({ volumeFraction });
  const velocityAt = (at: number): number => {
    const fluid = densityOf(at);
    const thickness = viscosityOf(at);
    const alone = result((gravity * width * width * (particle - fluid)) / (18 * thickness), "velocity");
    creeping((fluid * Math.abs(alone) * width) / thickness, extended);
    return alone * hindered;
  };
  const reynoldsAt = (at: number): number =>
    result((densityOf(at) * Math.abs(velocityAt(at)) * width) / (viscosityOf(at) * hindered), "reynolds");
  return { velocityAt, reynoldsAt, kinks };
}
