import type { ScaledBatch } from "../batch/index.js";
import { list, record, refuse, show } from "../guards.js";
import { type Change, changed } from "./change.js";
import type { NoteCode } from "./codes.js";
import type { NotKnown } from "./figure.js";
import type { Job } from "./job.js";
import { afterFillingOf, type PlanAfterFilling } from "./parts/after-filling.js";
import { airOf, type PlanAir } from "./parts/air.js";
import { allowancesOf, type Cost, costOfBatch, type Lots, lotsOf, type Weighing, weighingOf } from "./parts/batch.js";
import { type Caution, cautionsOf } from "./parts/cautions.js";
import { emulsionOf, type PlanEmulsion } from "./parts/emulsion.js";
import { type Evaporation, evaporationOf } from "./parts/evaporation.js";
import { filmsOf, type PlanFilms } from "./parts/films.js";
import { flowOf, type PlanFlow } from "./parts/flow.js";
import { gelPointsOf, type PlanGelPoint } from "./parts/gel-points.js";
import { type LotOrder, lotOrderOf } from "./parts/lot-order.js";
import { type NaturalOrigin, naturalOriginOf } from "./parts/natural-origin.js";
import { oxidationRankingOf, type RankedOil } from "./parts/oxidation-ranking.js";
import { type PlanParticle, particlesOf } from "./parts/particles.js";
import { type ScaleMetrics, scaleMetricsOf } from "./parts/scale.js";
import { type Source, sourcesOf } from "./parts/sources.js";
import { type StrengthNote, strengthNotes } from "./parts/strength-notes.js";
import { type MaterialExposure, thermalExposuresOf } from "./parts/thermal-exposure.js";
import { type PlanStrength, type PlanYieldStress, strengthOf } from "./parts/trials.js";
import { yieldStressFigure, yieldStressOf } from "./parts/yield-stress.js";
import { questions } from "./questions/index.js";
import { type Answer, answersTo, type Subject } from "./questions/question.js";
import { type ReadJob, readJob } from "./read.js";
import { type Remedy, remediesOf } from "./remedies.js";
import { runSteps, weighedOf } from "./run.js";
import { type PlanSeries, seriesOf } from "./series.js";
import { scaledBatch } from "./setting.js";
import type { Run } from "./state.js";
import { type PlanStep, timelineOf } from "./timeline.js";
import { otherwise, where } from "./unknown.js";

/** The run of a job: everything that stands on the batch sheet, in the units of the kernels, as numbers and codes. */
export interface Plan {
  readonly version: 1;
  /** Names as the documents have them. */
  readonly names: {
    readonly formula: string;
    readonly process: string;
    readonly vessel: string;
    readonly pack?: string;
    /** Name of each material, by its key. */
    readonly materials: Readonly<Record<string, string>>;
  };
  /** How many equal lots, and what one of them holds: the figures below are for one lot. */
  readonly lots: Lots;
  readonly weighing: Weighing;
  /** What the process takes from one lot [kg], in its order. */
  readonly allowances: readonly { readonly name: string; readonly mass: number }[];
  readonly timeline: readonly PlanStep[];
  /** What changes with the size of the vessel, for `comparePlans`. */
  readonly scale: ScaleMetrics;
  /** When each lot is made, if there are several or a working day is stated. */
  readonly lotOrder?: LotOrder | NotKnown;
  /** What happens in the pack. */
  readonly afterFilling: PlanAfterFilling;
  /** When particles may go in, and what holds them. */
  readonly particles: readonly PlanParticle[];
  /** Where the finished melt sets and dissolves. */
  readonly gelPoints: readonly PlanGelPoint[];
  /** The yield stress of the set gel. */
  readonly yieldStress?: PlanYieldStress;
  /** What trials let expect of the dose. */
  readonly strength?: PlanStrength;
  /** What rheometer points say. */
  readonly flow?: PlanFlow;
  readonly films: PlanFilms;
  /** Whether air leaves, if a bubble is asked about. */
  readonly air?: PlanAir;
  /** What the heat-sensitive materials went through. */
  readonly thermalExposures: readonly MaterialExposure[];
  /** The oils, ranked by what waiting until the heat is off would spare. */
  readonly oxidationRanking: readonly RankedOil[];
  /** What the volatile materials lose. */
  readonly evaporation: readonly Evaporation[];
  readonly naturalOrigin: NaturalOrigin;
  /** Additions of oil and the gel to be expected, of an emulsion. */
  readonly emulsion?: PlanEmulsion;
  /** Cost of the materials; left out where it is not known. */
  readonly cost: Cost | NotKnown;
  /** The answer to every question that the process raises. */
  readonly answers: readonly Answer[];
  readonly notes: readonly Note[];
  readonly cautions: readonly Caution[];
  /** Where the figures of the documents come from. */
  readonly sources: readonly Source[];
}

/** Something to know that no verdict is given on. */
export type Note = StrengthNote | { readonly code: NoteCode };

/** A job that was read and is ready to be run. It holds functions: a worker prepares from text. */
export type PreparedJob = ReadJob;

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
  scaledOf(prepared.job);
  preparedJobs.add(prepared);
  return prepared;
}

/** The jobs that were prepared: what only looks like one may lack anything. */
const preparedJobs: WeakSet<object> = new WeakSet();

/** The batch of a job, with the film that its yield stress leaves on the walls. */
function scaledOf(job: Job): ScaledBatch {
  return scaledBatch(
    job,
    otherwise(
      () => yieldStressOf(job).value,
      () => undefined,
    ),
  );
}

/** The run of a prepared job: one weighed lot through all steps. */
function runOf({ job, steps }: ReadJob): Run {
  const scaled = scaledOf(job);
  return runSteps(job, steps, weighedOf(job, scaled), scaled);
}

/** What a run of a prepared job takes. */
export interface RunInput {
  readonly prepared: PreparedJob;
  /** Typed changes, made one after another; default none. */
  readonly changes?: readonly Change[];
}

function preparedRun(input: RunInput): Run {
  return runOf(changedJob(input));
}

function changedJob(input: RunInput): ReadJob {
  const { prepared, changes = [] } = record(input, "input");
  if (!preparedJobs.has(record(prepared, "prepared")))
    refuse("input", "prepared", show(prepared), "a job as prepareJob gives it");
  return changed(prepared, list(changes, "changes"));
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
  return planOf(preparedRun(input));
}

/**
 * Answers some questions of a prepared job, and computes nothing that they do not need.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @param input.questions - Ids of questions; default all.
 * @returns The answers, in the order of the questions.
 * @throws CalculationError `input` for an id that is none.
 * @source definition
 * @example
 * ```ts
 * import { answerQuestions, prepareJob } from "gelwright/plan";
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
 * const [dissolved] = answerQuestions({ prepared, questions: ["gel-former-dissolves"] });
 * dissolved?.verdict; // => "not-met"
 * dissolved?.limit.min?.value; // => 73
 * ```
 */
export function answerQuestions(input: RunInput & { readonly questions?: readonly string[] }): readonly Answer[] {
  const { questions: wanted } = record(input, "input");
  const asked =
    wanted === undefined ? questions : list(wanted, "questions").map((id, i) => questionOf(id, `questions[${i}]`));
  const run = preparedRun(input);
  return asked.flatMap((question) => answersTo(question, run));
}

/**
 * The changes that make one answer met: for each lever of its question the nearest value, and the answer that it gives.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes on which the answer stands; default none.
 * @param input.answer - An answer of this job that is not met, or its `id` and `of`.
 * @returns A remedy for each lever that makes it met within its bracket; none for an answer that is met.
 * @throws CalculationError `input` for an answer that this job does not have.
 * @source definition
 * @example
 * ```ts
 * import { prepareJob, remedies } from "gelwright/plan";
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
 * const [remedy] = remedies({ prepared, answer: { id: "done-in-time", of: { step: 2 } } });
 * remedy?.lever; // => "stronger-heater"
 * Math.round(remedy?.change.value ?? 0); // => 1220
 * ```
 */
export function remedies(
  input: RunInput & { readonly answer: { readonly id: string; readonly of: Subject } },
): readonly Remedy[] {
  const { id, of } = record(record(input, "input").answer, "answer");
  return remediesOf(changedJob(input), questionOf(id, "answer.id"), record(of, "answer.of"), runOf);
}

/**
 * Temperature, viscosity and mass against time, as columns for a plot.
 *
 * @param input.prepared - A job as `prepareJob` gives it.
 * @param input.changes - Typed changes in the units of the kernels; default none.
 * @returns Times [s], temperatures [°C], viscosities [Pa·s], masses [kg], steps; `null` for what is not known.
 * @throws CalculationError `input` for a change that this job does not have.
 * @source definition
 * @example
 * ```ts
 * import { planSeries, prepareJob } from "gelwright/plan";
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
 * const { times, temperatures } = planSeries({ prepared });
 * [Math.round((times.at(-1) ?? 0) / 60), temperatures.at(-1)]; // => [19, 70]
 * ```
 */
export function planSeries(input: RunInput): PlanSeries {
  return seriesOf(preparedRun(input));
}

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
  return planOf(runOf(readJob(document)));
}

function questionOf(id: string, path: string): (typeof questions)[number] {
  return questions.find((one) => one.id === id) ?? refuse("input", path, show(id), "the id of a question");
}

function planOf(run: Run): Plan {
  const { job } = run;
  const { formula, process, vessel, pack, bench } = job;
  const lotOrder = lotOrderOf(run);
  return {
    version: 1,
    names: {
      formula: formula.name,
      process: process.name,
      vessel: vessel.name,
      ...(pack && { pack: pack.name }),
      materials: Object.fromEntries(Object.values(formula.materials).map(({ key, name }) => [key, name])),
    },
    lots: lotsOf(run),
    weighing: weighingOf(run),
    allowances: allowancesOf(run),
    timeline: timelineOf(run),
    scale: scaleMetricsOf(run),
    ...(lotOrder && { lotOrder }),
    afterFilling: afterFillingOf(run),
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
    naturalOrigin: naturalOriginOf(job),
    ...emulsionOf(run),
    cost: otherwise(
      () => costOfBatch(run),
      (notKnown) => ({ notKnown }),
    ),
    answers: questions.flatMap((question) => answersTo(question, run)),
    notes: strengthNotes(run),
    cautions: cautionsOf(run),
    sources: sourcesOf(job),
  };
}
