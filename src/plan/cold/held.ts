import type { Check, Material } from "../../formula/index.js";
import { yieldStressToHold, yieldStressToHoldFlake } from "../../particles/index.js";
import type { Job } from "../job.js";
import type { Content } from "../moment.js";
import { say } from "../say.js";
import { fluidDensity } from "../suspension.js";

/** Particles in the gel that is to hold them. */
interface HeldParticle {
  readonly material: Material;
  readonly particle: NonNullable<Material["particle"]>;
  readonly contents: readonly Content[];
}

/** Whether the set gel holds the particles for as long as it stays as it is. */
export function checkHeld(
  { material, particle, contents }: HeldParticle,
  { process }: Job,
  { yieldStress, source }: { readonly yieldStress?: number | undefined; readonly source: string },
): Check {
  const check = {
    id: `particles-stay-up:${material.key}`,
    source: `${particle.thickness === undefined ? "Beris and others 1985 with the spread of published experiments" : "shear on both faces of a flake that stands on edge"}; yield stress ${source}`,
  };
  const fluid = fluidDensity(contents, process.temperatureRoom);
  if (yieldStress === undefined || fluid === undefined)
    return {
      ...check,
      verdict: "not known",
      statement: `Whether the set gel holds ${material.name} is not known: ${yieldStress === undefined ? "no yield stress of the set gel" : "a density is missing"}.`,
      value: "not known",
      limit: "not known",
    };
  const { diameter, density: densityParticle, thickness } = particle;
  // A flake on edge feels shear on both faces, and has one figure and no band.
  const flake =
    thickness === undefined ? undefined : yieldStressToHoldFlake({ thickness, densityParticle, densityFluid: fluid });
  const { least, greatest } =
    flake === undefined
      ? yieldStressToHold({ diameter, densityParticle, densityFluid: fluid })
      : { least: flake, greatest: flake };
  const verdict = yieldStress >= greatest ? "met" : yieldStress < least ? "not met" : "not known";
  return {
    ...check,
    verdict,
    statement: {
      met: `The set gel is strong enough to hold ${material.name} at rest, as long as it stays as it is.`,
      "not met": `The set gel is too weak to hold ${material.name}: it will sink in storage.`,
      "not known": `Published experiments disagree on whether this gel holds ${material.name}.`,
    }[verdict],
    value: say.pascals(yieldStress),
    limit: `held from ${say.pascals(greatest)}, lost below ${say.pascals(least)}`,
  };
}
