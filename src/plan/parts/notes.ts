import type { Run } from "../state.js";
import { openedNotes } from "./after-opening.js";
import { benchAdditionNotes } from "./bench-additions.js";
import { lossNotes } from "./films.js";
import { fineLineNotes } from "./fine-lines.js";
import type { Note } from "./note.js";
import { rinseOffNotes } from "./rinse-off.js";
import { shiftNotes } from "./shifted.js";
import { strengthNotes } from "./strength-notes.js";

/** What is to be said of a run without a verdict. */
export function notesOf(run: Run): readonly Note[] {
  return [
    ...strengthNotes(run),
    ...benchAdditionNotes(run),
    ...lossNotes(run),
    ...shiftNotes(run),
    ...rinseOffNotes(run),
    ...fineLineNotes(run),
    ...openedNotes(run),
  ];
}
