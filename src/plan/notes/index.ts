import { benchAdditionNotes } from "../parts/bench-additions.js";
import { lossNotes } from "../parts/films.js";
import type { Note } from "../parts/note.js";
import type { Run } from "../state.js";
import { openedNotes } from "./after-opening.js";
import { fineLineNotes } from "./fine-lines.js";
import { rinseOffNotes } from "./rinse-off.js";
import { shiftNotes } from "./shifted.js";
import { strengthNotes } from "./strength.js";

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
