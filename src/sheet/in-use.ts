import type { Note, NoteCode, NotKnown, PlanClarity } from "../plan/index.js";
import { type Block, list, section } from "./blocks.js";
import { type Sheet, whyNot } from "./render.js";

/** Notes on the product: they ask for nothing before the start. */
const notesInUse: readonly NoteCode[] = ["rinse-off", "drawn-into-lines", "water-after-opening"];

/** Whether a note is about the gel in use. */
export function isInUse({ code }: Note): boolean {
  return notesInUse.includes(code);
}

/** Whether a note has a figure to show. */
function hasFigure({ untilMilky, untilFlowing, distance, water }: Note): boolean {
  return [untilMilky, untilFlowing, distance, water].some(
    (figure) => figure !== undefined && (typeof figure === "number" || !("notKnown" in figure)),
  );
}

/** How clear the gel is, and what is said of it in use without a verdict: only what has a figure. */
export function inUseOf(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const notes = plan.notes.filter((note) => isInUse(note) && hasFigure(note));
  const lines = [
    ...(plan.emulsion?.clarity ? clarityLines(sheet, plan.emulsion.clarity) : []),
    ...oilLines(sheet),
    ...allergensIn(sheet),
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

/** What the oils ask for, and how long they keep. */
function oilLines(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { hlb, inductionTimes = [] } = plan.oilLimits ?? {};
  const { hlb: told, induction } = words.lines.emulsion;
  const orWhy = (of: number | NotKnown): string =>
    typeof of === "number" ? say.number(of) : `${say.notKnown} (${whyNot(sheet, of.notKnown)})`;
  return [
    ...(hlb ? [told({ required: orWhy(hlb.required), surfactants: orWhy(hlb.surfactants) })] : []),
    ...inductionTimes.flatMap((of): readonly string[] => {
      if ("notKnown" in of) return [];
      const durations = [of.arrhenius.duration, of.logLinear.duration];
      const [min, max] = [Math.min(...durations), Math.max(...durations)];
      return [induction({ material: say.material(of.material), temperature: of.temperature, min, max }, say)];
    }),
  ];
}

/** Fragrance allergens that the materials bring; nothing where none is stated. */
function allergensIn({ plan, words, say }: Sheet): readonly string[] {
  const { found, notStated } = plan.allergens;
  const { allergens, allergensOfSome, allergen } = words.lines.emulsion;
  if (found.length === 0) return [];
  const told = say.list(found.map(({ name, massFraction }) => allergen({ name, share: massFraction }, say)));
  if (notStated.length === 0) return [allergens({ list: told })];
  return [allergensOfSome({ list: told, without: say.list(notStated.map(say.material)) })];
}
