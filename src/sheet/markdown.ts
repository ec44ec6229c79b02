import { record } from "../guards.js";
import type { Plan, PlanExposure, PlanLabel } from "../plan/index.js";
import { batchSheet } from "./batch-sheet.js";
import * as known from "./known.js";
import { render, type Wording } from "./render.js";
import { markdownOf } from "./to-markdown.js";

/**
 * A plan as a batch sheet in Markdown. First what the kettle needs: cautions, what has to be settled before the start,
 * what to weigh, what to do, how to fill, and where the mass has to be found again. Then the appendices.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @param input.label - The draft of its label, as `labelFor` gives it, to stand among the appendices; default none.
 * @param input.exposure - The exposure that an assessor asks for, as `exposureFor` gives it, to stand among the appendices; default none.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns Markdown with tables (GitHub flavour). Text of the documents is escaped.
 * @throws CalculationError `input` for a plan or another part with parts missing, with a figure that is not finite, or of other
 *   documents than the plan.
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
export function toMarkdown(
  input: { readonly plan: Plan; readonly label?: PlanLabel; readonly exposure?: PlanExposure } & Wording,
): string {
  const { plan, label, exposure, ...wording } = record(input, "input", known.toMarkdown);
  return render(plan, wording, (sheet) => markdownOf(batchSheet({ ...sheet, label, exposure })));
}
