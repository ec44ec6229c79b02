import { shearRateOf } from "./impeller.js";
import type { Job, Readings, Stirrer } from "./job.js";
import { type Content, phasesOf, type State } from "./moment.js";

/** The readings of just these phases together in this direction; nothing else stands in for them. */
export function readingsFor(
  viscosities: readonly Readings[],
  contents: readonly Content[],
  direction: Readings["direction"],
): Readings | undefined {
  const phases = phasesOf(contents);
  return viscosities.find(
    (readings) =>
      readings.direction === direction &&
      readings.phases.length === phases.length &&
      readings.phases.every((phase) => phases.includes(phase)),
  );
}

/** A viscosity with all that it depends on. */
export interface ViscosityThen {
  /** Viscosity [Pa·s]. */
  readonly viscosity: number;
  readonly shearRate: string;
  /** True where the temperature lies beyond the readings, so that the figure is an extension of their end. */
  readonly beyondReadings: boolean;
}

/** The viscosity of what is in the vessel, where readings of that composition know it. */
export function viscosityThen(job: Job, state: State, direction: Readings["direction"]): ViscosityThen | undefined {
  const readings = readingsFor(job.bench.viscosities, state.contents, direction);
  if (!readings || state.temperature === undefined) return undefined;
  const { shearRate, viscosityOf, temperatureMin, temperatureMax } = readings;
  return {
    viscosity: viscosityOf(state.temperature),
    shearRate,
    beyondReadings: state.temperature < temperatureMin || state.temperature > temperatureMax,
  };
}

/** The viscosity by temperature at the mean shear rate of a stirrer, or what is missing to know it: a power law through the readings of a melt that thins. */
export function viscosityAtStirrer(
  { viscosityOf, thinning }: Readings,
  stirrer: Stirrer,
  speed: number,
): ((temperature: number) => number) | string {
  if (!thinning) return viscosityOf;
  const shearRate = shearRateOf(stirrer, speed);
  if (typeof shearRate === "string") return shearRate;
  const thinner = (shearRate / thinning.shearRate) ** (thinning.flowIndex - 1);
  return (temperature) => thinner * viscosityOf(temperature);
}
