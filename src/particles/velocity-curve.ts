import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { compileViscosity } from "../laws/compile-viscosity.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import { gravity } from "../laws/gravity.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { compileDrag, shareOfStokes } from "./compile-drag.js";
import type { DragLaw } from "./drag-law.js";
import { compileHindrance } from "./hindered-factor.js";

/** Particles in a liquid whose density and viscosity change with temperature. */
export interface Suspension {
  /** Diameter of the particles [m], above 0: that of the sphere of equal volume, where they are none. */
  readonly diameter: number;
  /** Density of the particles [kg/m³], above 0. */
  readonly densityParticle: number;
  /** Density of the liquid over temperature. */
  readonly densityFluid: DensityLaw;
  /** Viscosity of the liquid over temperature. */
  readonly viscosity: ViscosityLaw;
  /** Volume of particles per volume of the whole, 0 to 0.5; default 0. */
  readonly volumeFraction?: number;
  /** How the liquid resists them; default Stokes' law. */
  readonly drag?: DragLaw;
  /** Outside the readings, or the drag law's range (Re 0.1 for Stokes'): `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

/** How particles move at each temperature. */
export interface VelocityCurve {
  /** Velocity of the particles among their like [m/s], positive downwards. */
  readonly velocityAt: (temperature: number) => number;
  /** Reynolds number of one particle by itself. */
  readonly reynoldsAt: (temperature: number) => number;
  /** Where the viscosity has a breakpoint [°C], rising. */
  readonly breakpoints: readonly number[];
}

/** Checks a suspension and gives its velocity as a function of temperature. */
export function velocityCurve(input: Suspension, beyond: Beyond | undefined): VelocityCurve {
  const { diameter, densityParticle, densityFluid, viscosity, volumeFraction = 0, drag } = record(input, "input");
  const extended = extending(beyond);
  const width = positive(diameter, "diameter");
  const particle = positive(densityParticle, "densityParticle");
  const densityOf = compileDensity(densityFluid, "densityFluid");
  const { viscosityOf, breakpoints } = compileViscosity(viscosity, beyond, "viscosity");
  const resistance = compileDrag(drag ?? { law: "stokes" }, extended);
  const hinderedAt = compileHindrance(volumeFraction);
  const creeping = hinderedAt(0);
  const { factorAt } = resistance;
  const stokesOf = (fluid: number, thickness: number): number =>
    (gravity * width * width * (particle - fluid)) / (18 * thickness);
  const velocityAt = (at: number): number => {
    const fluid = densityOf(at);
    const thickness = viscosityOf(at);
    const stokes = result(stokesOf(fluid, thickness), "velocity");
    const reynolds = (fluid * Math.abs(stokes) * width) / thickness;
    const share = shareOfStokes(resistance, reynolds, extended);
    // A law of creeping flow keeps the exponent of creeping flow, even where it is extended.
    return stokes * share * (factorAt ? hinderedAt(share * reynolds) : creeping);
  };
  const reynoldsAt = (at: number): number => {
    const fluid = densityOf(at);
    const thickness = viscosityOf(at);
    const reynolds = result((fluid * Math.abs(stokesOf(fluid, thickness)) * width) / thickness, "reynolds");
    return shareOfStokes(resistance, reynolds, extended) * reynolds;
  };
  return { velocityAt, reynoldsAt, breakpoints };
}
