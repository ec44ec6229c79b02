import type { Particle } from "../formula/index.js";
import {
  largestSuspendedDiameter,
  thickestSuspendedFlake,
  yieldStressToSuspend,
  yieldStressToSuspendFlake,
} from "../particles/index.js";
import { attempt } from "./attempt.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";
import type { PlanParticle } from "./strength/plan.js";
import { fluidDensity } from "./suspension.js";

/** The yield stress that holds a particle in the set gel [Pa]: a band for a sphere, one figure for a flake edge on. */
export function needed(
  particle: Particle,
  contents: readonly Content[],
  job: Job,
): { readonly min: number; readonly max: number; readonly by: string } | undefined {
  const densityFluid = fluidDensity(contents, job.process.temperatureRoom);
  if (densityFluid === undefined) return undefined;
  const { diameter, density: densityParticle, thickness } = particle;
  if (thickness === undefined)
    return {
      ...yieldStressToSuspend({ diameter, densityParticle, densityFluid }),
      by: "Beris and others 1985 with the spread of published experiments",
    };
  const flake = yieldStressToSuspendFlake({ thickness, densityParticle, densityFluid });
  return { min: flake, max: flake, by: "shear on both faces of a flake that stands on edge" };
}

/** The largest of its kind that a gel of this yield stress holds for certain. */
export function largest(
  particle: Particle,
  contents: readonly Content[],
  yieldStress: number,
  job: Job,
): PlanParticle["largestSuspended"] {
  const densityFluid = fluidDensity(contents, job.process.temperatureRoom);
  if (densityFluid === undefined) return undefined;
  const gel = { yieldStress, densityParticle: particle.density, densityFluid };
  const of = particle.thickness === undefined ? "diameter" : "thickness";
  const length = attempt(() => (of === "diameter" ? largestSuspendedDiameter(gel).min : thickestSuspendedFlake(gel)));
  return typeof length === "string" ? undefined : { of, length };
}
