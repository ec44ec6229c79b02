import { CalculationError } from "../error.js";
import { temperatureAtDose } from "../gel/index.js";
import type { Job } from "./job.js";
import { type Content, doseOf } from "./moment.js";

/** Just outside the measured doses, one this near to a dose counts as that dose: evaporation and weighing move it by as much. */
const sameDose = 0.02;

/** The setting or dissolving temperature of what is in the vessel, from the measured doses; nothing beyond them. */
export function doseTemperature(
  { bench }: Job,
  contents: readonly Content[],
  which: "temperatureSetting" | "temperatureDissolving",
): number | undefined {
  const dose = doseOf(contents);
  const points = bench.doses.map((point) => ({ dose: point.dose, temperature: point[which] }));
  if (dose === 0 || points.length === 0) return undefined;
  const same = points.find((point) => Math.abs(point.dose / dose - 1) <= sameDose)?.temperature;
  // Asked for at every step, and often a hair below the lowest dose: a look is cheaper than an error.
  if (points.every((point) => point.dose > dose) || points.every((point) => point.dose < dose)) return same;
  try {
    return temperatureAtDose({ dose, points });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return same;
  }
}
