// Runs beside the page, so that what is typed never waits for what is computed.
import { CalculationError } from "gelwright/error";
import { type Plan, planSeries, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { scalesToMarkdown } from "gelwright/sheet";
import { forms, markdown } from "./forms.js";
import type { Answered, Asked, Beside, Named, Result } from "./messages.js";
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

/** Nothing where a job has faults. */
function planOf({ document }: Named): Plan | undefined {
  try {
    return runPlan(document);
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return undefined;
  }
}

function besideOf(jobs: readonly Named[]): Beside {
  const plans = jobs.map(planOf);
  const sound = plans.filter((plan) => plan !== undefined);
  if (sound.length < jobs.length) return { faulty: jobs.filter((_, i) => !plans[i]).map(({ name }) => name) };
  const labels = jobs.map(({ name }) => name);
  const text = scalesToMarkdown({ plans: sound, labels, documents: jobs.map(({ document }) => document) });
  return { text, html: markdown(text) };
}

addEventListener("message", ({ data }: MessageEvent<Asked>) => {
  const answer: Answered = { id: data.id, ...("beside" in data ? besideOf(data.beside) : resultOf(data.document)) };
  postMessage(answer);
});
