import { dissolvingTemperature, temperatureAtDose } from "../gel/index.js";
import type { Bench } from "./documents/bench.js";
import type { Basis } from "./figure.js";
import { by, unknown } from "./unknown.js";

/** A temperature by the dose of gel former, and how it was found. */
export interface ByDose {
  readonly temperature: number;
  readonly basis: Basis;
  readonly by: "measured" | "between" | "ideal";
}

/** Just outside the measured doses, one this near to a dose counts as that dose: evaporation and weighing move it by as much. */
const sameDose = 0.02;

/** Where a dose of gel former sets or dissolves: as measured, between measured doses, or by ideal solubility. */
export function temperatureByDose(bench: Bench, dose: number, which: "setsAt" | "dissolvesAt"): ByDose {
  const { doses = [], idealSolubility, source } = bench;
  if (dose === 0) unknown("nothing-there", { field: "bench-doses" });
  const points = doses.map((point) => ({ dose: point.gelFormer, temperature: point[which] }));
  const basis: Basis = { kind: "reading", key: "bench-doses", source };
  const inside = !points.every((point) => point.dose > dose) && !points.every((point) => point.dose < dose);
  const same = points.find((point) => Math.abs(point.dose / dose - 1) <= sameDose)?.temperature;
  if (inside) {
    const temperature = by("setting-line", () => temperatureAtDose({ dose, points }));
    return { temperature, basis, by: temperature === same ? "measured" : "between" };
  }
  if (same !== undefined) return { temperature: same, basis, by: "measured" };
  if (!idealSolubility || which === "setsAt") return unknown("not-read", { field: "bench-doses", dose });
  const { meltingPoint: temperatureMelting, ...pair } = idealSolubility;
  const temperature = by("ideal-solubility", () =>
    dissolvingTemperature({ ...pair, temperatureMelting, massFractionGelFormer: dose }),
  );
  return { temperature, basis: { kind: "law", key: "ideal-solubility" }, by: "ideal" };
}
