import { fingerprint } from "./fingerprint.js";
import { inDocument } from "./masses.js";
import { leavesFilmOpen } from "./parts/films.js";
import { fitPortions } from "./portions.js";
import { type PreparedJob, preparedJobs, runOf, scaledOf } from "./prepared-run.js";
import { readJob } from "./read.js";

/**
 * Reads a job document once, so that it can be run often.
 *
 * Quantities are read and checked here; fits of trials, rheometer points and cooling curves are made once, when a run
 * first asks for them, and kept for every further run of the same prepared job.
 *
 * @param document - JSON or a `JobDocument`; quantities as text with their unit.
 * @returns The prepared job, for `runPrepared`, `remedies` and `planSeries`.
 * @throws CalculationError `document`, naming every fault with its path at once.
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
 * Math.round((runPrepared({ prepared }).timeline[1]?.timeEnd ?? 0) / 60); // => 19
 * ```
 */
export function prepareJob(document: unknown): PreparedJob {
  const prepared = readJob(document);
  // What makes the masses impossible is found here, and not at the first run.
  inDocument(prepared.job, () => {
    if (leavesFilmOpen(prepared.job)) runOf(prepared);
    else fitPortions(prepared.steps, scaledOf(prepared.job));
  });
  preparedJobs.set(prepared, fingerprint(document));
  return prepared;
}
