import type { Note, NoteCode, PlanClarity } from "../plan/index.js";
import { type Block, list, section } from "./blocks.js";
import type { Sheet } from "./render.js";

/** Notes on the product: they ask for nothing before the start. */
const notesInUse: readonly NoteCode[] = ["rinse-off", "drawn-into-lines", "water-after-opening"];

/** Whether a note is about the gel in use. */
export function isInUse({ code }: Note): boolean {
  return notesInUse.includes(code);
}

/** Whether a note has a figure to show. */
function hasFigure({ untilMilky, untilFlowing, reach, water }: Note): boolean {
  return [untilMilky, untilFlowing, reach, water].some(
    (figure) => figure !== undefined && (typeof figure === "number" || !("notKnown" in figure)),
  );
}

/** How clear the gel is, and what is said of it in use without a verdict: only what has a figure. */
export function inUseOf(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const notes = plan.notes.filter((note) => isInUse(note) && hasFigure(note));
  const lines = [
    ...(plan.emulsion?.clarity ? clarityLines(sheet, plan.emulsion.clarity) : []),
    ...notes.map((note) => words.notes[note.code](note, say, words)),
  ];
  return section(words.labels.gelInUse, list(lines));
}

function clarityLines(
  { words, say }: Sheet,
  { mismatchMax: max, path, at, correction }: PlanClarity,
): readonly string[] {
  const { mismatchAt, hazeAt, correctWith } = words.lines.emulsion;
  return [
    ...at.flatMap(({ temperature, mismatch, haze }) => [
      ...(typeof mismatch === "number"
        ? [mismatchAt({ temperature, mismatch, ...(max !== undefined && { max }) }, say)]
        : []),
      ...("notKnown" in haze || path === undefined ? [] : [hazeAt({ temperature, path, ...haze }, say)]),
    ]),
    ...("notKnown" in correction ? [] : [correctWith(correction, say)]),
  ];
}
