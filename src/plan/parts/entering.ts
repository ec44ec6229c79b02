import type { Material, Particle } from "../../formula/index.js";
import { type DragLaw, flakeOfVolume, type Suspension } from "../../particles/index.js";
import type { Charge } from "../charge.js";
import type { LawCode } from "../codes/bases.js";
import type { Run, State } from "../state.js";
import { by, remembered } from "../unknown.js";
import { meltOf } from "./melt.js";

/** Up to here a flake is thin enough for the disc without a rim; a spheroid of the same volume and width from here on. */
const thinnest = 0.1;
/** Thickness of a spheroid over that of the disc of equal width and volume; from its inverse on it is a ball. */
const lens = 1.5;

/** How the melt resists a particle. A flake is taken edge on, as it sinks fastest. */
export function dragOf({ diameter, thickness, sphericity }: Particle): {
  readonly law: DragLaw;
  readonly key: LawCode;
} {
  if (sphericity !== undefined) return { law: { law: "ganser", sphericity }, key: "grain-drag" };
  if (thickness === undefined) return { law: { law: "cheng" }, key: "sphere-drag" };
  const { aspectRatio } = by("flake-drag", () => flakeOfVolume({ diameter, thickness }));
  const orientation = "edgewise";
  if (aspectRatio <= thinnest) return { law: { law: "disc", aspectRatio, orientation }, key: "flake-drag" };
  return lens * aspectRatio > 1
    ? { law: { law: "cheng" }, key: "sphere-drag" }
    : { law: { law: "spheroid", aspectRatio: lens * aspectRatio, orientation }, key: "flake-drag" };
}

/** One kind of particle that goes in at a moment. */
export interface Entering {
  readonly run: Run;
  readonly material: Material;
  readonly particle: Particle;
  /** Place of the moment among all. */
  readonly place: number;
  /** Number of the step, from 1. */
  readonly number: number;
  readonly before: State;
  readonly after: State;
}

/** Every kind of particle, each time that it goes in. */
export const enteringIn: (run: Run) => readonly Entering[] = remembered((run: Run): readonly Entering[] =>
  run.moments.flatMap(({ number, before, after }, place) => {
    const contents = after.inPacks ? [] : after.charge.contents.slice(before.charge.contents.length);
    return [...new Set(contents.map(({ material }) => material))].flatMap((material): readonly Entering[] => {
      const { particle } = material;
      return particle ? [{ run, material, particle, place, number, before, after }] : [];
    });
  }),
);

/** The melt with the particles in it, as the kernels take it. */
export function suspensionOf(charge: Charge, { diameter, density: densityParticle, ...shape }: Particle): Suspension {
  const { law: drag } = dragOf({ diameter, density: densityParticle, ...shape });
  const { viscosity, densityFluid } = meltOf(charge);
  return { viscosity, densityFluid, diameter, densityParticle, volumeFraction: charge.grains(), drag };
}
