import { type Plan, runPlan } from "gelwright/plan";
import { coldJob, exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

/** What is compared of a plan: the rest of it is not looked at. */
function comparedOf({ vessel, lots, scale, allowances }: Plan) {
  return { vessel, lots, scale, allowances };
}

export const validInputs: ValidInputs = {
  comparePlans: [[{ plans: [runPlan(exampleJob("beaker")), runPlan(exampleJob())].map(comparedOf) }]],
  runPlan: [[exampleJob("beaker")], [coldJob("beaker")]],
};
