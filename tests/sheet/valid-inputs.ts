import { runPlan } from "gelwright/plan";
import { exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

const plan = runPlan(exampleJob());
const { vessel, materials } = plan.names;

export const validInputs: ValidInputs = {
  toCsv: [[{ plan, table: "weighing" }], [{ plan, table: "timeline" }], [{ plan, table: "answers" }]],
  toJson: [[{ plan }]],
  scalesToMarkdown: [
    [{ plans: [{ names: { vessel, materials }, lots: plan.lots, scale: plan.scale, allowances: plan.allowances }] }],
  ],
  toMarkdown: [
    [{ plan }],
    [{ plan, words: { labels: { title: "Sheet" } }, formats: { units: { temperature: "°F" } } }],
  ],
};
