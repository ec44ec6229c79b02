import { readFileSync } from "node:fs";
import type { Plan } from "gelwright/plan";
import { keyOf } from "./plans.js";

type Verdict = "met" | "not-met" | "not-known";

/** One answer as it is recorded: its own word, and how it came out. */
export interface Recorded {
  readonly id: string;
  readonly of: Plan["answers"][number]["of"];
  readonly verdict: Verdict;
  readonly side: string;
}

/** The checks of each job before the plan was rebuilt. */
export type Checks = Readonly<Record<string, readonly Check[]>>;

interface Check {
  readonly id: string;
  readonly verdict: "met" | "not met" | "not known";
}

/** A verdict that differs: of a check that was there, of one that is gone (no answers), or newly asked (no check). */
export interface VerdictChange {
  readonly job: string;
  readonly before?: { readonly id: string; readonly verdict: Verdict };
  readonly after: readonly { readonly key: string; readonly verdict: Verdict }[];
}

/** A figure of a job that differs: moved by no more than `largest` of its value, not known any more, or known at last. */
export interface FigureChange {
  readonly job: string;
  readonly figure: string;
  readonly change: "moved" | "gone" | "new";
  readonly largest?: number;
}

/** What is recorded of the differences. */
export interface Differences {
  /** A sentence for each reason. */
  readonly reasons: Readonly<Record<string, string>>;
  readonly verdicts: readonly (VerdictChange & { readonly reason: string })[];
  readonly figures: readonly (FigureChange & { readonly reason: string })[];
}

/** What makes two differences the same one, whatever its size. */
export function nameOf(change: VerdictChange | FigureChange): string {
  if ("figure" in change) return [change.job, change.figure, change.change].join(" ");
  const { job, before, after } = change;
  return [job, before?.id, before?.verdict, ...after.flatMap(({ key, verdict }) => [key, verdict])].join(" ");
}

/** Checks that are asked under other names, some of them as several questions. */
const renamed: Readonly<Record<string, readonly string[]>> = {
  "in-time": ["done-in-time"],
  "flash-point-in-the-charge": ["flash-point"],
  "flash-point-at-the-wall": ["flash-point"],
  motor: ["motor-power", "motor-torque"],
  "air-leaves": ["air-leaves", "air-is-released", "air-has-time"],
};

/** Where the charge is, of the checks that had it in their name. */
const places: Readonly<Record<string, string>> = {
  "flash-point-in-the-charge": "charge",
  "flash-point-at-the-wall": "heated-wall",
};

/** Reads a record of this folder. */
export function readRecord<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8")) as T;
}

/** The answers of a plan as they are recorded. */
export function recordedOf({ answers }: Plan): readonly Recorded[] {
  return answers.map(({ id, of, verdict, side }) => ({ id, of, verdict, side }));
}

/** Several answers that stand for one check come out as the worst of them. */
function worst(answers: readonly { readonly verdict: Verdict }[]): Verdict | undefined {
  const order: readonly Verdict[] = ["not-met", "not-known", "met"];
  return order.find((verdict) => answers.some((answer) => answer.verdict === verdict));
}

/** Whether an answer is one that a check became. */
function stands(key: string, check: string): boolean {
  const [id = "", ...of] = key.split(":");
  const [name = "", ...about] = check.split(":");
  if (!(renamed[name] ?? [name]).includes(id)) return false;
  const place = places[name];
  return about.every((one) => of.includes(one)) && (place === undefined || of.includes(place));
}

/** What differs between the checks of a job before the rebuilding and its answers. */
export function verdictChanges(
  job: string,
  checks: readonly Check[],
  recorded: readonly Recorded[],
): readonly VerdictChange[] {
  const answers = recorded.map((answer) => ({ key: keyOf(answer), verdict: answer.verdict }));
  const changed = checks.flatMap(({ id, verdict: old }): readonly VerdictChange[] => {
    const after = answers.filter(({ key }) => stands(key, id));
    const verdict = old.replace(" ", "-") as Verdict;
    const now = worst(after);
    if (now === verdict) return [];
    return [{ job, before: { id, verdict }, after: after.filter((one) => one.verdict === now) }];
  });
  const asked = answers
    .filter(({ key }) => !checks.some(({ id }) => stands(key, id)))
    .map(({ key, verdict }): VerdictChange => ({ job, after: [{ key, verdict }] }));
  return [...changed, ...asked];
}

/** Figures of a plan that are compared: a path with its number. */
type Figures = ReadonlyMap<string, number>;

/** Numbers that were recorded before, or are found now, under a path without names of materials. */
function figuresIn(value: unknown, path: string, into: Map<string, number>): void {
  if (typeof value === "number") into.set(path, value);
  else if (Array.isArray(value))
    for (const [i, member] of value.entries()) figuresIn(member, `${path}[${i + 1}]`, into);
  else if (typeof value === "object" && value !== null)
    for (const [key, member] of Object.entries(value)) figuresIn(member, path === "" ? key : `${path}.${key}`, into);
}

/** The parts of a plan whose figures are compared, as they are now or were recorded. */
export interface Compared {
  readonly timeline: readonly object[];
  readonly lots: unknown;
  readonly weighing: unknown;
  readonly naturalOrigin: unknown;
}

/** What is compared of a step. */
const ofStep = ["timeStart", "timeEnd", "mass", "temperatureStart", "temperatureEnd", "volumeFractionOil"] as const;

/** The figures that are compared, of a plan or of a record. */
function comparedFigures({ timeline, lots, weighing, naturalOrigin }: Compared): Figures {
  const found = new Map<string, number>();
  figuresIn({ lots, weighing, naturalOrigin }, "", found);
  for (const [i, one] of timeline.entries()) {
    const step = one as { readonly [Key in (typeof ofStep)[number] | "stirring" | "viscosity"]?: unknown };
    const { power, torque, reynolds } = (step.stirring ?? {}) as Readonly<Record<string, number | undefined>>;
    const { viscosity } = (step.viscosity ?? {}) as Readonly<Record<string, number | undefined>>;
    const numbers = {
      ...Object.fromEntries(ofStep.map((key) => [key, step[key]])),
      power,
      torque,
      reynolds,
      viscosity,
    };
    figuresIn(numbers, `timeline[${i + 1}]`, found);
  }
  return found;
}

/** What differs by more than 1e-9 of its value; alike figures of a job in one row, with the largest change. */
export function figureChanges(job: string, before: Compared | undefined, after: Compared): readonly FigureChange[] {
  const [old, now] = [before ? comparedFigures(before) : new Map<string, number>(), comparedFigures(after)];
  const rows = new Map<string, FigureChange>();
  for (const path of new Set([...old.keys(), ...now.keys()])) {
    const [one, other] = [old.get(path), now.get(path)];
    const moved = one !== undefined && other !== undefined;
    const part = moved ? Math.abs(other - one) / Math.max(Math.abs(one), Math.abs(other), Number.MIN_VALUE) : 0;
    if (moved && !(part > 1e-9)) continue;
    // Of what is not known any more each step counts; what moved is one row for all steps.
    const figure = moved ? path.replace(/\[\d+\]/g, "[]") : path;
    const change = moved ? "moved" : one === undefined ? "new" : "gone";
    const there = rows.get(`${figure} ${change}`)?.largest ?? 0;
    rows.set(`${figure} ${change}`, { job, figure, change, ...(moved && { largest: Math.max(there, part) }) });
  }
  return [...rows.values()];
}
