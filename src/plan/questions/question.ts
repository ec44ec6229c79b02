import type { Change } from "../change.js";
import type { LeverCode, placeCodes, quantityCodes } from "../codes/answers.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import type { QuestionId } from "../codes/questions.js";
import type { Figure, Limit, Side, Verdict } from "../figure.js";
import { deciding, type Judged, judge, type Margin } from "../judge.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { otherwise, type Reason, remembered, withAssumed } from "../unknown.js";

/** What a figure is a figure of; its unit is the kernels'. */
export type QuantityCode = (typeof quantityCodes)[number];

/** What an answer is about: a material by its key, a phase by its name, a step by its number from 1. */
export interface Subject {
  readonly material?: string;
  readonly phase?: string;
  /** From 1. */
  readonly step?: number;
  /** Where the material is, if it is asked about at several places. */
  readonly place?: PlaceCode;
}

/** Whether two answers are about the same. */
export function sameSubject(one: Subject, other: Subject): boolean {
  return (
    one.material === other.material && one.phase === other.phase && one.step === other.step && one.place === other.place
  );
}

/** Places at which a figure is found. */
export type PlaceCode = (typeof placeCodes)[number];

/** Where in the run a figure was found. */
export interface Place {
  /** From 1. */
  readonly step?: number;
  /** From 1. */
  readonly addition?: number;
  readonly place?: PlaceCode;
}

/** A change of the job that can make an answer met: what is changed, and between which values it is looked for. */
export interface Lever {
  /** What is turned: `warmer-addition`, `shorter-filling`. */
  readonly id: LeverCode;
  readonly change: (value: number) => Change;
  /** From where the answer is not met to where it may be, in the units of the kernels. */
  readonly bracket: readonly [number, number];
  /** Whether only whole numbers do. */
  readonly whole?: boolean;
}

/**
 * One question of a plan, as a record. The judge is the same for all: it takes the figure of every state, holds it
 * against its limit, and lets the state that decides give the answer.
 */
export interface Question<S = unknown, X = unknown> {
  readonly id: QuestionId;
  readonly quantity: QuantityCode;
  /** Whether every state has to meet the limit, or some state is enough. */
  readonly quantifier: "every" | "some";
  /** What raises it, and what each answer is about. Empty only if the process holds nothing that raises it, or a wish is not stated; never because a reading is missing. */
  readonly subjects: (run: Run) => readonly S[];
  readonly of: (subject: S) => Subject;
  /** The states that it quantifies over: at least one for each subject. */
  readonly states: (subject: S, run: Run) => readonly X[];
  readonly at?: (state: X, subject: S) => Place;
  /** The figure of a state; unknown where it cannot be found. */
  readonly figure: (state: X, subject: S, run: Run) => Figure;
  /** What it is held against. */
  readonly limit: (state: X, subject: S, run: Run) => Limit;
  /** Policy: how far inside the limit a figure has to be. */
  readonly margin?: (run: Run) => Margin;
  /** Changes that can make it met. */
  readonly levers?: (subject: S, run: Run, at: Place) => readonly Lever[];
  /** Further numbers and codes of the deciding state, for words. */
  readonly beside?: (state: X, subject: S, run: Run) => Readonly<Record<string, number | string | undefined>>;
}

/** The answer to a question about one subject: its verdict, and all the numbers from which the verdict follows. */
export interface Answer {
  readonly id: QuestionId;
  readonly of: Subject;
  readonly verdict: Verdict;
  readonly side: Side;
  readonly quantity: QuantityCode;
  /** Of the deciding state; open at both ends where it is not known. */
  readonly figure: Figure;
  readonly limit: Limit;
  readonly margin?: Margin;
  /** The deciding state. */
  readonly at: Place;
  /** How many states were met, not met and not known. */
  readonly states: { readonly met: number; readonly notMet: number; readonly notKnown: number };
  /** Why figures or limits are not known, each reason once, the deciding state's first. */
  readonly notKnown: readonly Reason[];
  readonly beside?: Readonly<Record<string, number | string>>;
}

/** A question whose types of subject and state are its own business. */
export function asks<S, X>(question: Question<S, X>): Question {
  return question as unknown as Question;
}

/**
 * What an assumption leaves open: the end of a figure on which the truth may lie.
 *
 * @internal
 */
export const opens: Readonly<Partial<Record<AssumptionCode, Readonly<Partial<Record<QuantityCode, "min" | "max">>>>>> =
  {
    "heat-of-stirring-left-out": { temperature: "max", volume: "max", viscosity: "min" },
    "heat-loss-left-out": { temperature: "min", volume: "min", viscosity: "max" },
    "yield-stress-alone": { length: "max" },
  };

const open: Figure = { min: null, max: null };

/**
 * Opens the ends that assumptions leave open.
 *
 * @internal
 */
export function opened(figure: Figure, quantity: QuantityCode): Figure {
  const ends = new Set((figure.assumptions ?? []).map((code) => opens[code]?.[quantity]));
  return { ...figure, ...(ends.has("min") && { min: null }), ...(ends.has("max") && { max: null }) };
}

/**
 * What may err either way: it opens the end of a figure that faces its limit, and the end of a limit that faces the figure.
 *
 * @internal
 */
export const erringEitherWay: readonly AssumptionCode[] = ["viscosity-shifted-with-setting"];

function errs({ assumptions = [] }: Figure): boolean {
  return assumptions.some((code) => erringEitherWay.includes(code));
}

/** A figure and its limit, open where something that may err either way leaves the unfavourable end open. */
function facing(figure: Figure, limit: Limit): { readonly figure: Figure; readonly limit: Limit } {
  const { min, max } = limit;
  const ends = { ...(max && { max: null }), ...(min && { min: null }) };
  return {
    figure: errs(figure) ? { ...figure, ...ends } : figure,
    limit: {
      ...(min && { min: errs(min) ? { ...min, max: null } : min }),
      ...(max && { max: errs(max) ? { ...max, min: null } : max }),
    },
  };
}

/** A figure with what was taken for granted on the way to it. */
function assuming(figure: Figure, assumed: readonly AssumptionCode[]): Figure {
  const assumptions = unique([...(figure.assumptions ?? []), ...assumed]);
  return assumptions.length > 0 ? { ...figure, assumptions } : figure;
}

interface Looked<X> extends Judged<X> {
  readonly figure: Figure;
  readonly limit: Limit;
  readonly notKnown: readonly Reason[];
}

/** Asks one question of a run: an answer for every subject. */
export function answersTo(question: Question, run: Run): readonly Answer[] {
  return answersIn(run)(question);
}

const answersIn = remembered((run: Run) => remembered((question: Question) => asked(question, run)));

function asked(question: Question, run: Run): readonly Answer[] {
  return question.subjects(run).flatMap((subject): readonly Answer[] => {
    const margin = question.margin?.(run);
    const looked = question.states(subject, run).map((state) => look(question, state, subject, run, margin));
    const first = deciding(looked, question.quantifier) as Looked<unknown> | undefined;
    if (!first) return [];
    const count = (verdict: Verdict): number => looked.filter((one) => one.verdict === verdict).length;
    const reasons = [first, ...looked].flatMap(({ notKnown }) => notKnown);
    const beside =
      question.beside &&
      known(
        otherwise(
          () => question.beside?.(first.state, subject, run),
          () => undefined,
        ),
      );
    return [
      {
        id: question.id,
        of: question.of(subject),
        verdict: first.verdict,
        side: first.side,
        quantity: question.quantity,
        figure: first.figure,
        limit: first.limit,
        ...(margin && { margin }),
        at: question.at?.(first.state, subject) ?? {},
        states: { met: count("met"), notMet: count("not-met"), notKnown: count("not-known") },
        notKnown: unique(reasons),
        ...(beside && { beside }),
      },
    ];
  });
}

function look(
  question: Question,
  state: unknown,
  subject: unknown,
  run: Run,
  margin: Margin | undefined,
): Looked<unknown> {
  const notKnown: Reason[] = [];
  const note =
    <T>(instead: T) =>
    (reason: Reason): T => {
      notKnown.push(reason);
      return instead;
    };
  const found = withAssumed(() => otherwise(() => question.figure(state, subject, run), note(open)));
  const against = withAssumed(() => otherwise(() => question.limit(state, subject, run), note<Limit>({ min: open })));
  const { min, max } = against.value;
  const { figure, limit } = facing(opened(assuming(found.value, found.assumed), question.quantity), {
    ...(min && { min: assuming(min, against.assumed) }),
    ...(max && { max: assuming(max, against.assumed) }),
  });
  return { state, figure, limit, notKnown, ...judge(figure, limit, margin) };
}

function known(
  beside: Readonly<Record<string, number | string | undefined>> | undefined,
): Readonly<Record<string, number | string>> | undefined {
  return (
    beside &&
    (Object.fromEntries(Object.entries(beside).filter(([, value]) => value !== undefined)) as Record<
      string,
      number | string
    >)
  );
}
