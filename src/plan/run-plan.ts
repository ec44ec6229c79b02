import { record } from "../guards.js";
import { copied } from "./copied.js";
import { fingerprint } from "./fingerprint.js";
import { namesOf } from "./job.js";
import * as known from "./known.js";
import { inDocument } from "./masses.js";
import { notesOf } from "./notes/index.js";
import { afterFillingOf } from "./parts/after-filling.js";
import { airOf } from "./parts/air.js";
import { allowancesOf, costOfBatch, lotsOf, weighingOf } from "./parts/batch.js";
import { cautionsOf } from "./parts/cautions.js";
import { emulsionOf } from "./parts/emulsion.js";
import { evaporationOf } from "./parts/evaporation.js";
import { fillingLimitsOf } from "./parts/filling-limits.js";
import { filmsOf } from "./parts/films.js";
import { flowOf } from "./parts/flow.js";
import { gelPointsOf } from "./parts/gel-points.js";
import { allergensOf, listingNamesOf } from "./parts/listed.js";
import { lotOrderOf } from "./parts/lot-order.js";
import { naturalOriginOf } from "./parts/natural-origin.js";
import { oilLimitsOf } from "./parts/oil-limits.js";
import { oxidationRankingOf } from "./parts/oxidation-ranking.js";
import { packsOf } from "./parts/packs.js";
import { particlesOf } from "./parts/particles.js";
import { pastesOf } from "./parts/pastes.js";
import { samplesIn } from "./parts/samples.js";
import { scaleMetricsOf } from "./parts/scale.js";
import { sourcesOf } from "./parts/sources.js";
import { stabilityOf } from "./parts/stability.js";
import { stockIn } from "./parts/stock.js";
import { thermalExposuresOf } from "./parts/thermal-exposure.js";
import { strengthOf } from "./parts/trials.js";
import { yieldStressFigure } from "./parts/yield-stress.js";
import type { Plan } from "./plan.js";
import { fingerprintOfRun, preparedRun, type RunInput, runOf } from "./prepared-run.js";
import { questions } from "./questions/index.js";
import { answersTo } from "./questions/question.js";
import { readJob } from "./read.js";
import type { Run } from "./state.js";
import { keptWarmMax, stepLimitsOf } from "./step-limits.js";
import { timelineOf } from "./timeline.js";
import { orNotKnown, remembered, where } from "./unknown.js";

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

/** The plan of a run. */
function planOf(run: Run, fingerprint: string): Plan {
  return copied({ version: 1, fingerprint, ...foundIn(run) });
}

/** A run that nothing changes is planned once. */
const foundIn = remembered((run: Run): Omit<Plan, "version" | "fingerprint"> => {
  const { job } = run;
  const { formula, process, vessel, pack, bench } = job;
  const lotOrder = lotOrderOf(run);
  const samples = samplesIn(run);
  const pastes = pastesOf(run);
  const [timeline, weighing] = [timelineOf(run), weighingOf(run)];
  const answers = questions.flatMap((question) => answersTo(question, run));
  return {
    names: {
      formula: formula.name,
      process: process.name,
      vessel: vessel.name,
      ...(pack && { pack: pack.name }),
      materials: namesOf(job),
      listing: listingNamesOf(job),
    },
    lots: lotsOf(run),
    weighing,
    ...(pastes.length > 0 && { pastes }),
    allowances: allowancesOf(run),
    ...(samples.length > 0 && { samples }),
    timeline,
    stepLimits: stepLimitsOf({ timeline, weighing, answers }),
    scale: scaleMetricsOf(run),
    ...(lotOrder && { lotOrder }),
    ...where("fillingLimits", () => fillingLimitsOf(run, keptWarmMax(answers))),
    afterFilling: afterFillingOf(run),
    ...(pack?.nominal && { packs: packsOf(run, pack.nominal) }),
    ...(job.batch.stock && { stock: stockIn(run) }),
    ...(job.stability && { stability: stabilityOf(run, job.stability) }),
    particles: particlesOf(run),
    gelPoints: gelPointsOf(run),
    ...where("yieldStress", () => yieldStressFigure(run)),
    ...(bench.strengthTrials && { strength: strengthOf(job) }),
    ...(bench.flowCurve && { flow: flowOf(job) }),
    films: filmsOf(run),
    ...(process.air && { air: airOf(run) }),
    thermalExposures: thermalExposuresOf(run),
    oxidationRanking: oxidationRankingOf(run),
    evaporation: evaporationOf(run),
    ...oilLimitsOf(run),
    allergens: allergensOf(job),
    naturalOrigin: naturalOriginOf(job),
    ...emulsionOf(run),
    cost: orNotKnown(() => costOfBatch(run)),
    answers,
    notes: notesOf(run),
    cautions: cautionsOf(run),
    sources: sourcesOf(job),
  };
});
