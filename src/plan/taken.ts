import type { Read } from "../formula/read-type.js";
import { type CylinderReading, cylinderReading } from "../rheology/index.js";
import type { TakenDocument } from "./documents/viscometer.js";

/** Readings of a viscometer as it gave them. */
export type Taken = Read<TakenDocument>;

/** What readings as they were taken stand for: each with its temperature [°C]. */
export function cylinderReadings({ cylinder, speed, readings }: Taken): readonly (CylinderReading & {
  readonly temperature: number;
})[] {
  const { diameter, cup: diameterCup, length, endEffectFactor } = cylinder;
  return readings.map(({ at: temperature, torque }) => ({
    temperature,
    ...cylinderReading({ cylinder: { diameter, diameterCup, length, endEffectFactor }, speed, torque }),
  }));
}

/** The shear rate at which readings were taken [1/s]: the same for all, since it depends on the speed alone. */
export function shearRateTaken(taken: Taken): number {
  return cylinderReadings(taken)[0]?.shearRate ?? 0;
}
