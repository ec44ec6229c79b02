import { densityOfMixture, type Material } from "../formula/index.js";
import { heatCapacityFunction } from "../heat/index.js";
import { type DensityLaw, densityAt, type HeatLossLaw, type ViscosityLaw } from "../laws/index.js";
import type { DragLaw } from "../particles/index.js";
import { doseTemperature } from "./dose.js";
import type { Job } from "./job.js";
import { type Content, moltenOf } from "./moment.js";
import { partsOf } from "./parts.js";
import { dragOf } from "./strength/drag.js";
import { readingsFor } from "./viscosity.js";

/** Density of the air in bubbles, near the temperature and pressure of a room [kg/m³]. */
export const densityOfAir = 1.2;

/** A composition that cools and thickens in the vessel until it sets. */
export interface CoolingMelt {
  /** Setting temperature [°C]. */
  readonly sets: number;
  /** Heat capacity of the charge and of what of the vessel cools along [J/K]. */
  readonly heatCapacity: (temperature: number) => number;
  readonly heatLoss: HeatLossLaw;
  readonly temperatureAmbient: number;
  readonly viscosity: ViscosityLaw;
  readonly densityFluid: DensityLaw;
}

/** The same with particles in it. */
export interface CoolingSuspension extends CoolingMelt {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly volumeFraction: number;
  readonly drag: DragLaw;
}

/** How a composition cools and thickens in the vessel, or what is missing to know it. */
export function meltOf(contents: readonly Content[], job: Job): CoolingMelt | string {
  const { loss, wall } = job.vessel;
  const readings = readingsFor(job.bench.viscosities, contents, "cooling");
  const sets = doseTemperature(job, contents, "temperatureSetting");
  const parts = partsOf(contents, moltenOf(contents), wall);
  if (!readings) return "no viscosity readings on cooling of this composition";
  if (sets === undefined) return "no setting temperature at this dose of gel former";
  if (typeof parts === "string") return parts;
  if (!loss) return "no heat loss of the vessel";
  const densityFluid = fluidLaw(contents, sets);
  if (!densityFluid) return "a density is missing";
  return {
    sets,
    viscosity: readings.law,
    densityFluid,
    heatCapacity: heatCapacityFunction({ parts }),
    heatLoss: loss.law,
    temperatureAmbient: job.process.temperatureRoom,
  };
}

/** How particles are carried by a composition that cools in the vessel, or what is missing to know it. */
export function suspensionOf(
  contents: readonly Content[],
  particle: NonNullable<Material["particle"]>,
  job: Job,
): CoolingSuspension | string {
  const melt = meltOf(contents, job);
  return typeof melt === "string"
    ? melt
    : {
        ...melt,
        diameter: particle.diameter,
        densityParticle: particle.density,
        volumeFraction: solidShare(contents),
        drag: dragOf(particle).law,
      };
}

/** Share of the volume that is particles of any kind. */
export function solidShare(contents: readonly Content[]): number {
  const volume = ({ material, mass }: Content): number =>
    mass /
    (material.particle?.density ??
      (material.density ? densityAt({ law: material.density, temperature: 20 }) : Number.NaN));
  const sum = (of: readonly Content[]): number => of.reduce((total, content) => total + volume(content), 0);
  return sum(contents.filter(({ material }) => material.particle)) / sum(contents);
}

/** Density of what the particles are suspended in [kg/m³], where every density is known. */
export function fluidDensity(contents: readonly Content[], temperature: number): number | undefined {
  const fluid = contents.filter(({ material }) => !material.particle);
  const parts = fluid.flatMap(({ material, mass }) =>
    material.density ? [{ mass, density: densityAt({ law: material.density, temperature }) }] : [],
  );
  return parts.length === fluid.length && parts.length > 0 ? densityOfMixture({ parts }) : undefined;
}

/** The same as a law: the straight line through the setting temperature and 10 K above it. */
function fluidLaw(contents: readonly Content[], sets: number): DensityLaw | undefined {
  const density = fluidDensity(contents, sets);
  const warmer = fluidDensity(contents, sets + 10);
  return density === undefined || warmer === undefined
    ? undefined
    : { law: "linear", density, temperatureReference: sets, slope: (density - warmer) / 10 };
}
