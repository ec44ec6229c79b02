import { runPlan } from "gelwright/plan";
import { exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

const plan = runPlan(exampleJob());

export const validInputs: ValidInputs = {
  toCsv: [[{ plan, table: "weighing" }], [{ plan, table: "timeline" }], [{ plan, table: "checks" }]],
  toJson: [[{ plan }]],
  scalesToMarkdown: [
    [{ plans: [{ vessel: plan.vessel, lots: plan.lots, scale: plan.scale, allowances: plan.allowances }] }],
  ],
  toMarkdown: [[{ plan }]],
};
