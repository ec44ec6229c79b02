import { CalculationError } from "gelwright/error";
import { type Answer, type JobDocument, runPlan } from "gelwright/plan";
import { type Field, fieldsOf } from "./classes.js";
import { keyOf } from "./plans.js";

/** A field whose absence means that less is known, and nothing else. */
export interface Removable extends Field {
  readonly holds: "reading" | "property";
  /** Its path as faults write it. */
  readonly path: string;
}

/** Every reading and every property of a job that may be left out. One that holds a wish would take that along: it stays, and what it holds is deleted by itself. */
export function removableOf(job: JobDocument): readonly Removable[] {
  const all = [...fieldsOf(job)];
  const holdsWish = ({ keys }: Field): boolean =>
    all.some(
      (inner) =>
        inner.holds === "wish" && inner.keys.length > keys.length && keys.every((key, i) => inner.keys[i] === key),
    );
  return all.flatMap((field): readonly Removable[] => {
    const { keys, optional, holds } = field;
    return optional && (holds === "reading" || holds === "property") && !holdsWish(field)
      ? [{ keys, optional, holds, path: keys.reduce<string>(step, "") }]
      : [];
  });
}

function step(path: string, key: string | number): string {
  if (typeof key === "number") return `${path}[${key}]`;
  if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === "" ? key : `${path}.${key}`;
}

/** A document without some of its fields. */
function withoutFields(document: unknown, fields: readonly Field[]): unknown {
  const draft = structuredClone(document);
  for (const { keys } of fields) {
    const holder = keys.slice(0, -1).reduce<unknown>((part, key) => (part as never)?.[key], draft);
    // What holds it may be gone already.
    if (typeof holder === "object" && holder !== null) delete (holder as Record<string, unknown>)[String(keys.at(-1))];
  }
  return draft;
}

/** What became of a job without some of its fields. */
export interface Outcome {
  readonly paths: readonly string[];
  /** Answers that are met and were not. */
  readonly greener: readonly string[];
  /** Answers that are gone. */
  readonly gone: readonly string[];
  /** Answers that were not met and are not known. */
  readonly lost: readonly string[];
  /** An error that is no fault of the document, or names none of the fields. */
  readonly error?: string;
  /** Whether the document is refused with a fault that names one of the fields. */
  readonly refused: boolean;
}

/** The path without the places in lists and without the keys of materials. */
export function kindOf(path: string): string {
  return path.replace(/\[\d+\]/g, "[]").replace(/(materials|premixes)(\.[^.[]+|\[[^\]]*\])/, "$1.*");
}

/** The answers of a job by whatever way: of its whole plan, or by themselves. */
type AnswersOf = (document: unknown) => readonly Answer[];

/** Runs a job without some of its fields. */
export function walk(
  job: JobDocument,
  before: ReadonlyMap<string, Answer>,
  fields: readonly Removable[],
  answersOf: AnswersOf = (document) => runPlan(document).answers,
): Outcome {
  const paths = fields.map(({ path }) => path);
  const nothing = { paths, greener: [], gone: [], lost: [], refused: false };
  try {
    const after = new Map(answersOf(withoutFields(job, fields)).map((answer) => [keyOf(answer), answer]));
    const became = (was: readonly string[], is: string): readonly string[] =>
      [...before].flatMap(([key, { verdict }]) =>
        was.includes(verdict) && after.get(key)?.verdict === is ? [key] : [],
      );
    return {
      ...nothing,
      greener: became(["not-met", "not-known"], "met"),
      gone: [...before.keys()].filter((key) => !after.has(key)),
      lost: became(["not-met"], "not-known"),
    };
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return names(paths, error) ? { ...nothing, refused: true } : { ...nothing, error: error.message };
  }
}

/** Whether a fault of the document stands at one of the fields or at what holds it, or names it. */
function names(paths: readonly string[], { code, faults }: CalculationError): boolean {
  const isNamed = (path: string): boolean => {
    const parent = path.replace(/(\.[^.[\]]+|\[[^\]]*\])$/, "");
    return faults.some((one) => one.path.startsWith(path) || one.path === parent || one.expected.includes(path));
  };
  return code === "document" && paths.some(isNamed);
}

/** Numbers that come in the same order every time (a multiplicative generator, period 2^31 - 2). */
function* seeded(seed: number): Generator<number> {
  for (let state = seed; ; ) {
    state = (state * 48_271) % 2_147_483_647;
    yield state;
  }
}

/** So many different pairs of fields of one job, the same every time; all there are if they are fewer. */
export function pairsOf(fields: readonly Removable[], count: number, seed: number): readonly (readonly Removable[])[] {
  const numbers = seeded(seed);
  const next = (): number => Number(numbers.next().value) % fields.length;
  const found = new Map<string, readonly Removable[]>();
  const most = Math.min(count, (fields.length * (fields.length - 1)) / 2);
  for (let i = 0; found.size < most && i < 50 * count; i++) {
    const [one, other] = [next(), next()].sort((a, b) => a - b) as [number, number];
    if (one !== other) found.set(`${one} ${other}`, [fields[one], fields[other]] as readonly Removable[]);
  }
  return [...found.values()];
}
