import type { Fault } from "gelwright/error";
import type { Panel } from "../in-page/panel.js";

/** A job with the name that the page has for it. */
export interface Named {
  readonly name: string;
  readonly document: unknown;
}

/** A job to be run, or jobs to be put side by side. */
export type Question = { readonly document: unknown } | { readonly beside: readonly Named[] };

/** The number comes back with the answer. */
export type Asked = Question & { readonly id: number };

/** A plan in one of the forms in which it is shown and handed over. */
export interface Shown {
  readonly text: string;
  /** As HTML, where it is more than text. */
  readonly html?: string;
}

/** What came of a job. */
export type Result =
  | { readonly faults: readonly Fault[] }
  | {
      readonly faults?: undefined;
      /** Name of the formula. */
      readonly name: string;
      /** How many answers are met, not met, not known. */
      readonly answers: string;
      /** One for each of `forms`. */
      readonly shown: readonly Shown[];
      readonly panels: readonly Panel[];
    };

/** Jobs side by side as a table; or those of them that have faults. */
export type Beside = Required<Shown> | { readonly faulty: readonly string[] };

/** What answers which question. */
export type AnswerTo<Asking extends Question> = Asking extends { readonly document: unknown } ? Result : Beside;

export type Answered = (Result | Beside) & { readonly id: number };
