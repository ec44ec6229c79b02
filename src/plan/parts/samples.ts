import { type SamplesTaken, takenBy } from "../samples.js";
import type { Run } from "../state.js";

/** An allowance for samples, by what takes them out of one lot. */
export interface PlanSamples extends SamplesTaken {
  /** Of the allowance, in the caller's words. */
  readonly name: string;
  /** Product in all of them [kg]. */
  readonly mass: number;
}

/** What each allowance for samples takes out of one lot. */
export function samplesIn({ job, scaled }: Run): readonly PlanSamples[] {
  return job.batch.allowances.flatMap((allowance): readonly PlanSamples[] => {
    if (allowance.kind !== "samples") return [];
    const { name } = allowance;
    const mass = scaled.lot.allowances.find((one) => one.name === name)?.mass as number;
    return [{ name, ...takenBy(allowance, job), mass }];
  });
}
