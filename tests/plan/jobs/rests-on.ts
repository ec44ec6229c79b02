import { type Answer, type JobDocument, prepareJob } from "gelwright/plan";
import { runOf } from "../../../src/plan/prepared-run.js";
import { questions } from "../../../src/plan/questions/index.js";
import { answersTo, type Lever, type Question, sameSubject } from "../../../src/plan/questions/question.js";
import type { Run } from "../../../src/plan/state.js";

/** What an answer rests on and says besides its numbers, as short words. */
export interface Rests {
  /** Kinds and keys of what the figure is found by; `open` for one that is not known. */
  readonly figure: string;
  /** Likewise of each end of the limit. */
  readonly limit: string;
  /** Which words tell where the deciding state was found. */
  readonly at: string;
  /** What stands beside it. */
  readonly beside: string;
  /** What can be turned to make it met. */
  readonly levers: string;
}

type Figure = Answer["figure"];

function basisOf({ min, max, basis }: Figure): string {
  if (min === null && max === null && !basis) return "open";
  return (basis ?? []).map(({ kind, key }) => `${kind} ${key}`).join(", ") || "none";
}

function wordsOf(of: object | undefined): string {
  return Object.keys(of ?? {})
    .sort()
    .join(" ");
}

/** A lever with what it changes, and which way it is turned. */
function leverOf({ id, change, bracket: [from, to] }: Lever): string {
  const { change: what, ...more } = change(to);
  const field = "field" in more ? ` ${more.field}` : "";
  return `${id}: ${what}${field} ${to > from ? "up" : to < from ? "down" : "as it is"}`;
}

function restsOf({ of, figure, limit, at, beside }: Answer, question: Question, run: Run): Rests {
  const subject = question.subjects(run).find((one) => sameSubject(question.of(one), of));
  const levers = subject === undefined ? [] : (question.levers?.(subject, run, at) ?? []);
  const ends = [limit.min && `min: ${basisOf(limit.min)}`, limit.max && `max: ${basisOf(limit.max)}`];
  return {
    figure: basisOf(figure),
    limit: ends.filter((end) => end !== undefined).join("; "),
    at: [wordsOf(at), at.place].filter(Boolean).join(": "),
    beside: wordsOf(beside),
    levers: levers.map(leverOf).join(", "),
  };
}

/** The answers of a job with what each rests on. */
export function answersWithRests(job: JobDocument): readonly (readonly [Answer, Rests])[] {
  const run = runOf(prepareJob(job));
  return questions.flatMap((question) =>
    answersTo(question, run).map((answer) => [answer, restsOf(answer, question, run)] as const),
  );
}

/** What answers to each question may rest on: by id and part, each that some job has. */
export type Table = Readonly<Record<string, { readonly [Part in keyof Rests]: readonly string[] }>>;

/** What the answers of jobs rest on, together. */
export function tableOf(jobs: readonly JobDocument[]): Table {
  const all = jobs.flatMap((job) => answersWithRests(job)).map(([{ id }, rests]) => ({ id, rests }));
  const ids = [...new Set(all.map(({ id }) => id))].sort();
  const parts = ["figure", "limit", "at", "beside", "levers"] as const;
  return Object.fromEntries(
    ids.map((id) => {
      const own = all.filter((one) => one.id === id);
      const row = parts.map((part) => [part, [...new Set(own.map(({ rests }) => rests[part]))].sort()] as const);
      return [id, Object.fromEntries(row) as unknown as Table[string]];
    }),
  );
}
