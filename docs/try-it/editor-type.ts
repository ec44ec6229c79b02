import type { Place } from "./place.js";
import type { Schema } from "./schema.js";

/** A fault at a place of the text. */
export interface Marked {
  readonly place: Place;
  readonly message: string;
}

/** What takes the place of the plain text area. */
export interface Editor {
  readonly set: (text: string) => void;
  readonly goTo: (place: Place) => void;
  readonly mark: (faults: readonly Marked[]) => void;
}

export interface EditorOptions {
  readonly place: HTMLElement;
  /** Id of the element that names it. */
  readonly labelledBy: string;
  readonly text: string;
  readonly schema: Schema;
  /** The document as it last was sound. */
  readonly document: () => unknown;
  readonly changed: (text: string) => void;
}

declare global {
  /** What the script of the editor leaves behind. */
  var gelwrightEditor: (options: EditorOptions) => Editor;
}
