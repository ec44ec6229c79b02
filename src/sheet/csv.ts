import { record, refuse } from "../guards.js";
import type { Plan } from "../plan/index.js";
import * as known from "./known.js";
import { additionNumbers, answerNumbers, timelineNumbers, weighingNumbers } from "./numbers.js";
import { render, type Sheet, type Wording } from "./render.js";
import { csvTable, type Table } from "./table.js";

/** A table of a plan. */
export type CsvTable = "weighing" | "timeline" | "answers" | "additions";

const tables: { readonly [Name in CsvTable]: (sheet: Sheet) => Table } = {
  weighing: weighingNumbers,
  timeline: timelineNumbers,
  answers: answerNumbers,
  additions: additionNumbers,
};

/**
 * One table of a plan as CSV (RFC 4180), with plain numbers in the units of the kernels and full precision.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @param input.table - `"weighing"`, `"timeline"`, `"answers"`, or `"additions"` of oil to an emulsion.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers in sentences are written; those in cells of their own are plain.
 * @returns Lines that end in CR LF; the first names the columns and their units. What is not known is an empty cell.
 * @throws CalculationError `input` for a table that there is not.
 * @source rfc-4180
 * @example
 * ```ts
 * import { toCsv } from "gelwright/sheet";
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
 * toCsv({ plan, table: "weighing" }).split("\r\n")[1]; // => "A,gel former,0.1,1,1,1,scale,0.995,1.005"
 * ```
 */
export function toCsv(input: { readonly plan: Plan; readonly table: CsvTable } & Wording): string {
  const { plan, table, ...wording } = record(input, "input", known.toCsv);
  const build = Object.hasOwn(tables, table)
    ? tables[table]
    : refuse("input", "table", table, Object.keys(tables).join(", "));
  return render(plan, wording, (sheet) => csvTable(build(sheet)));
}
