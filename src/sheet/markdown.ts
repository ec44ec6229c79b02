import { record } from "../guards.js";
import type { Answer, Plan } from "../plan/index.js";
import { measureNext } from "../plan/measure-next.js";
import { allowances, cost, naturalOrigin } from "./batch.js";
import { additionsOf, fromTheRoom, gelByDroplets, speedsOf, warmingOf } from "./emulsion.js";
import { afterFillingOf, evaporationOf, exposuresOf, orderOfAddition, timeToWorkIn } from "./heat.js";
import { measureNextOf } from "./measure-next.js";
import { packSection } from "./packs.js";
import { render, type Sheet, type Wording, whyNot } from "./render.js";
import { stabilitySection } from "./stability.js";
import { strengthSections } from "./strength.js";
import { markdownList, markdownTable, markdownText } from "./table.js";
import { answerTable, basisTable, orderTable, saidOf, timelineTable, weighingTable } from "./tables.js";
import { version } from "./version.js";

/**
 * A plan as a batch sheet in Markdown, to be printed and taken to the kettle: cautions first, then what fails or is not
 * known, the weighing table with room to write, the steps, and what every figure rests on.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown with tables (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for a plan with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { toMarkdown } from "gelwright/sheet";
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
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [{ do: "charge", phase: "A" }, { do: "heat", to: "85 °C" }, { do: "take off the heat" }, { do: "fill" }],
 *   },
 * });
 * toMarkdown({ plan }).split("\n")[0]; // => "# Batch sheet: clear gel"
 * ```
 */
export function toMarkdown(input: { readonly plan: Plan } & Wording): string {
  const { plan, ...wording } = record(input, "input");
  return render(plan, wording, sheetOf);
}

function sheetOf(sheet: Sheet): string {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  return [
    `# ${labels.title}: ${markdownText(plan.names.formula)}`,
    heading(sheet),
    `## ${labels.cautions}`,
    markdownList(plan.cautions.map((caution) => words.cautions[caution.code](caution, say))),
    ...beforeYouStart(sheet),
    ...measureNextOf(sheet),
    `## ${labels.weighTitle}`,
    markdownTable(weighingTable(sheet)),
    total(sheet),
    `## ${labels.doTitle}`,
    ...fromTheRoom(sheet),
    markdownTable(timelineTable(sheet)),
    `${labels.timesCount}${timeToWorkIn(sheet)}`,
    ...warmingOf(sheet),
    ...orderOfLots(sheet),
    ...additionsOf(sheet),
    ...strengthSections(sheet),
    ...gelByDroplets(sheet),
    ...speedsOf(sheet),
    ...afterFillingOf(sheet),
    ...packSection(sheet),
    ...stabilitySection(sheet),
    ...exposuresOf(sheet),
    ...orderOfAddition(sheet),
    ...evaporationOf(sheet),
    ...allowances(sheet),
    ...naturalOrigin(sheet),
    ...cost(sheet),
    `## ${labels.answers}`,
    markdownTable(answerTable(sheet)),
    `## ${labels.timesRestOn}`,
    markdownTable(basisTable(sheet)),
    `## ${labels.sources}`,
    markdownList(plan.sources.map((source) => sourceOf(sheet, source))),
    `_${lines.batch.computed({ library: `gelwright ${version}` })}_`,
    "",
  ].join("\n\n");
}

/** Where figures come from. Of a material or an allowance a missing source is said; a heat loss has its own in its readings. */
function sourceOf({ words, say }: Sheet, source: Plan["sources"][number]): string {
  const of = words.sources[source.key](source, say);
  const from = source.source ?? (isSourceExpected(source) ? words.labels.noSource : "");
  return from === "" ? of : `${of}: ${from}`;
}

function isSourceExpected({ key }: Plan["sources"][number]): boolean {
  return key === "material" || key === "allowance";
}

function heading({ plan: { names, lots }, words: { labels, lines }, say }: Sheet): string {
  const { vessel, process, lots: lotCount, chargeOfLot, batchNumber, date, operator } = labels;
  const { count, charge: mass, volume } = lots;
  return markdownTable({
    columns: [vessel, process, lotCount, chargeOfLot, batchNumber, date, operator],
    rows: [
      [
        names.vessel,
        names.process,
        count === 1 ? "1" : lines.batch.lots({ count }, say),
        lines.batch.charge({ mass, ...(volume !== undefined && { volume }) }, say),
        "",
        "",
        "",
      ],
    ],
  });
}

/** What is not met, then what no figure of the documents would settle, each with the figure and its limit, and what has to be tried. What only lacks a figure stands in the list of what to measure. */
function beforeYouStart(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { others } = measureNext(plan);
  const open = [
    ...plan.answers.filter(({ verdict }) => verdict === "not-met"),
    ...plan.answers.filter(({ id, of }) => others.some((one) => one.id === id && one.of === of)),
  ];
  const lines = [
    ...open.map((answer) => openLine(sheet, answer)),
    ...plan.notes.map((note) => words.notes[note.code](note, say, words)),
  ];
  return lines.length === 0
    ? []
    : [`## ${words.labels.beforeYouStart}`, words.labels.openQuestions, markdownList(lines)];
}

/** An answer that is not met or not known; its figure once, in the statement if it stands there. */
function openLine(sheet: Sheet, answer: Answer): string {
  const { verdict, statement, value, limit } = saidOf(sheet, answer);
  const figure = sheet.say.interval(answer.figure, answer.quantity);
  const isSaid = statement.includes(` ${figure}`);
  return sheet.words.lines.batch.open({ verdict, statement, limit, ...(!isSaid && { value }) });
}

/** What the lines add up to, on the finest of the balances. */
function total({ plan: { weighing }, words, say }: Sheet): string {
  const finest = Math.min(...weighing.lines.map(({ increment }) => increment));
  const { total: toWeigh, totalWouldDo } = words.lines.batch;
  const whole = `**${toWeigh({ total: say.weighed(weighing.total, finest) })}**`;
  return weighing.onGrid ? whole : `${whole} (${totalWouldDo({ mass: weighing.totalTarget }, say)})`;
}

/** The order of the lots, if there are several; of a single one the table of steps says it all. */
function orderOfLots(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { lotOrder: order, lots } = plan;
  if (!order || lots.count === 1) return [];
  const title = `## ${words.labels.orderOfLots}`;
  const { notKnown, timesOfDays } = words.lines.batch;
  if ("notKnown" in order) return [title, markdownText(notKnown({ reason: whyNot(sheet, order.notKnown) }))];
  const { workingDay, days } = order;
  return [
    title,
    markdownTable(orderTable(sheet, order)),
    workingDay === undefined ? words.labels.timesCountFromFirstLot : timesOfDays({ workingDay, days }, say),
  ];
}
