import type { ScaledBatch } from "../batch/index.js";
import { list, record, refuse, show } from "../guards.js";
import { type Change, changed } from "./change.js";
import { fingerprint } from "./fingerprint.js";
import type { Job, ReadJob } from "./job.js";
import { afterChanges } from "./masses.js";
import { leavesFilmOpen, yieldStressOfFilm } from "./parts/films.js";
import { yieldStressOf } from "./parts/yield-stress.js";
import { fitPortions } from "./portions.js";
import { type Begun, runSteps, weighedOf } from "./run.js";
import { scaledBatch } from "./scaling.js";
import type { Run } from "./state.js";
import type { Step } from "./step-documents.js";
import { otherwise, remembered } from "./unknown.js";

/** A job that was read and is ready to be run. It holds functions: a worker prepares from text. */
export type PreparedJob = ReadJob;

/** What a run of a prepared job takes. */
export interface RunInput {
  readonly prepared: PreparedJob;
  /** Typed changes, made one after another; default none. */
  readonly changes?: readonly Change[];
}

/** The jobs that were prepared, with the fingerprint of their documents: what only looks like one may lack anything. */
export const preparedJobs: WeakMap<object, string> = new WeakMap();

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

/** The fingerprint of a prepared job, with the changes that are made to it. */
export function fingerprintOfRun({ prepared, changes = [] }: RunInput): string {
  const own = preparedJobs.get(prepared) as string;
  return changes.length === 0 ? own : fingerprint({ fingerprint: own, changes });
}

/** The run of a prepared job: one weighed lot through all steps. Steps that the first run of the job has too are not run again, up to the first that differs. */
export function runOf({ job, steps }: ReadJob): Run {
  return runsOf(job)(steps);
}

/** The batch of a job, with the film that its yield stress leaves on the walls. */
export function scaledOf(job: Job): ScaledBatch {
  return scaledBatch(job, yieldStressBefore(job));
}

/** The yield stress before anything is run [Pa], if it is known. */
function yieldStressBefore(job: Job): number | undefined {
  return otherwise(
    () => yieldStressOf(job).value,
    () => undefined,
  );
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
