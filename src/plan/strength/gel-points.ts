import { fitGelPoint, gelPointAtDose } from "../../gel/index.js";
import { attempt } from "../attempt.js";
import { doseTemperature, doseWords } from "../dose.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { doseOf } from "../moment.js";
import type { PlanGelPoint } from "./plan.js";

/** At which temperatures the finished melt sets and dissolves by its dose, and what says so. */
export function gelPointsOf(job: Job, moments: readonly Moment[]): readonly PlanGelPoint[] {
  const contents = moments.find(({ step }) => step.do === "fill")?.before.contents ?? [];
  const dose = doseOf(contents);
  if (dose === 0) return [];
  return (["temperatureSetting", "temperatureDissolving"] as const).flatMap((which) => {
    const temperature = doseTemperature(job, contents, which);
    if (temperature === undefined) return [];
    const points = job.bench.doses.map((point) => ({ dose: point.dose, temperature: point[which] }));
    const measured = points.some((point) => point.temperature === temperature);
    const line =
      points.length < 4 || measured
        ? "not asked"
        : attempt(() => gelPointAtDose({ line: fitGelPoint({ points }), dose }));
    return [
      {
        what: which === "temperatureSetting" ? ("sets" as const) : ("dissolves" as const),
        dose,
        temperature,
        ...(typeof line === "object" && { line }),
        basis: doseWords(job, contents, which),
      },
    ];
  });
}
