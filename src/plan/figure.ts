import type { sideCodes, verdictCodes } from "./codes/answers.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { LawCode, practiceCodes } from "./codes/bases.js";
import type { FieldCode } from "./codes/reasons.js";
import type { Reason } from "./unknown.js";

/** What a figure rests on. */
export type Basis =
  | { readonly kind: "law"; readonly key: LawCode; readonly of?: string }
  | {
      /** Readings of the bench, and other measurements in the documents. */
      readonly kind: "reading";
      readonly key: FieldCode;
      /** Where it was measured, in the caller's words. */
      readonly source?: string;
      readonly of?: string;
    }
  | { readonly kind: "stated"; readonly key: FieldCode; readonly source?: string; readonly of?: string }
  | { readonly kind: "practice"; readonly key: (typeof practiceCodes)[number] };

/** A figure: at least its ends, of which `null` is open. */
export interface Figure {
  /** Lower end, in the unit of its quantity; `null` for an open one. */
  readonly min: number | null;
  /** Upper end, likewise. */
  readonly max: number | null;
  /** The best value, if there is one. */
  readonly value?: number;
  readonly basis?: readonly Basis[];
  /** What is taken for granted in it. */
  readonly assumptions?: readonly AssumptionCode[];
}

/** What a figure is held against: at least one end, each of them a figure of its own. */
export interface Limit {
  readonly min?: Figure;
  readonly max?: Figure;
}

/** How a figure answers to a limit. */
export type Verdict = (typeof verdictCodes)[number];

/** On which side of the limit a figure lies that is not met, or would lie if it were. */
export type Side = (typeof sideCodes)[number];

/** A figure that is known exactly. */
export function exactly(value: number, basis?: readonly Basis[], assumptions?: readonly AssumptionCode[]): Figure {
  return { min: value, max: value, value, ...(basis && { basis }), ...(assumptions?.length && { assumptions }) };
}

/** A figure between two ends. */
export function between(min: number | null, max: number | null, basis?: readonly Basis[]): Figure {
  return { min, max, ...(basis && { basis }) };
}

/** The limit of a figure from below, exactly known. */
export function atLeast(value: number, basis?: readonly Basis[]): Limit {
  return { min: exactly(value, basis) };
}

/** The limit of a figure from above, exactly known. */
export function atMost(value: number, basis?: readonly Basis[]): Limit {
  return { max: exactly(value, basis) };
}

/** A figure or limit that is not known, and why. */
export interface NotKnown {
  readonly notKnown: Reason;
}
