import { record } from "../guards.js";
import type { Answer, Flip, Sweep, SweepColumn, SweepFigures, SweepRow } from "../plan/index.js";
import * as known from "./known.js";
import type { Sheet, Wording } from "./render.js";
import { figuresOf } from "./scales.js";
import { soundly } from "./sound.js";
import type { Table } from "./table.js";
import { questionOf } from "./tables.js";
import { markdownList, markdownTable } from "./to-markdown.js";
import { sayWith } from "./words/say.js";
import { wordsWith } from "./words/some-words.js";

/** In which words a sweep is written. */
type Written = Pick<Sheet, "words" | "say">;

/**
 * A sweep as Markdown: one column for each run under the caller's label, the figures and the answers that are not the
 * same in all of them, and below it every verdict that flips, with the value at which it does.
 *
 * @param input.sweep - A sweep as `sweep` of `gelwright/plan` gives it.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns A Markdown table (GitHub flavour), and a list if any verdict flips. Text of the caller is escaped.
 * @throws CalculationError `input` for a sweep with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { prepareJob, sweep } from "gelwright/plan";
 * import { sweepToMarkdown } from "gelwright/sheet";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: { former: { name: "gel former", function: "gel former" }, oil: { name: "oil", function: "oil" } },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 } },
 *   batch: {
 *     version: 1,
 *     target: { mass: "1 kg" },
 *     density: "900 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: { name: "beaker", workingVolume: { min: "0.5 L", max: "2 L" }, diameter: "100 mm" },
 *   process: { name: "cold", room: "20 °C", steps: [{ do: "charge", phase: "A" }, { do: "fill" }] },
 * });
 * const dose = (value: number) => ({ label: `${100 * value} %`, changes: [{ change: "dose", material: "former", value }] as const });
 * const found = sweep({ prepared, rows: [0.1, 0.12].map(dose), questions: ["gel-former-ratio"] });
 * sweepToMarkdown({ sweep: found }).split("\n")[0]; // => "|  | 10 % | 12 % |"
 * ```
 */
export function sweepToMarkdown(input: { readonly sweep: Sweep } & Wording): string {
  const { sweep, words: own = {}, formats = {} } = record(input, "input", known.sweepToMarkdown);
  const words = wordsWith(own);
  record(formats, "formats");
  return soundly([record(sweep, "sweep")], (sound) => {
    const [only] = sound as readonly [Sweep];
    const how = { words, say: sayWith({ ...formats, plan: only }) };
    const flips = only.flips.map((flip) => flipLine(how, only, flip));
    return [markdownTable(tableOf(how, only)), ...(flips.length > 0 ? [markdownList(flips)] : [])].join("\n\n");
  });
}

function tableOf(how: Written, { rows, columns }: Sweep): Table {
  return {
    columns: ["", ...rows.map(({ label }) => label)],
    rows: [...figureRows(how, rows), ...columns.flatMap((column) => differing(rows, answerRow(how, rows, column)))],
  };
}

/** A figure of a run that has a row. */
type Figure = Exclude<keyof SweepFigures, "stirredNotKnown">;

/** The figures that are not the same in all runs, each as it is written in the table of scales. */
function figureRows(how: Written, rows: readonly SweepRow[]): readonly (readonly string[])[] {
  const { words, say } = how;
  const { scales, sweep } = words.lines;
  const { mass, ...others } = figuresOf(how);
  const writers = {
    lots: ({ lots }) => say.count(lots),
    mass: (figures) => say.kilograms(figures.mass),
    massDelivered: ({ massDelivered }) => say.kilograms(massDelivered),
    durationUntilFilled: ({ durationUntilFilled }) => say.duration(durationUntilFilled),
    ...(others as object),
  } as { readonly [Key in Figure]: (figures: SweepFigures) => string };
  const heads: { readonly [Key in Figure]: string } = { ...scales.heads, ...sweep.heads };
  return (Object.keys(writers) as Figure[]).flatMap((key) => {
    if (rows.every((row) => "impossible" in row || row.figures[key] === undefined)) return [];
    const write = (row: SweepRow): string => ("figures" in row ? writers[key](row.figures) : sweep.impossible());
    return differing(rows, [heads[key], ...rows.map(write)]);
  });
}

/** A line of the table, if what is written of the runs that can be made is not the same in all of them. */
function differing(rows: readonly SweepRow[], line: readonly string[]): readonly (readonly string[])[] {
  const made = line.slice(1).filter((_, i) => !("impossible" in (rows[i] as SweepRow)));
  return new Set(made).size > 1 ? [line] : [];
}

function answerRow(how: Written, rows: readonly SweepRow[], column: SweepColumn): readonly string[] {
  const { words } = how;
  const { cell, impossible } = words.lines.sweep;
  const write = (row: SweepRow): string => {
    if ("impossible" in row) return impossible();
    const answer = row.answers.find((one) => one.id === column.id && sameJson(one.of, column.of));
    return answer ? cell({ verdict: words.verdicts[answer.verdict], value: figureOf(how, answer) }) : "";
  };
  return [questionOf(how, column), ...rows.map(write)];
}

function figureOf({ say }: Written, { figure, quantity }: Answer): string {
  return figure.min === null && figure.max === null ? "" : say.interval(figure, quantity);
}

function sameJson(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function flipLine(how: Written, { rows }: Sweep, flip: Flip): string {
  const { words, say } = how;
  const { row, before, after, change } = flip;
  return words.lines.sweep.flip({
    question: questionOf(how, flip),
    before: words.verdicts[before],
    after: words.verdicts[after],
    from: (rows[row] as SweepRow).label,
    to: (rows[row + 1] as SweepRow).label,
    change: say.given(change, (one) => words.lines.sweep.change(one, say)),
  });
}
