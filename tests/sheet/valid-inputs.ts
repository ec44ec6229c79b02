import { exposureFor, labelFor, planSeries, prepareJob, runPlan, sweep } from "gelwright/plan";
import { exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";

const whole = runPlan(exampleJob());
const prepared = prepareJob(exampleJob());
const { vessel, materials } = whole.names;
const series = planSeries({ prepared });

/** Every ninth answer and every fourth step: damage to each leaf of a whole plan would take half an hour. */
const answers = whole.answers.filter((_, at) => at % 9 === 0);
const timeline = whole.timeline.filter((_, at) => at % 4 === 0);
const bare = { ...whole, answers: [], timeline: [], sources: [] };
const plan = { ...bare, answers, timeline, sources: whole.sources.slice(0, 2) };

/** Two runs of which one answer differs, with the figures of one of them alone. */
const found = sweep({
  prepared,
  rows: [
    { label: "as planned", changes: [] },
    { label: "next to nothing", changes: [{ change: "delivered", value: 1e-9 }] },
  ],
  questions: ["filled-before-it-sets"],
});

export const validInputs: ValidInputs = {
  changesToMarkdown: [
    [
      {
        before: { ...bare, answers: answers.slice(0, 2) },
        after: { ...bare, fingerprint: "0".repeat(64) },
        documents: { before: { room: "20 °C" }, after: { room: "22 °C" } },
      },
    ],
  ],
  exposureToMarkdown: [[{ exposure: exposureFor({ prepared }) }]],
  fillCheckToMarkdown: [[{ plan: { ...bare, weighing: { ...whole.weighing, lines: [] } } }]],
  labelToMarkdown: [[{ label: labelFor({ prepared }) }]],
  stabilityToMarkdown: [[{ plan: { ...bare, weighing: { ...whole.weighing, lines: [] } } }]],
  toCsv: [
    [{ plan: bare, table: "weighing" }],
    [{ plan: { ...bare, timeline }, table: "timeline" }],
    [{ plan: { ...bare, answers, timeline }, table: "answers" }],
  ],
  toHtml: [[{ plan: { ...bare, timeline }, series: { ...series, times: series.times.slice(0, 3) } }]],
  toJson: [[{ plan }]],
  scalesToMarkdown: [
    [{ plans: [{ names: { vessel, materials }, lots: whole.lots, scale: whole.scale, allowances: whole.allowances }] }],
  ],
  sweepToMarkdown: [[{ sweep: found }]],
  toMarkdown: [
    [{ plan, words: { labels: { title: "Sheet" } }, formats: { units: { temperature: "°F" } } }],
    [{ plan: bare }],
  ],
};
