import type { Particle } from "../../formula/index.js";
import {
  largestSuspendedDiameter,
  thickestSuspendedFlake,
  yieldStressToSuspend,
  yieldStressToSuspendFlake,
} from "../../particles/index.js";
import type { Basis, Figure } from "../figure.js";
import type { Run } from "../state.js";
import { by } from "../unknown.js";
import { gelOf } from "./droplets.js";
import { yieldStressFigure } from "./yield-stress.js";

/** A yield stress between two ends that are both known [Pa]. */
export interface Band extends Figure {
  readonly min: number;
  readonly value: number;
  readonly max: number;
}

/** The yield stress that holds a particle in the set gel [Pa]: a band for a sphere, one figure for a flake edge on. */
export function yieldStressNeeded(run: Run, particle: Particle): Band {
  const densityFluid = gelOf(run).charge.fluidDensity(run.job.process.room);
  const { diameter, density: densityParticle, thickness } = particle;
  const basis: readonly Basis[] = [{ kind: "law", key: "yield-stress-to-hold" }];
  return by("yield-stress-to-hold", (): Band => {
    if (thickness === undefined) return { ...yieldStressToSuspend({ diameter, densityParticle, densityFluid }), basis };
    const value = yieldStressToSuspendFlake({ thickness, densityParticle, densityFluid });
    return { min: value, value, max: value, basis };
  });
}

/** The largest of its kind that the set gel surely holds [m], in diameter or, of a flake, in thickness. */
export interface LargestSuspended {
  readonly of: "diameter" | "thickness";
  readonly length: number;
}

/** The largest of a kind of particle that the set gel surely holds. */
export function largestSuspendedOf(run: Run, { density: densityParticle, thickness }: Particle): LargestSuspended {
  const yieldStress = yieldStressFigure(run).min;
  const densityFluid = gelOf(run).charge.fluidDensity(run.job.process.room);
  const gel = { yieldStress, densityParticle, densityFluid };
  return by("yield-stress-to-hold", () =>
    thickness === undefined
      ? { of: "diameter", length: largestSuspendedDiameter(gel).min }
      : { of: "thickness", length: thickestSuspendedFlake(gel) },
  );
}
