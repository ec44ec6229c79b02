import { dissolvingTemperature, temperatureAtDose } from "../gel/index.js";
import { attempt } from "./attempt.js";
import type { Job } from "./job.js";
import { type Content, doseOf } from "./moment.js";

/** Just outside the measured doses, one this near to a dose counts as that dose: evaporation and weighing move it by as much. */
const sameDose = 0.02;

type Which = "temperatureSetting" | "temperatureDissolving";

/** A temperature by the dose, and how it was come by. */
interface ByDose {
  readonly temperature: number;
  readonly by: "measured" | "between" | "ideal";
}

/** The setting or dissolving temperature of what is in the vessel, from the measured doses; nothing beyond them. */
export function doseTemperature(job: Job, contents: readonly Content[], which: Which): number | undefined {
  return byDose(job, contents, which)?.temperature;
}

/** How the temperature at this dose was come by, in words. */
export function doseWords(job: Job, contents: readonly Content[], which: Which): string {
  const by = byDose(job, contents, which)?.by;
  if (by === "between") return "between measured doses, along the line of Eldridge and Ferry";
  if (by === "ideal") return "ideal solubility by Schröder and van Laar, not measured";
  return by === "measured" ? "as measured at this dose" : "not measured";
}

function byDose({ bench }: Job, contents: readonly Content[], which: Which): ByDose | undefined {
  const dose = doseOf(contents);
  if (dose === 0) return undefined;
  const points = bench.doses.map((point) => ({ dose: point.dose, temperature: point[which] }));
  const same = points.find((point) => Math.abs(point.dose / dose - 1) <= sameDose)?.temperature;
  const near =
    same === undefined ? idealTemperature(bench, dose, which) : ({ temperature: same, by: "measured" } as const);
  // Asked for at every step, and often a hair below the lowest dose: a look is cheaper than an error.
  if (points.every((point) => point.dose > dose) || points.every((point) => point.dose < dose)) return near;
  return attempt(
    () => {
      const temperature = temperatureAtDose({ dose, points });
      return { temperature, by: temperature === same ? "measured" : "between" };
    },
    () => near,
  );
}

/** A gel former that crystallises dissolves by its melting point, as far as the solution is ideal; where it sets is not said. */
function idealTemperature({ idealSolubility }: Job["bench"], dose: number, which: Which): ByDose | undefined {
  if (!idealSolubility || which === "temperatureSetting") return undefined;
  return { temperature: dissolvingTemperature({ ...idealSolubility, massFractionGelFormer: dose }), by: "ideal" };
}
