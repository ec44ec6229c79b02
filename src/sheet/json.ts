import { record } from "../guards.js";
import type { Plan } from "../plan/index.js";
import * as known from "./known.js";
import { soundly } from "./sound.js";
import { version } from "./version.js";

/**
 * A plan as JSON for another program: all figures in the units of the kernels at full precision, with the library's version.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @returns JSON, indented by two spaces, ending in a line feed.
 * @throws CalculationError `input` for a plan with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { toJson } from "gelwright/sheet";
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
 * JSON.parse(toJson({ plan })).library; // => "gelwright 0.1.0"
 * ```
 */
export function toJson(input: { readonly plan: Plan }): string {
  const plan = record(record(input, "input", known.toJson).plan, "plan");
  return soundly([plan], ([sound]) => `${JSON.stringify({ library: `gelwright ${version}`, ...sound }, null, 2)}\n`);
}
