import { record } from "../guards.js";
import { fingerprint } from "./fingerprint.js";
import * as known from "./known.js";
import { inDocument } from "./masses.js";
import { type Plan, planOf } from "./plan.js";
import { fingerprintOfRun, preparedRun, type RunInput, runOf } from "./prepared-run.js";
import { readJob } from "./read.js";

/**
 * Runs a job: formula, bench, batch, vessel, process and pack, from documents to everything that stands on the batch sheet.
 *
 * @param document - JSON or a `JobDocument`; quantities as text with their unit.
 * @returns The plan, as plain numbers and codes.
 * @throws CalculationError `document`, naming every fault with its path at once.
 * @source definition
 * @example
 * ```ts
 * import { runPlan } from "gelwright/plan";
 * const plan = runPlan({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", function: "gel former", specificHeat: "2.1 kJ/(kg·K)" },
 *       oil: { name: "oil", function: "oil", specificHeat: "2 kJ/(kg·K)", density: { value: "945 kg/m³", at: "20 °C" } },
 *     },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 }, doses: [{ gelFormer: "10 %", setsAt: "56 °C", dissolvesAt: "73 °C" }] },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: {
 *     name: "kettle",
 *     workingVolume: { min: "5 L", max: "20 L" },
 *     diameter: "300 mm",
 *     heater: { power: "1 kW" },
 *     heatLoss: "4 W/K",
 *   },
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [
 *       { do: "charge", phase: "A" },
 *       { do: "heat", to: "70 °C", within: "15 min" },
 *       { do: "take off the heat" },
 *       { do: "fill" },
 *     ],
 *   },
 * });
 * Math.round((plan.timeline[1]?.timeEnd ?? 0) / 60); // => 19
 * plan.answers.find(({ id }) => id === "gel-former-ratio")?.verdict; // => "met"
 * ```
 */
export function runPlan(document: unknown): Plan {
  const read = readJob(document);
  return planOf(
    inDocument(read.job, () => runOf(read)),
    fingerprint(document),
  );
}

/**
 * Runs a prepared job, with some changes.
 *
 * A change re-does only what depends on it: fits and laws of what it does not touch are kept.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes in the units of the kernels, such as `{ change: "room", value: 25 }`; default none.
 * @returns The plan.
 * @throws CalculationError `input` for a change that this job does not have.
 * @source definition
 * @example
 * ```ts
 * import { prepareJob, runPrepared } from "gelwright/plan";
 * const prepared = prepareJob({
 *   version: 1,
 *   formula: {
 *     version: 1,
 *     name: "clear gel",
 *     materials: {
 *       former: { name: "gel former", function: "gel former", specificHeat: "2.1 kJ/(kg·K)" },
 *       oil: { name: "oil", function: "oil", specificHeat: "2 kJ/(kg·K)", density: { value: "945 kg/m³", at: "20 °C" } },
 *     },
 *     phases: [{ name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] }],
 *   },
 *   bench: { source: "bench log", oilPerGelFormer: { min: 8, max: 12 }, doses: [{ gelFormer: "10 %", setsAt: "56 °C", dissolvesAt: "73 °C" }] },
 *   batch: {
 *     version: 1,
 *     target: { mass: "10 kg" },
 *     density: "945 kg/m³",
 *     balances: [{ name: "scale", increment: "1 g", capacity: "15 kg", minimumWeight: "50 g" }],
 *   },
 *   vessel: {
 *     name: "kettle",
 *     workingVolume: { min: "5 L", max: "20 L" },
 *     diameter: "300 mm",
 *     heater: { power: "1 kW" },
 *     heatLoss: "4 W/K",
 *   },
 *   process: {
 *     name: "hot route",
 *     room: "20 °C",
 *     steps: [
 *       { do: "charge", phase: "A" },
 *       { do: "heat", to: "70 °C", within: "15 min" },
 *       { do: "take off the heat" },
 *       { do: "fill" },
 *     ],
 *   },
 * });
 * const times = [15, 25].map((value) => runPrepared({ prepared, changes: [{ change: "room", value }] }).timeline[1]?.timeEnd);
 * times.map((time = 0) => Math.round(time / 60)); // => [21, 17]
 * ```
 */
export function runPrepared(input: RunInput): Plan {
  record(input, "input", known.runPrepared);
  return planOf(preparedRun(input), fingerprintOfRun(input));
}
