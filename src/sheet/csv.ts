import { record, refuse } from "../guards.js";
import type { Plan } from "../plan/index.js";
import { additionNumbers } from "./cold-tables.js";
import { render } from "./render.js";
import { csvTable, type Table } from "./table.js";
import { checkTable, timelineNumbers, weighingNumbers } from "./tables.js";

const tables: Readonly<Record<"weighing" | "timeline" | "checks" | "additions", (plan: Plan) => Table>> = {
  weighing: weighingNumbers,
  timeline: timelineNumbers,
  checks: checkTable,
  additions: additionNumbers,
};

/**
 * One table of a plan as CSV (RFC 4180), with plain numbers in the units of the kernels and full precision.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @param input.table - `"weighing"`, `"timeline"`, `"checks"`, or `"additions"` of the cold route.
 * @returns Lines that end in CR LF; the first names the columns and their units.
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
 * toCsv({ plan, table: "checks" }).split("\r\n")[0]; // => "Check,Verdict,What it says,Value,Limit,Source"
 * ```
 */
export function toCsv(input: {
  readonly plan: Plan;
  readonly table: "weighing" | "timeline" | "checks" | "additions";
}): string {
  const { plan, table } = record(input, "input");
  const build = Object.hasOwn(tables, table)
    ? tables[table]
    : refuse("input", "table", table, Object.keys(tables).join(", "));
  return render(plan, (sound) => csvTable(build(sound)));
}
