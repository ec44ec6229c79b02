import type { Schema } from "./schema.js";

/** What the parts of the form share: the document, how it is changed, and where a fault is shown. */
export interface Context {
  readonly schema: Schema;
  readonly document: () => unknown;
  /** Another value at a place, `undefined` for none. What is drawn stays. */
  readonly edit: (path: string, value: unknown) => void;
  /** Another document, while what is drawn stays. */
  readonly replace: (document: unknown) => void;
  /** Another document. The form is drawn anew, and the field at the path has the focus. */
  readonly rebuild: (document: unknown, focus: string) => void;
  /** Draws the form anew once the focus has gone where it was going. */
  readonly redrawSoon: () => void;
  /** Whether a part was opened; parts are drawn as they are opened. */
  readonly opened: Set<string>;
  /** Tells which element shows the faults of a path. */
  readonly hold: (path: string, holder: Holder) => void;
  /** Shows the faults anew, after more was drawn. */
  readonly remark: () => void;
  /** An id that no other element has. */
  readonly id: () => string;
}

/** What shows the faults of a place. */
export interface Holder {
  readonly fault: HTMLElement;
  /** What is typed into, if the place is one field. */
  readonly input?: HTMLElement;
  /** What opens to show what lies within. */
  readonly details?: { readonly element: HTMLDetailsElement; readonly count: HTMLElement; readonly open: () => void };
}
