import type { Run } from "../state.js";
import { benchAdditionNotes } from "./bench-additions.js";
import { lossNotes } from "./films.js";
import type { Note } from "./note.js";
import { strengthNotes } from "./strength-notes.js";

/** What is to be said of a run without a verdict. */
export function notesOf(run: Run): readonly Note[] {
  return [...strengthNotes(run), ...benchAdditionNotes(run), ...lossNotes(run)];
}
