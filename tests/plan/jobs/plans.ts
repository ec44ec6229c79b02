import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { allJobsByName } from "./jobs.js";

/** The twenty jobs and the four of the examples, each with its plan, in the order of their names. */
export function plansByName(): readonly (readonly [string, { readonly job: JobDocument; readonly plan: Plan }])[] {
  return Object.entries(allJobsByName()).map(([name, job]) => [name, { job, plan: runPlan(job) }]);
}

/** An answer's id and what it is about, as one word that no other answer of the plan has. */
export function keyOf({ id, of }: { readonly id: string; readonly of: Plan["answers"][number]["of"] }): string {
  const { material, phase, step, place } = of;
  return [id, material ?? phase, step, place].filter((part) => part !== undefined).join(":");
}
