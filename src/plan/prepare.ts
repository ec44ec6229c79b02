import type { ScaledBatch } from "../batch/index.js";
import { list, record, refuse, show } from "../guards.js";
import { type Change, changed } from "./change.js";
import { fingerprint } from "./fingerprint.js";
import type { Job, ReadJob } from "./job.js";
import { afterChanges, inDocument } from "./masses.js";
import { leavesFilmOpen, yieldStressOfFilm } from "./parts/films.js";
import { yieldStressOf } from "./parts/yield-stress.js";
import { fitPortions } from "./portions.js";
import { readJob } from "./read.js";
import { type Begun, runSteps, weighedOf } from "./run.js";
import { scaledBatch } from "./scaling.js";
import type { Run } from "./state.js";
import type { Step } from "./step-documents.js";
import { otherwise, remembered } from "./unknown.js";

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
  inDocument(prepared.job, () => {
    if (leavesFilmOpen(prepared.job)) runOf(prepared);
    else fitPortions(prepared.steps, scaledOf(prepared.job));
  });
  preparedJobs.set(prepared, fingerprint(document));
  return prepared;
}

/** The jobs that were prepared, with the fingerprint of their documents: what only looks like one may lack anything. */
const preparedJobs: WeakMap<object, string> = new WeakMap();

/** The fingerprint of a prepared job, with the changes that are made to it. */
export function fingerprintOfRun({ prepared, changes = [] }: RunInput): string {
  const own = preparedJobs.get(prepared) as string;
  return changes.length === 0 ? own : fingerprint({ fingerprint: own, changes });
}

/** The batch of a job, with the film that its yield stress leaves on the walls. */
function scaledOf(job: Job): ScaledBatch {
  return scaledBatch(job, yieldStressBefore(job));
}

/** The yield stress before anything is run [Pa], if it is known. */
function yieldStressBefore(job: Job): number | undefined {
  return otherwise(
    () => yieldStressOf(job).value,
    () => undefined,
  );
}

/** The run of a prepared job: one weighed lot through all steps. Steps that the first run of the job has too are not run again, up to the first that differs. */
export function runOf({ job, steps }: ReadJob): Run {
  return runsOf(job)(steps);
}

const runsOf = remembered((job: Job) => {
  let first: Run | undefined;
  return remembered((steps: ReadJob["steps"]): Run => {
    const isOther = (step: Step, i: number): boolean => step !== first?.moments[i]?.step;
    const run = leavesFilmOpen(job)
      ? runWithFilm(job, steps)
      : runOn(job, steps, first && { ...first, moments: first.moments.slice(0, steps.findIndex(isOther)) });
    first ??= run;
    return run;
  });
});

function runOn(job: Job, steps: ReadJob["steps"], begun: Begun = begin(job, scaledOf(job))): Run {
  fitPortions(steps, begun.scaled);
  return runSteps(job, steps, begun);
}

/** A weighed lot of which nothing has been run. */
function begin(job: Job, scaled: ScaledBatch): Begun {
  return { scaled, weighed: weighedOf(job, scaled), moments: [] };
}

/** A trial run with the film of the set gel shows how much melt stays in the vessel; the run itself is made with that. */
function runWithFilm(job: Job, steps: ReadJob["steps"]): Run {
  const trial = runOn(job, steps, begin(job, scaledBatch(job, yieldStressBefore(job) ?? anyFilm)));
  const scaled = otherwise(
    () => scaledBatch(job, yieldStressOfFilm(trial)),
    () => scaledOf(job),
  );
  return runOn(job, steps, begin(job, scaled));
}

/** A yield stress for a film that is yet to be found [Pa]. */
const anyFilm = 1;

/** What a run of a prepared job takes. */
export interface RunInput {
  readonly prepared: PreparedJob;
  /** Typed changes, made one after another; default none. */
  readonly changes?: readonly Change[];
}

/** The run of a prepared job with its changes. */
export function preparedRun(input: RunInput): Run {
  const job = changedJob(input);
  const { prepared, changes = [] } = input;
  return afterChanges(changes, (made) => runOf(made === changes ? job : changed(prepared, made)));
}

/** A prepared job with its changes. */
export function changedJob(input: RunInput): ReadJob {
  const { prepared, changes = [] } = record(input, "input");
  if (!preparedJobs.has(record(prepared, "prepared")))
    refuse("input", "prepared", show(prepared), "a job as prepareJob gives it");
  return changed(prepared, list(changes, "changes"));
}
