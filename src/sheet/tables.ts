import type { Answer, LotOrder, NotKnown, Plan, PlanStep } from "../plan/index.js";
import { withPastes } from "./pastes.js";
import { basesOf, restsOn, type Sheet, whyNot } from "./render.js";
import type { Cell, Table } from "./table.js";
import type { Words } from "./words/types.js";

/** The formula as it is weighed: share of each material, and its mass before rounding. */
export function formulaTable({ plan: { weighing }, words, say }: Sheet): Table {
  const { phase, material, share, massExact } = words.labels;
  return {
    columns: [phase, material, share, massExact],
    rows: weighing.lines.map((line) => [
      line.phase,
      say.material(line.material),
      say.percent(line.massFraction),
      say.kilograms(line.massExact, 5),
    ]),
  };
}

/** The course of the batch: mass, temperature, oil of an emulsion, viscosity of what is none, and what they rest on. */
export function courseTable(sheet: Sheet): Table {
  const { plan, words, say } = sheet;
  const { timeline, emulsion } = plan;
  const { step: number, from, to, mass, oilByVolume, temperatureAfter, viscosityAfter, restsOn: on } = words.labels;
  const hasOil = emulsion !== undefined || timeline.some(({ volumeFractionOil }) => volumeFractionOil !== undefined);
  const hasViscosity = !hasOil || timeline.some(({ viscosity }) => viscosity);
  return {
    columns: [
      number,
      from,
      to,
      mass,
      ...(hasOil ? [oilByVolume] : []),
      temperatureAfter,
      ...(hasViscosity ? [viscosityAfter] : []),
      on,
    ],
    rows: timeline.map((step) => [
      String(step.number),
      say.clock(step.timeStart),
      say.clock(step.timeEnd),
      step.inPacks ? words.lines.heat.inPacks({ mass: step.mass }, say) : say.kilograms(step.mass),
      ...(hasOil ? [say.percent(step.volumeFractionOil, 3)] : []),
      predicted(say.celsius(step.temperatureEnd)),
      ...(hasViscosity ? [viscosityOf(sheet, step)] : []),
      basisOf(sheet, step),
    ]),
  };
}

/** The instruction of a step; where oil goes in by a schedule, with a pointer to its table. */
export function toDo({ plan, words, say }: Sheet, step: PlanStep): string {
  // The compiler does not see that the words and the step are of one kind.
  const write = words.steps[step.step.do] as (of: PlanStep, as: typeof say) => string;
  const instruction = write(withPastes(plan, step), say);
  const schedule = plan.emulsion?.schedules.find((one) => one.step === step.number);
  // A stream is one, however many rows its table has.
  if (!schedule || "notKnown" in schedule || schedule.form === "stream") return instruction;
  return words.lines.heat.inAdditions({ instruction, count: schedule.rows.length }, say);
}

function viscosityOf({ words: { labels, lines }, say }: Sheet, { set, viscosity }: PlanStep): Cell {
  if (set) return labels.set;
  if (!viscosity) return say.notKnown;
  return viscosity.beyondReadings
    ? predicted(lines.heat.viscosityBeyond(viscosity, say))
    : { text: lines.heat.viscosityAt(viscosity, say), grade: "interpolated" };
}

/** A figure by a law. */
export function predicted(text: string): Cell {
  return { text, grade: "predicted" };
}

/** When each lot is made. */
export function orderTable(sheet: Sheet, { entries }: Exclude<LotOrder, NotKnown>): Table {
  const { plan, words, say } = sheet;
  const { lot: ofLot, day: onDay, step: ofStep, from, to } = words.labels;
  return {
    columns: [ofLot, onDay, ofStep, from, to],
    rows: entries.map(({ lot, day, step, start, end }) => {
      const planned = plan.timeline[step - 1];
      const instruction = planned ? toDo(sheet, planned) : "";
      return [
        String(lot),
        String(day),
        words.lines.batch.stage({ step, instruction }),
        say.clock(start),
        say.clock(end),
      ];
    }),
  };
}

/** What time and temperature of a step rest on. */
export function basisOf(sheet: Sheet, of: PlanStep): string {
  const { labels, lines } = sheet.words;
  const { step, timeStart, timeEnd, basis, assumptions, stirring, notKnown } = of;
  const parts = [
    restsOn(sheet, basis, assumptions),
    stirring ? lines.heat.stirring(stirring, sheet.say) : "",
    "for" in step && step.for !== undefined ? labels.durationAsStated : "",
    notKnown ? lines.batch.notKnownClause({ reason: whyNot(sheet, notKnown) }) : "",
  ].filter((part) => part !== "");
  const isAtOnce = timeStart !== undefined && timeStart === timeEnd;
  return parts.length === 0 && isAtOnce ? labels.noTimeOfItsOwn : parts.join("; ");
}

/** What answers rest on, each once and by its number. */
class Footnotes {
  readonly texts: string[] = [];

  /** The numbers of texts, in their order. */
  of(texts: readonly string[]): string {
    for (const one of texts) if (!this.texts.includes(one)) this.texts.push(one);
    return texts
      .map((one) => this.texts.indexOf(one) + 1)
      .sort((one, other) => one - other)
      .join(", ");
  }
}

/** Every question with its answer: what is open in full, what is met in a line; and what they rest on, each once. */
export function answerTables(sheet: Sheet): readonly Table[] {
  const { plan, words } = sheet;
  const { check, verdict, statement, value, limit, restsOn: on, number } = words.labels;
  const notes = new Footnotes();
  const order = { "not-met": 0, "not-known": 1, met: 2 } as const;
  const isMet = (answer: Answer): boolean => answer.verdict === "met";
  const open = plan.answers
    .filter((answer) => !isMet(answer))
    .sort((one, other) => order[one.verdict] - order[other.verdict])
    .map((answer) => {
      const said = saidOf(sheet, answer);
      return [questionOf(sheet, answer), said.verdict, said.statement, said.value, said.limit, notes.of(said.restsOn)];
    });
  const met = plan.answers.filter(isMet).map((answer) => {
    const said = saidOf(sheet, answer);
    return [questionOf(sheet, answer), said.verdict, said.value, said.limit, notes.of(said.restsOn)];
  });
  return [
    { columns: [check, verdict, statement, value, limit, on], rows: open },
    { columns: [check, verdict, value, limit, on], rows: met },
    { columns: [number, on], rows: notes.texts.map((one, i) => [String(i + 1), one]) },
  ].filter(({ rows }) => rows.length > 0);
}

/** The question, with what it is asked about. */
export function questionOf(sheet: Pick<Sheet, "words" | "say">, answer: Pick<Answer, "id" | "of">): string {
  const { question } = sheet.words.answers[answer.id];
  const subject = subjectOf(sheet, answer);
  return subject === "" ? question : sheet.words.lines.batch.aboutSubject({ question, subject });
}

/** A material, a phase, a step or a place, as far as the answer is about one. */
export function subjectOf(
  { words, say }: Pick<Sheet, "words" | "say">,
  { of: { material, phase, step, place } }: Pick<Answer, "of">,
): string {
  return [
    say.given(material, say.material),
    say.given(phase, (name) => words.lines.batch.phase({ phase: name })),
    step === undefined && place === undefined
      ? ""
      : say.place({ ...(step !== undefined && { step }), ...(place !== undefined && { place }) }),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** One answer in words. */
export interface Said {
  readonly verdict: string;
  readonly statement: string;
  readonly value: string;
  readonly limit: string;
  readonly restsOn: readonly string[];
}

/** An answer in the words of its question, by verdict and side. */
export function saidOf(sheet: Sheet, answer: Answer): Said {
  const { words, say } = sheet;
  const { verdict, side, figure, limit } = answer;
  const own = words.answers[answer.id];
  const state = verdict === "not-met" ? own["not-met"][side] : own[verdict];
  const parts = [figure, limit.min, limit.max].filter((part) => part !== undefined);
  return {
    verdict: words.verdicts[verdict],
    statement: state(answer, say, words),
    value: own.value(answer, say, words),
    limit: own.limit(answer, say, words),
    restsOn: basesOf(
      sheet,
      parts.flatMap(({ basis = [] }) => basis),
      parts.flatMap(({ assumptions = [] }) => assumptions),
    ),
  };
}

/** What the process takes from the charge. */
export function allowanceTable({ plan: { allowances, lots }, words, say }: Sheet): Table {
  return {
    columns: [words.labels.allowance, words.labels.mass, words.labels.shareOfCharge],
    rows: allowances.map((loss) => [
      lossName(loss, words),
      say.kilograms(loss.mass, 3),
      say.percent(loss.mass / lots.charge, 2),
    ]),
  };
}

/** What a loss is called: by its name, and of a film by where it is left. */
export function lossName({ name, part }: Plan["allowances"][number], { lines }: Words): string {
  return part === undefined ? name : lines.batch.film[part]({ name });
}
