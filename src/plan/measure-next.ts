import { fraction, list, record, refuse, show } from "../guards.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import { type FieldCode, fieldCodes, type ReasonCode, reasonCodes } from "./codes/reasons.js";
import { readVerdict } from "./differences.js";
import { type FindingWay, findingWays } from "./finding-ways.js";
import type { Answer, Subject } from "./questions/question.js";
import type { Reason } from "./unknown.js";

/** A figure that answers lack, and which they are. */
export interface MissingFigure {
  readonly field: FieldCode;
  readonly how: FindingWay;
  /** The material or thing that it is of, in the caller's words. */
  readonly of?: string;
  /** The phases that have to be in the beaker. */
  readonly phases?: readonly string[];
  /** On heating, on cooling or both. */
  readonly directions?: readonly ("heating" | "cooling")[];
  /** Gel former in the charges that lack it [0 to 1]. */
  readonly dose?: { readonly min: number; readonly max: number };
  /** Every answer that lacks it, in the order of the answers. */
  readonly answers: readonly WaitingAnswer[];
}

/** An answer that lacks a figure. */
export interface WaitingAnswer {
  readonly id: Answer["id"];
  readonly of: Subject;
  /** Whether nothing else is known to be lacking. What stands behind a figure that is not there shows once it is. */
  readonly alone: boolean;
}

/** What to measure next. */
export interface MeasureNext {
  /** The figures that answers lack: first the one that most of them lack, of equals the one that more of them lack alone. */
  readonly figures: readonly MissingFigure[];
  /** Answers that are not known, and lack no figure of the documents: a law or a method ends there. */
  readonly others: readonly { readonly id: Answer["id"]; readonly of: Subject }[];
}

/** An answer as far as it is looked at. */
export type OpenAnswer = Pick<Answer, "id" | "of" | "verdict" | "figure" | "notKnown" | "beside">;

/**
 * What to measure, look up or decide next: the figures that answers lack, each once, with the answers that lack it.
 *
 * An answer that lacks two figures counts for both, and is marked as not waiting for one of them alone. One viscosity
 * curve of a charge counts once, on heating and cooling, and so do setting temperatures at several doses.
 *
 * @param input.answers - The answers of a plan, as `runPlan` or `answerQuestions` give them.
 * @returns The missing figures, the one first that most answers lack; and the answers that no figure would settle.
 * @throws CalculationError `input` if an answer has parts missing.
 * @source definition
 * @example
 * ```ts
 * import { measureNext, runPlan } from "gelwright/plan";
 * const plan = runPlan({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log" },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: { name: "kettle", workingVolume: { min: "5 L", max: "20 L" }, diameter: "300 mm" },
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [{ do: "charge", phase: "A" }, { do: "heat", to: "85 °C" }, { do: "take off the heat" }, { do: "fill" }],
 *   },
 * });
 * const { figures } = measureNext(plan);
 * figures.slice(0, 2).map(({ field }) => field); // => ["vessel-heater", "material-flash-point"]
 * ```
 */
export function measureNext(input: { readonly answers: readonly OpenAnswer[] }): MeasureNext {
  const answers = list(record(input, "input").answers, "answers").map((answer, i) =>
    readAnswer(answer, `answers[${i}]`),
  );
  const open = answers.filter(({ verdict }) => verdict === "not-known");
  const found = new Map<string, MissingFigure>();
  const others: MeasureNext["others"][number][] = [];
  for (const answer of open) {
    const { id, of } = answer;
    const reasons = reasonsOf(answer);
    const keys = new Set(reasons.map(keyOf));
    const waiting: WaitingAnswer = { id, of, alone: keys.size === 1 };
    for (const reason of reasons) {
      const key = keyOf(reason);
      if (reason.field !== undefined) found.set(key, joined(found.get(key), reason, reason.field, waiting));
    }
    if (reasons.every(({ field }) => field === undefined)) others.push({ id, of });
  }
  const rank = ({ answers: all }: MissingFigure): number =>
    all.length + all.filter(({ alone }) => alone).length / (open.length + 1);
  return { figures: [...found.values()].sort((one, other) => rank(other) - rank(one)), others };
}

/** What takes the place of an assumption that leaves an end of a figure open. */
const insteadOf: Readonly<Partial<Record<AssumptionCode, FieldCode>>> = {
  "heat-loss-left-out": "vessel-heat-loss",
  "wall-as-thick-as-read": "bench-viscosities",
  "viscosity-shifted-with-setting": "bench-viscosities",
};

/**
 * Why an answer is not known: its reasons; or where its figure has one end that is open, what stands beside it, or what
 * was assumed in it.
 *
 * @internal
 */
export function reasonsOf({
  notKnown,
  figure,
  beside = {},
}: Omit<OpenAnswer, "id" | "of" | "verdict">): readonly Reason[] {
  if (notKnown.length > 0) return notKnown;
  const named = [beside["code"], beside["field"], beside["lacks"]];
  const field = fieldCodes.find((code) => named.includes(code));
  const code = reasonCodes.find((one) => named.includes(one)) ?? (field && "not-stated");
  const of = beside["lacksOf"];
  if (code) return [{ code, ...(field && { field }), ...(typeof of === "string" && { of }) }];
  const lacking = (figure.assumptions ?? []).flatMap((assumed) => insteadOf[assumed] ?? []);
  return lacking.map((one) => ({ code: "not-stated", field: one }));
}

/** What makes two reasons lack the same figure: a curve of one charge is one, whichever way it is read. */
function keyOf({ field, of, phases, code }: Reason): string {
  return field === undefined ? code : [field, of ?? "", ...(phases ?? [])].join("\n");
}

/** A figure with one more answer that lacks it. */
function joined(
  before: MissingFigure | undefined,
  { of, phases, direction, dose }: Reason,
  field: FieldCode,
  answer: WaitingAnswer,
): MissingFigure {
  const { directions = [], dose: doses, answers = [] } = before ?? {};
  const ways = direction === undefined ? directions : [...new Set([...directions, direction])].sort().reverse();
  const both = [doses?.min, doses?.max, dose].filter((share) => share !== undefined);
  return {
    field,
    how: findingWays[field],
    ...(of !== undefined && { of }),
    ...(phases && { phases }),
    ...(ways.length > 0 && { directions: ways }),
    ...(both.length > 0 && { dose: { min: Math.min(...both), max: Math.max(...both) } }),
    answers: answers.some((one) => one === answer) ? answers : [...answers, answer],
  };
}

/** An open answer that may have come back from JSON, with why it is open. */
function readAnswer(answer: OpenAnswer, path: string): OpenAnswer {
  const { notKnown, beside, figure } = readVerdict(answer, path);
  list(record(figure, `${path}.figure`).assumptions ?? [], `${path}.figure.assumptions`);
  if (beside !== undefined) record(beside, `${path}.beside`);
  list(notKnown, `${path}.notKnown`).forEach((reason, i) => {
    const at = `${path}.notKnown[${i}]`;
    const { code, field, of: whose, phases, dose, direction } = record(reason, at);
    if (!reasonCodes.includes(code as ReasonCode)) refuse("input", `${at}.code`, show(code), "the code of a reason");
    if (field !== undefined && !fieldCodes.includes(field))
      refuse("input", `${at}.field`, show(field), "the code of a field");
    if (whose !== undefined && typeof whose !== "string") refuse("input", `${at}.of`, show(whose), "a name");
    if (direction !== undefined && direction !== "heating" && direction !== "cooling")
      refuse("input", `${at}.direction`, show(direction), '"heating" or "cooling"');
    if (phases !== undefined)
      for (const phase of list(phases, `${at}.phases`))
        if (typeof phase !== "string") refuse("input", `${at}.phases`, show(phase), "names of phases");
    if (dose !== undefined) fraction(dose, `${at}.dose`);
  });
  return answer;
}
