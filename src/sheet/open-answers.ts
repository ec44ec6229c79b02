import type { Answer } from "../plan/index.js";
import { judge } from "../plan/judge.js";
import { type MissingFigure, measureNext } from "../plan/measure-next.js";
import { type Block, list, section, table, text } from "./blocks.js";
import { isInUse } from "./in-use.js";
import type { Sheet } from "./render.js";
import { saidOf, subjectOf } from "./tables.js";

/** Questions whose failure can hurt people: they come first. */
const hazards: ReadonlySet<Answer["id"]> = new Set([
  "flash-point",
  "maximum-temperature",
  "vacuum-boils",
  "vacuum-foam",
]);

/**
 * Everything that has to be settled before the vessel is charged: what is not met, the worst first; what no figure of
 * the documents would settle; what there is to know; then each figure that is missing, with the checks that wait for it.
 */
export function beforeYouStart(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { figures, others } = measureNext(plan);
  const open = [
    ...plan.answers.filter(({ verdict }) => verdict === "not-met").sort(worstFirst),
    ...plan.answers.filter((answer) => others.some((one) => isAbout(answer, one))),
  ];
  const lines = [
    ...open.map((answer) => openLine(sheet, answer)),
    ...plan.notes.filter((note) => !isInUse(note)).map((note) => words.notes[note.code](note, say, words)),
  ];
  const { beforeYouStart: title, openQuestions, startDecision } = words.labels;
  const missing = missingFigures(sheet, figures);
  if (lines.length + missing.length === 0) return [];
  return section(title, [text(`${openQuestions} ${startDecision}`), ...list(lines), ...missing]);
}

/** Hazards first; of equals the one that is farther from its limit, as a share of it. */
function worstFirst(one: Answer, other: Answer): number {
  const hazard = Number(hazards.has(other.id)) - Number(hazards.has(one.id));
  return hazard === 0 ? beyond(other) - beyond(one) : hazard;
}

/** How far a figure is beyond its limit, as a share of it; an open end is as far as can be. */
function beyond({ figure, limit, margin }: Answer): number {
  const { room } = judge(figure, limit, margin);
  if (room === null) return Number.MAX_VALUE;
  const end = limit.min?.min ?? limit.max?.max ?? 0;
  return -room / (Math.abs(end) || 1);
}

/** An answer that is not met or not known; its figure once, in the statement if it stands there. */
function openLine(sheet: Sheet, answer: Answer): string {
  const { verdict, statement, value, limit } = saidOf(sheet, answer);
  const figure = sheet.say.interval(answer.figure, answer.quantity);
  const isSaid = statement.includes(` ${figure}`);
  return sheet.words.lines.batch.open({ verdict, statement, limit, ...(!isSaid && { value }) });
}

/** The figures that are missing, each with the checks that are not known until then: every check under the first of its figures. */
function missingFigures(sheet: Sheet, figures: readonly MissingFigure[]): readonly Block[] {
  const { labels, lines } = sheet.words;
  if (figures.length === 0) return [];
  const told: WaitingFor[] = [];
  const found = figures.map((figure) => {
    const fresh = figure.answers.filter((one) => !told.some((before) => isAbout(before, one)));
    told.push(...fresh);
    const name = lines.measure.ways[figure.how]({ figure: nameOf(sheet, figure) });
    return { name, checks: figure.answers.length, waiting: waitingFor(sheet, fresh) };
  });
  const rows = found.flatMap(({ name, waiting }) => (waiting.length === 0 ? [] : [[name, waiting]]));
  const others = found.filter(({ waiting }) => waiting.length === 0);
  return [
    text(labels.measureNextNote),
    table({ columns: [labels.toFindOut, labels.openUntilThen], rows }),
    ...(others.length === 0 ? [] : [text(lines.measure.alsoMissing({ figures: others }, sheet.say))]),
  ];
}

type WaitingFor = Pick<Answer, "id" | "of">;

/** The checks, each question once, with its cases: about what, value so far, limit. */
function waitingFor(sheet: Sheet, waiting: readonly WaitingFor[]): readonly string[] {
  const { words } = sheet;
  const answers = waiting.flatMap((one) => sheet.plan.answers.filter((answer) => isAbout(answer, one)));
  return [...new Set(answers.map(({ id }) => id))].map((id) => {
    const same = answers.filter((answer) => answer.id === id);
    const { question } = words.answers[id];
    return words.lines.measure.waiting({ question, cases: same.map((answer) => caseOf(sheet, answer)) });
  });
}

function caseOf(sheet: Sheet, answer: Answer): string {
  const { figure, limit } = answer;
  const said = saidOf(sheet, answer);
  // At least nothing says nothing.
  const isOpen = ({ min, max }: Answer["figure"]): boolean => (min === null || min === 0) && max === null;
  const ends = [limit.min, limit.max].filter((end) => end !== undefined);
  return sheet.words.lines.measure.case({
    subject: subjectOf(sheet, answer),
    ...(!isOpen(figure) && { value: sheet.say.interval(figure, answer.quantity) }),
    ...(!ends.every(isOpen) && { limit: said.limit }),
  });
}

function nameOf({ words, say }: Sheet, figure: MissingFigure): string {
  const { field, of, phases = [], directions = [], dose } = figure;
  const whose = field.startsWith("material-") ? "material" : "owner";
  return words.lines.measure.figure(
    {
      name: words.fields[field],
      ...(of !== undefined && { [whose]: say.material(of) }),
      phases,
      directions,
      ...(dose && { dose }),
    },
    say,
  );
}

function isAbout(answer: WaitingFor, one: WaitingFor): boolean {
  return answer.id === one.id && JSON.stringify(answer.of) === JSON.stringify(one.of);
}
