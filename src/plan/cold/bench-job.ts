import type { Job } from "../job.js";
import { type Content, massOf, portionOf } from "../moment.js";

/** The job as the bench stirred it: its stirrer in its vessel; or what is missing to know that. */
export function benchJob(job: Job): Job | string {
  const { stirring } = job.bench.emulsion ?? {};
  if (!stirring) return "nothing says how the bench was stirred";
  const { stirrer, diameter } = stirring;
  if (diameter === undefined) return "nothing says how wide the bench's vessel was";
  return { ...job, vessel: { ...job.vessel, name: "bench", diameter, stirrer, bottom: undefined, baffles: undefined } };
}

/** What is in the vessel at the bench's scale: as much less of all as its gel former was; or what is missing to know that. */
export function atBench(
  job: Job,
  contents: readonly Content[],
  gelFormer: readonly Content[],
): readonly Content[] | string {
  const mass = job.bench.emulsion?.stirring?.massGelFormer;
  if (mass === undefined) return "nothing says how much gel former was stirred at the bench";
  return portionOf(contents, (mass * massOf(contents)) / massOf(gelFormer));
}
