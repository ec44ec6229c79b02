import {
  type Answer,
  answerQuestions,
  type JobDocument,
  prepareJob,
  type QuestionId,
  type Subject,
} from "gelwright/plan";
import { runOf } from "../../src/plan/prepared-run.js";
import { questions } from "../../src/plan/questions/index.js";
import { answersTo, sameSubject } from "../../src/plan/questions/question.js";
import type { Moment } from "../../src/plan/state.js";

/** The steps of a job as they were run; nothing of them is found before it is asked for. */
export function stepsOf(job: JobDocument): readonly Moment[] {
  return runOf(prepareJob(job)).moments;
}

/** One step of a job as it was run, by its number from 1. */
export function stepOf(job: JobDocument, number: number): Moment {
  const found = stepsOf(job)[number - 1];
  if (!found) throw new Error(`no step ${number}`);
  return found;
}

/** The answers to one question of a job; nothing else of the plan is found. */
export function asked(job: JobDocument, id: QuestionId): readonly Answer[] {
  return answerQuestions({ prepared: prepareJob(job), questions: [id] });
}

/** The one answer to a question of a job, about a subject if there are several. */
export function answered(job: JobDocument, id: QuestionId, subject?: Subject): Answer {
  const [found, another] = asked(job, id).filter(({ of }) => subject === undefined || sameSubject(of, subject));
  if (!found || another) throw new Error(`${found ? "several answers" : "no answer"} ${id}`);
  return found;
}

/** What can be turned to make an answer met: each lever with the ends between which it is looked for, and what it changes. */
export function leversOf(job: JobDocument, id: QuestionId, subject?: Subject): readonly (readonly unknown[])[] {
  const run = runOf(prepareJob(job));
  const question = questions.find((one) => one.id === id);
  const own = question?.subjects(run).find((one) => subject === undefined || sameSubject(question.of(one), subject));
  if (!question || own === undefined) throw new Error(`no answer ${id}`);
  const at = answersTo(question, run).find(({ of }) => sameSubject(of, question.of(own)))?.at ?? {};
  return (question.levers?.(own, run, at) ?? []).map(({ id: lever, bracket, change, whole }) => {
    const { change: _, value: __, ...what } = change(bracket[1]);
    return [lever, ...bracket, what, ...(whole ? ["in whole numbers"] : [])];
  });
}
