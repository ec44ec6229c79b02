import type { Batch, BatchAllowance } from "../batch/index.js";
import { type Draft, type Findings, join } from "../formula/document.js";
import type { Job } from "./job.js";

/** Packs of which the mean is taken while they are filled, unless the pack states another number: common practice, no source. */
export const usualSampleSize = 5;

type Stability = NonNullable<Job["stability"]>;

/** An allowance for samples. */
export type Samples = BatchAllowance & { readonly kind: "samples" };

/** The samples of a whole stability test. */
export function samplesOf({ conditions, cycles }: Stability): number {
  const each = conditions.map(
    ({ pullDays, samplesPerPull, reserve = 0 }) => pullDays.length * samplesPerPull + reserve,
  );
  return each.reduce((sum, samples) => sum + samples, cycles?.samples ?? 0);
}

/** What the tests of a job take out of one lot. */
export interface SamplesTaken {
  /** Samples of the stability test. */
  readonly stabilityTest?: number;
  /** Packs of the fill checks. */
  readonly fillChecks?: number;
  /** Further packs. */
  readonly packs?: number;
}

/** What an allowance for samples holds. */
export function takenBy({ stabilityTest, fillChecks, packs }: Samples, { stability, pack }: Job): SamplesTaken {
  return {
    ...(stabilityTest && stability && { stabilityTest: samplesOf(stability) }),
    ...(fillChecks !== undefined && { fillChecks: fillChecks * (pack?.sampleSize ?? usualSampleSize) }),
    ...(packs !== undefined && { packs }),
  };
}

/** The batch of a job, with the samples of its tests in packs; those of a stability test that states their mass as a mass. */
export function withSamples(job: Job): Batch {
  const { batch, stability } = job;
  if (!batch.allowances.some(({ kind }) => kind === "samples")) return batch;
  return {
    ...batch,
    allowances: batch.allowances.map((allowance): BatchAllowance => {
      if (allowance.kind !== "samples") return allowance;
      const { name, source } = allowance;
      const { stabilityTest = 0, fillChecks = 0, packs = 0 } = takenBy(allowance, job);
      const inPacks = stability?.sample === undefined ? stabilityTest : 0;
      return {
        kind: "samples",
        name,
        source,
        packs: packs + fillChecks + inPacks,
        mass: stabilityTest > 0 && inPacks === 0 ? stabilityTest * (stability?.sample ?? 0) : 0,
      };
    }),
  };
}

/** Samples of a stability test need one, and packs a batch in packs. */
export function checkSamples(batch: Draft<Batch>, stability: Draft<Stability> | undefined, findings: Findings): void {
  batch.allowances?.forEach((allowance, i) => {
    if (allowance?.kind !== "samples") return;
    const { name, packs, stabilityTest, fillChecks } = allowance as Samples;
    const at = (key: string): string => ["allowances", i, key].reduce<string>(join, "batch");
    // The plan finds the mass of the samples by the name of their allowance.
    if (name !== undefined && batch.allowances?.findIndex((other) => other?.name === name) !== i)
      findings.note(at("name"), name, "a name that no allowance before it has", "duplicate");
    if (stabilityTest === true && !stability && !findings.holds("stability"))
      findings.note(at("stabilityTest"), "no stability test", "a job with a stability test", "missing");
    if (batch.packs !== undefined || findings.holds(join("batch", "target"))) return;
    const expected = "a batch that is asked for in packs";
    if (packs !== undefined) findings.note(at("packs"), packs, expected);
    if (fillChecks !== undefined) findings.note(at("fillChecks"), fillChecks, expected);
    if (stabilityTest === true && stability && stability.sample === undefined)
      findings.note(at("stabilityTest"), "samples without a mass", `${expected}, or stability.sample`);
  });
}
