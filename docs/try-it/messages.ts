import type { Fault } from "gelwright/error";
import type { Panel } from "../in-page/panel.js";

/** A job to be run; the number comes back with the result. */
export interface Asked {
  readonly id: number;
  readonly document: unknown;
}

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

export type Answered = Result & { readonly id: number };
