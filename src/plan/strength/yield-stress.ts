import type { Job } from "../job.js";
import type { PlanFlow, PlanStrength, PlanYieldStress } from "./plan.js";

/** The yield stress as stated, else as the flow curve shows it, else as the dose lets expect. */
export function yieldStressOf(
  { bench }: Job,
  flow: PlanFlow | undefined,
  strength: PlanStrength | undefined,
): PlanYieldStress | undefined {
  const { yieldStress: value, source } = bench;
  if (value !== undefined) return { value, min: value, max: value, from: `stated, ${source}` };
  const read = flow?.yieldStress;
  if (read) return { value: read.value, min: read.value, max: read.value, from: `${read.by}, ${source}` };
  return strength?.of === "yield stress" && strength.expected
    ? { ...strength.expected, from: `${strength.basis}, ${source}` }
    : undefined;
}
