import { type JobDocument, type Plan, type QuestionId, runPlan, type Subject } from "gelwright/plan";

/** One answer of a plan. */
export type Answer = Plan["answers"][number];

/** The answers to a question: about one subject, or about all that it was raised for. */
export function answersOf({ answers }: Plan, id: QuestionId, subject: Subject = {}): readonly Answer[] {
  const keys = ["material", "phase", "step", "place"] as const;
  return answers.filter(
    (answer) => answer.id === id && keys.every((key) => subject[key] === undefined || answer.of[key] === subject[key]),
  );
}

/** The one answer to a question about a subject, of a plan or of the plan of a job; with none or with several the test fails. */
export function answerOf(of: JobDocument | Plan, id: QuestionId, subject: Subject = {}): Answer {
  const plan = "answers" in of ? of : runPlan(of);
  const [found, another] = answersOf(plan, id, subject);
  if (!found || another)
    throw new Error(
      `${another ? "several answers" : "no answer"} ${id} ${JSON.stringify(subject)} among ${JSON.stringify(plan.answers.map((one) => [one.id, one.of]))}`,
    );
  return found;
}

/** The value of a figure that has to be known. */
export function figureOf({ figure: { value }, notKnown }: Answer): number {
  return known(value, notKnown);
}

/** A figure that has to be there. */
export function known<T>(value: T | undefined | null, why?: unknown): T {
  if (value === undefined || value === null) throw new Error(`not known: ${JSON.stringify(why)}`);
  return value;
}
