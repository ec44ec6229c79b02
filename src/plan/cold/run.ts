import type { ScaledBatch } from "../../batch/index.js";
import type { Job } from "../job.js";
import { type Content, intoPacks, type Moment, type State } from "../moment.js";
import { type AddedOil, addOil } from "./additions.js";
import type { ColdStep } from "./step.js";

/** A step of the cold route that was run, with the schedule where oil was added. */
export interface ColdMoment extends Moment<ColdStep> {
  readonly added?: AddedOil | undefined;
}

/** Runs the steps of the cold route over one weighed lot, all of it at the room's temperature. */
export function runCold(job: Job, charge: readonly Content[], scaled: ScaledBatch): readonly ColdMoment[] {
  const steps = job.process.route === "cold" ? job.process.steps : [];
  const temperature = job.process.temperatureRoom;
  let state: State = { contents: [], onHeat: false, time: 0, molten: new Set() };
  return steps.map((step): ColdMoment => {
    const before = state;
    const { contents = before.contents, duration, law, obstacle, added } = run(step, before, job, charge, scaled);
    const time = before.time === undefined || duration === undefined ? undefined : before.time + duration;
    state = { ...before, contents, time, temperature };
    return { step, before, after: state, law, obstacle, added };
  });
}

interface Done {
  readonly contents?: readonly Content[];
  readonly duration?: number | undefined;
  readonly law: string;
  readonly obstacle?: string;
  readonly added?: AddedOil;
}

function run(step: ColdStep, { contents }: State, job: Job, charge: readonly Content[], scaled: ScaledBatch): Done {
  switch (step.do) {
    case "charge": {
      const more = charge.filter(({ phase }) => phase === step.phase);
      return { contents: [...contents, ...more], duration: step.duration, law: "duration as written" };
    }
    case "add": {
      const more = charge.filter(({ phase }) => phase === step.phase);
      const added = addOil(step, contents, more, job, scaled);
      const all = [...contents, ...more];
      if (typeof added === "string") return { contents: all, law: `no schedule: ${added}`, obstacle: added };
      return { contents: all, duration: added.duration, law: lawOf(added), added };
    }
    case "match clarity":
      return { duration: 0, law: "no time of its own" };
    case "fill":
      return { contents: intoPacks(contents, scaled), duration: step.duration, law: "duration as written" };
    case "stir":
    case "de-aerate":
    case "rest":
      return { duration: step.duration, law: "duration as written" };
  }
}

function lawOf({ form, keeps, uptakeFactor, timesNotKnown, rows }: AddedOil): string {
  const shares = form === "as at the bench" ? "the bench's own additions" : "the shares of the bench";
  if (timesNotKnown) return `${shares}; times not known: ${timesNotKnown}`;
  const scaled = uptakeFactor === 1 ? "" : `, times ${Number((uptakeFactor ?? 1).toPrecision(3))}`;
  const kept = {
    time: "the same time",
    revolutions: "the same revolutions",
    "way of the tip": "the same way of the tip",
  };
  const many = form === "stream" ? "a stream" : `${rows.length} additions`;
  return `${many} by ${shares}; uptake as at the bench, ${kept[keeps]}${scaled}`;
}
