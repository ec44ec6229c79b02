import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { allJobsByName } from "./jobs.js";

type Plans = readonly (readonly [string, { readonly job: JobDocument; readonly plan: Plan }])[];

/** Made once for all tests of a thread: they take two seconds. */
let plans: Plans | undefined;

/** The twenty jobs and the four of the examples, each with its plan. All tests share them, so none may write to one. */
export function plansByName(): Plans {
  plans ??= Object.entries(allJobsByName()).map(([name, job]) => [name, { job, plan: runPlan(job) }]);
  return plans;
}

/** An answer's id and what it is about, as one word that no other answer of the plan has. */
export function keyOf({ id, of }: { readonly id: string; readonly of: Plan["answers"][number]["of"] }): string {
  const { material, phase, step, place } = of;
  return [id, material ?? phase, step, place].filter((part) => part !== undefined).join(":");
}
