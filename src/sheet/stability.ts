import { record } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import type { Plan, PlanStability, PlanStorage } from "../plan/index.js";
import { type Block, form, list, section, table, text } from "./blocks.js";
import { computedFrom } from "./computed.js";
import * as known from "./known.js";
import { render, type Sheet, type Wording, whyNot } from "./render.js";
import type { Table } from "./table.js";
import { markdownOf } from "./to-markdown.js";

/** The stability test in short, if one is stated. */
export function stabilitySection(sheet: Sheet): readonly Block[] {
  const { stability } = sheet.plan;
  if (!stability) return [];
  const { labels, lines } = sheet.words;
  const days = stability.storages.map(({ dayLast }) => dayLast);
  const last = lines.stability.upTo({ day: maxOf(days) }, sheet.say);
  return section(labels.stability, list([takenOf(sheet, stability), last]));
}

/** What the test takes out of the batch. */
export function takenOf(sheet: Sheet, { samples, mass, notKnown }: PlanStability): string {
  const { takes, takesNotKnown } = sheet.words.lines.stability;
  if (mass !== undefined) return takes({ samples, mass }, sheet.say);
  return takesNotKnown({ samples, reason: notKnown ? whyNot(sheet, notKnown) : "" }, sheet.say);
}

/**
 * The stability test as a sheet of its own, in Markdown: what goes into which storage, what that stands for, and every pull
 * with room to write.
 *
 * @param input.plan - A plan as `runPlan` gives it, of a job with `stability`.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown with tables (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for a plan with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { stabilityToMarkdown } from "gelwright/sheet";
 * import { runPlan } from "gelwright/plan";
 * const plan = runPlan({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log" },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: { name: "kettle", workingVolume: { min: "5 L", max: "20 L" }, diameter: "300 mm" },
 *   process: { name: "hot route", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 *   stability: {
 *     start: "2027-02-15",
 *     sample: "30 g",
 *     conditions: [{ name: "25 °C", at: "25 °C", pullDays: [0, 28], samplesPerPull: 2 }],
 *   },
 * });
 * stabilityToMarkdown({ plan }).includes("| 28 | 2027-03-15 | 25 °C | 2 |"); // => true
 * ```
 */
export function stabilityToMarkdown(input: { readonly plan: Plan } & Wording): string {
  const { plan, ...wording } = record(input, "input", known.stabilityToMarkdown);
  return render(plan, wording, planOfTest);
}

function planOfTest(sheet: Sheet): string {
  const { plan, words } = sheet;
  const { labels, lines } = words;
  const { stability } = plan;
  const title: Block = { kind: "title", text: `${labels.stabilityPlan}: ${plan.names.formula}` };
  if (!stability) return markdownOf([title, text(lines.stability.none)]);
  return markdownOf([
    title,
    form({ columns: [labels.batchNumber, labels.date, labels.by], rows: [["", "", ""]] }),
    text(takenOf(sheet, stability)),
    ...section(labels.storages, [table(storageTable(sheet, stability)), text(labels.stabilityNote)]),
    ...cyclesOf(sheet, stability),
    ...section(labels.pulls, [form(pullTable(sheet, stability))]),
    computedFrom(plan.fingerprint, sheet),
  ]);
}

function storageTable(sheet: Sheet, { storages, temperatureReference }: PlanStability): Table {
  const { words, say } = sheet;
  const { storage, samplesToPutIn, lastPull, standsFor } = words.labels;
  return {
    columns: [storage, samplesToPutIn, lastPull, standsFor],
    rows: storages.map((one) => [
      words.lines.stability.storage({
        name: one.condition,
        temperature: say.given(one.temperature, (at) => say.celsius(at)),
      }),
      say.count(one.samples),
      words.lines.stability.day({ day: one.dayLast }, say),
      equivalentOf(sheet, one, temperatureReference),
    ]),
  };
}

function equivalentOf(sheet: Sheet, { equivalent }: PlanStorage, temperature: number | undefined): string {
  const { standsFor, standsForNotKnown } = sheet.words.lines.stability;
  if (!equivalent || temperature === undefined) return "";
  if ("notKnown" in equivalent) return standsForNotKnown({ reason: whyNot(sheet, equivalent.notKnown) });
  return standsFor({ ...equivalent, temperature }, sheet.say);
}

function cyclesOf({ words, say }: Sheet, { cycles }: PlanStability): readonly Block[] {
  if (!cycles) return [];
  const { labels, lines } = words;
  const { stay, cycles: told, crossing, transitions } = lines.stability;
  return section(labels.cycles, [
    ...list([
      told({ ...cycles, stays: cycles.stays.map((one) => stay(one, say)) }, say),
      ...cycles.crossings.map(({ name, count }) => crossing({ name: transitions[name] ?? name, count }, say)),
    ]),
    text(labels.cyclesNote),
  ]);
}

function pullTable({ words, say }: Sheet, { pulls }: PlanStability): Table {
  const { day, date, storage, samples, what, by } = words.labels;
  return {
    columns: [day, date, storage, samples, what, by],
    rows: pulls.map((pull) => [
      words.lines.stability.day(pull, say),
      pull.date ? words.lines.stability.date(pull.date) : "",
      pull.condition,
      say.count(pull.samples),
      "",
      "",
    ]),
  };
}
