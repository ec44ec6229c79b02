import { refuse, show } from "../guards.js";
import { type Change, changed } from "./change.js";
import type { LeverCode } from "./codes.js";
import { type Answer, answersTo, type Question, type Subject } from "./questions/question.js";
import type { ReadJob } from "./read.js";
import type { Run } from "./state.js";

/** A change that makes an answer met, and the answer that it then gets. */
export interface Remedy {
  readonly lever: LeverCode;
  readonly change: Change;
  readonly answer: Answer;
}

/** So many halvings leave of a bracket a part that no thermometer and no clock can read. */
const halvings = 30;

/** What finds a run of a job. */
export type RunOf = (job: ReadJob) => Run;

/**
 * The remedies of one answer: for each lever of its question the nearest value that makes it met, found by halving the
 * bracket through runs. A lever that does not make it met anywhere in its bracket is no remedy.
 */
export function remediesOf(prepared: ReadJob, question: Question, subject: Subject, runOf: RunOf): readonly Remedy[] {
  const run = runOf(prepared);
  const own = question.subjects(run).find((one) => same(question.of(one), subject));
  const asked = answersTo(question, run).find((answer) => same(answer.of, subject));
  if (!asked) {
    const found = Object.entries(subject).map(([name, value]) => `${name} ${show(value)}`);
    return refuse("input", "answer.of", found.join(", "), "a subject of this question");
  }
  if (asked.verdict === "met") return [];
  return (question.levers?.(own, run, asked.at) ?? []).flatMap(
    ({ id, change, bracket: [from, to] }): readonly Remedy[] => {
      const at = (value: number): Answer | undefined =>
        answersTo(question, runOf(changed(prepared, [change(value)]))).find((answer) => same(answer.of, subject));
      let [open, met] = [from, to];
      let answer = at(met);
      if (answer?.verdict !== "met") return [];
      for (let i = 0; i < halvings; i++) {
        const middle = (open + met) / 2;
        const found = at(middle);
        if (found?.verdict === "met") {
          met = middle;
          answer = found;
        } else open = middle;
      }
      return [{ lever: id, change: change(met), answer }];
    },
  );
}

function same(one: Subject, other: Subject): boolean {
  return (
    one.material === other.material && one.phase === other.phase && one.step === other.step && one.place === other.place
  );
}
