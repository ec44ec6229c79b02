import { runPlan } from "gelwright/plan";
import { exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

const whole = runPlan(exampleJob());
const { vessel, materials } = whole.names;

/** Every ninth answer and every fourth step: damage to each leaf of a whole plan would take half an hour. */
const answers = whole.answers.filter((_, at) => at % 9 === 0);
const timeline = whole.timeline.filter((_, at) => at % 4 === 0);
const bare = { ...whole, answers: [], timeline: [], sources: [] };
const plan = { ...bare, answers, timeline, sources: whole.sources.slice(0, 2) };

export const validInputs: ValidInputs = {
  toCsv: [
    [{ plan: bare, table: "weighing" }],
    [{ plan: { ...bare, timeline }, table: "timeline" }],
    [{ plan: { ...bare, answers, timeline }, table: "answers" }],
  ],
  toJson: [[{ plan }]],
  scalesToMarkdown: [
    [{ plans: [{ names: { vessel, materials }, lots: whole.lots, scale: whole.scale, allowances: whole.allowances }] }],
  ],
  toMarkdown: [
    [{ plan, words: { labels: { title: "Sheet" } }, formats: { units: { temperature: "°F" } } }],
    [{ plan: bare }],
  ],
};
