import { densityOfMixture } from "../../formula/index.js";
import { densityGlycerinWater, volumeFractionOfOil } from "../../gel/index.js";
import { densityAt } from "../../laws/index.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";

/** What of a cold gel is outer phase, and what is oil. Particles are neither. */
export interface GelPhases {
  readonly gelFormer: readonly Content[];
  readonly oil: readonly Content[];
}

/** Oil is what goes in by an addition; all else but the particles is gel former. */
export function phasesOfGel({ process }: Job, contents: readonly Content[]): GelPhases {
  const added = new Set(
    process.route === "cold" ? process.steps.flatMap((step) => (step.do === "add" ? [step.phase] : [])) : [],
  );
  const fluid = contents.filter(({ material }) => !material.particle);
  return {
    gelFormer: fluid.filter(({ phase }) => !added.has(phase)),
    oil: fluid.filter(({ phase }) => added.has(phase)),
  };
}

export function isGlycerin({ material }: Content): boolean {
  return material.propertiesOf === "glycerin";
}

export function isWater({ material }: Content): boolean {
  return material.propertiesOf === "water" || material.function === "water" || material.formulationWater;
}

/** Density of one of the phases at the room's temperature [kg/m³], or whose is missing. Glycerin and water contract. */
export function densityOfPhase(contents: readonly Content[], temperature: number): number | string {
  const glycerin = massOf(contents.filter(isGlycerin));
  const water = massOf(contents.filter(isWater));
  const pairs = glycerin > 0 && water > 0 && temperature >= 15 && temperature <= 30;
  const parts: { readonly mass: number; readonly density: number }[] = pairs
    ? [
        {
          mass: glycerin + water,
          density: densityGlycerinWater({ massFractionGlycerin: glycerin / (glycerin + water), temperature }),
        },
      ]
    : [];
  for (const content of contents) {
    if (pairs && (isGlycerin(content) || isWater(content))) continue;
    const { density, name } = content.material;
    if (!density) return `no density of ${name}`;
    parts.push({ mass: content.mass, density: densityAt({ law: density, temperature, beyond: "extend" }) });
  }
  return parts.length === 0 ? "nothing of that phase in the vessel" : densityOfMixture({ parts });
}

/** Densities of both phases of a gel at the room's temperature [kg/m³], or whose is missing. */
export function densitiesOf(
  { gelFormer, oil }: GelPhases,
  temperature: number,
): { readonly densityGelFormer: number; readonly densityOil: number } | string {
  const densityGelFormer = densityOfPhase(gelFormer, temperature);
  const densityOil = densityOfPhase(oil, temperature);
  if (typeof densityGelFormer === "string") return densityGelFormer;
  return typeof densityOil === "string" ? densityOil : { densityGelFormer, densityOil };
}

/** Volume fraction of oil in oil and gel former, or what is missing. */
export function oilFractionOf(phases: GelPhases, temperature: number): number | string {
  const oil = massOf(phases.oil);
  if (oil === 0) return 0;
  const densities = densitiesOf(phases, temperature);
  if (typeof densities === "string") return densities;
  return volumeFractionOfOil({ massFractionOil: oil / (oil + massOf(phases.gelFormer)), ...densities });
}
