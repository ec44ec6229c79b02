import { record } from "../guards.js";
import type { AssumptionCode, Basis, Plan, PlanExposure, PlanLabel, PlanSeries, Reason } from "../plan/index.js";
import { soundly, soundlyOf } from "./sound.js";
import { type SayOptions, sayWith } from "./words/say.js";
import { type SomeWords, wordsWith } from "./words/some-words.js";
import type { Say, Words } from "./words/types.js";

/** How numbers and units are written: the language of the decimal sign, preferred units, the small words between numbers. */
export type Formats = Omit<SayOptions, "plan">;

/** In which words a plan is written. */
export interface Wording {
  /** Words in place of English ones, in whole or in part. */
  readonly words?: SomeWords;
  /** How numbers and units are written; default a point, no separators, the units of the trade. */
  readonly formats?: Formats;
}

/** A plan with the words and numbers that it is written in. */
export interface Sheet {
  readonly plan: Plan;
  readonly words: Words;
  readonly say: Say;
  /** The course of the batch against time, if the caller gives it, for drawings. */
  readonly series?: PlanSeries | undefined;
  /** The draft of its label, if that is to stand on the sheet. */
  readonly label?: PlanLabel | undefined;
  /** The exposure that an assessor asks for, if that is to stand on the sheet. */
  readonly exposure?: PlanExposure | undefined;
}

/** Words and numbers, whatever is written. */
export type Written = Pick<Sheet, "words" | "say">;

/** Writes a plan that may have come back from JSON: whole, or not at all. */
export function render(plan: Plan, wording: Wording, write: (sheet: Sheet) => string): string {
  return renderAll([record(plan, "plan")], wording, ([only]) => write(only as Sheet));
}

/** Writes what names the materials of a formula, as a plan does: whole, or not at all. */
export function renderNamed<T extends { readonly names: Pick<Plan["names"], "materials"> }>(
  of: T,
  { words: own = {}, formats = {} }: Wording,
  write: (of: T, sheet: Written) => string,
  path: string,
): string {
  const words = wordsWith(own);
  record(formats, "formats");
  return soundlyOf(record(of, path), path, (sound) =>
    write(sound, { words, say: sayWith({ ...formats, plan: sound }) }),
  );
}

/** The same for several plans beside one another. */
export function renderAll(
  plans: readonly Plan[],
  { words: own = {}, formats = {} }: Wording,
  write: (sheets: readonly Sheet[]) => string,
): string {
  const words = wordsWith(own);
  record(formats, "formats");
  return soundly(plans, (sound) => write(sound.map((plan) => ({ plan, words, say: sayWith({ ...formats, plan }) }))));
}

/** Why a figure is not known, in words. */
export function whyNot({ words, say }: Written, reason: Reason): string {
  return words.reasons[reason.code](reason, say, words);
}

/** What figures rest on, and what is taken for granted in them, in words, each once. */
export function restsOn(sheet: Sheet, bases: readonly Basis[], assumptions: readonly AssumptionCode[] = []): string {
  return basesOf(sheet, bases, assumptions).join("; ");
}

/** The same, each by itself. */
export function basesOf(
  { words, say }: Sheet,
  bases: readonly Basis[],
  assumptions: readonly AssumptionCode[] = [],
): readonly string[] {
  const said = bases.map((basis) => {
    const write = words.bases[basis.kind] as (of: Basis, say: Say, words: Words) => string;
    return write(basis, say, words);
  });
  return [...new Set([...said, ...assumptions.map((code) => words.assumptions[code])])];
}
