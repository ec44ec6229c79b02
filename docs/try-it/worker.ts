// Runs beside the page, so that what is typed never waits for what is computed.
import { CalculationError } from "gelwright/error";
import { type Plan, planSeries, prepareJob, runPrepared } from "gelwright/plan";
import { forms } from "./forms.js";
import type { Answered, Asked, Result } from "./messages.js";
import { panelsOf } from "./panels.js";

function countOf(answers: Plan["answers"]): string {
  const verdicts = ["met", "not-met", "not-known"] as const;
  const count = (one: (typeof verdicts)[number]) => answers.filter(({ verdict }) => verdict === one).length;
  return verdicts.map((one) => `${count(one)} ${one.replace("-", " ")}`).join(", ");
}

function resultOf(document: unknown): Result {
  try {
    const prepared = prepareJob(document);
    const plan = runPrepared({ prepared });
    const shown = forms.map(({ write, show }) => {
      const text = write(plan);
      return show ? { text, html: show(text) } : { text };
    });
    const panels = panelsOf(plan, planSeries({ prepared }));
    return { name: plan.names.formula, answers: countOf(plan.answers), shown, panels };
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return { faults: error.faults };
  }
}

addEventListener("message", ({ data }: MessageEvent<Asked>) => {
  const answer: Answered = { id: data.id, ...resultOf(data.document) };
  postMessage(answer);
});
