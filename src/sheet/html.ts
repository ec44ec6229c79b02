import { record } from "../guards.js";
import type { Plan, PlanExposure, PlanLabel, PlanSeries } from "../plan/index.js";
import { batchSheet } from "./batch-sheet.js";
import { shortOf } from "./computed.js";
import * as known from "./known.js";
import { render, type Sheet, type Wording } from "./render.js";
import { htmlOf } from "./to-html.js";

/**
 * A plan as a batch sheet in HTML: one file without script that loads nothing, to be printed on A4 in black and white. The
 * part for the kettle comes first, the appendices begin on a page of their own.
 *
 * The oil that goes into an emulsion and the torque meanwhile are drawn from the plan; the temperature of a charge that is
 * heated, with the windows for adding particles, from its series.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @param input.series - Its course against time, as `planSeries` gives it; default no drawing of the temperature.
 * @param input.label - The draft of its label, as `labelFor` gives it, to stand among the appendices; default none.
 * @param input.exposure - The exposure that an assessor asks for, as `exposureFor` gives it, to stand among the appendices; default none.
 * @param input.words - Words in place of English ones, in whole or in part; default English.
 * @param input.formats - How numbers and units are written; default a point, no separators, the units of the trade.
 * @returns A whole HTML document. Text of the documents is escaped.
 * @throws CalculationError `input` for a plan or another part with parts missing, with a figure that is not finite, or of other
 *   documents than the plan.
 * @source definition
 * @example
 * ```ts
 * import { toHtml } from "gelwright/sheet";
 * import { runPlan } from "gelwright/plan";
 * const plan = runPlan({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear <gel>",
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
 * });
 * toHtml({ plan }).includes("<h1>Batch sheet: clear &lt;gel&gt;</h1>"); // => true
 * ```
 */
export function toHtml(
  input: {
    readonly plan: Plan;
    readonly series?: PlanSeries;
    readonly label?: PlanLabel;
    readonly exposure?: PlanExposure;
  } & Wording,
): string {
  const { plan, series, label, exposure, ...wording } = record(input, "input", known.toHtml);
  return render(plan, wording, (sheet) =>
    htmlOf(batchSheet({ ...sheet, series, label, exposure }), sheet.words.labels.language, footOf(sheet)),
  );
}

/** Which sheet a page is of: the product, the documents that it was computed from, and the batch number to be written in. */
function footOf({ plan, words: { labels, lines } }: Sheet): string {
  const [product, documents] = [plan.names.formula, shortOf(plan.fingerprint)];
  return lines.batch.foot({ title: labels.title, product, documents, batchNumber: labels.batchNumber });
}
