import { finite, list, record, refuse, show } from "../guards.js";
import { verdictCodes } from "./codes/answers.js";
import { questionIds } from "./codes/questions.js";
import type { Verdict } from "./figure.js";
import type { PlanParticle } from "./parts/particles.js";
import { type Answer, type Subject, sameSubject } from "./questions/question.js";

/** An answer whose verdict is not the same in all plans; `null` where a plan does not raise the question. */
export interface DifferingAnswer {
  readonly id: Answer["id"];
  readonly of: Subject;
  readonly verdicts: readonly (Verdict | null)[];
}

/** When particles may go in, where that is not the same in all plans; `null` where it is not known. */
export interface DifferingWindow {
  /** Key of the material. */
  readonly material: string;
  readonly windows: readonly ({
    /** Opens as it cools to here [°C]. */
    readonly temperatureMax: number;
    /** Closes here [°C]. */
    readonly temperatureMin: number;
  } | null)[];
}

/** A field that the documents do not state alike; `null` where one does not state it. */
export interface DifferingField {
  /** Its path, as faults name it. */
  readonly path: string;
  readonly values: readonly (string | number | boolean | null)[];
}

/** An answer as far as it is compared. */
export type ComparedAnswer = Pick<Answer, "id" | "of" | "verdict">;

/** Particles as far as they are compared. */
export type ComparedParticle = Pick<PlanParticle, "material" | "window">;

/** The answers whose verdict is not the same in all plans, in the order in which the plans raise them. */
export function differingAnswers(plans: readonly (readonly ComparedAnswer[])[]): readonly DifferingAnswer[] {
  const seen: Pick<ComparedAnswer, "id" | "of">[] = [];
  for (const { id, of } of plans.flat())
    if (!seen.some((one) => one.id === id && sameSubject(one.of, of))) seen.push({ id, of });
  return seen.flatMap(({ id, of }) => {
    const verdicts = plans.map(
      (answers) => answers.find((one) => one.id === id && sameSubject(one.of, of))?.verdict ?? null,
    );
    return new Set(verdicts).size > 1 ? [{ id, of, verdicts }] : [];
  });
}

/** The windows for adding that are not the same in all plans. */
export function differingWindows(plans: readonly (readonly ComparedParticle[])[]): readonly DifferingWindow[] {
  const materials = new Set(plans.flat().map(({ material }) => material));
  return [...materials].flatMap((material) => {
    const windows = plans.map((particles) => {
      const { window } = particles.find((one) => one.material === material) ?? {};
      // Without the pack it is known only what the vessel allows.
      if (!window || window.packLacks) return null;
      return { temperatureMax: window.temperatureMax, temperatureMin: window.temperatureMin };
    });
    return new Set(windows.map((window) => JSON.stringify(window))).size > 1 ? [{ material, windows }] : [];
  });
}

type Leaf = string | number | boolean;

/** The fields that documents do not state alike, by their paths. */
export function differingFields(documents: readonly unknown[]): readonly DifferingField[] {
  const each = documents.map((document, i) => new Map(leavesOf(document, "", `documents[${i}]`)));
  const paths = new Set(each.flatMap((leaves) => [...leaves.keys()]));
  return [...paths].flatMap((path) => {
    const values = each.map((leaves) => leaves.get(path) ?? null);
    return new Set(values).size > 1 ? [{ path, values }] : [];
  });
}

/** Every value of a document with its path. */
function* leavesOf(value: unknown, path: string, root: string): Generator<readonly [string, Leaf]> {
  if (typeof value === "string" || typeof value === "boolean") yield [path, value];
  else if (typeof value === "number") yield [path, finite(value, `${root}.${path}`)];
  else if (typeof value === "object" && value !== null)
    for (const [key, member] of Object.entries(value)) {
      const step = Array.isArray(value) ? `[${key}]` : path === "" ? key : `.${key}`;
      yield* leavesOf(member, `${path}${step}`, root);
    }
  else if (value !== undefined && value !== null)
    refuse("input", `${root}.${path}`, show(value), "a value of a JSON document");
}

/** Answers that may have come back from JSON. */
export function readAnswers(answers: readonly ComparedAnswer[], path: string): readonly ComparedAnswer[] {
  return list(answers, path).map((answer, i) => readVerdict(answer, `${path}[${i}]`));
}

/** An answer that may have come back from JSON, as far as its question, its subject and its verdict. */
export function readVerdict<Own extends ComparedAnswer>(answer: Own, path: string): Own {
  const { id, of, verdict } = record(answer, path);
  if (!questionIds.includes(id)) refuse("input", `${path}.id`, show(id), "the id of a question");
  for (const [key, about] of Object.entries(record(of, `${path}.of`)))
    if (typeof about !== "string") finite(about, `${path}.of.${key}`);
  if (!verdictCodes.includes(verdict)) refuse("input", `${path}.verdict`, show(verdict), verdictCodes.join(", "));
  return answer;
}

/** Particles that may have come back from JSON. */
export function readParticles(particles: readonly ComparedParticle[], path: string): readonly ComparedParticle[] {
  list(particles, path).forEach((particle, i) => {
    const at = `${path}[${i}]`;
    const { material, window } = record(particle, at);
    if (typeof material !== "string") refuse("input", `${at}.material`, show(material), "the key of a material");
    if (window === undefined) return;
    finite(record(window, `${at}.window`).temperatureMax, `${at}.window.temperatureMax`);
    finite(window.temperatureMin, `${at}.window.temperatureMin`);
  });
  return particles;
}
