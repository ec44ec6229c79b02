import type { ScaledBatch } from "../../batch/index.js";
import type { Job } from "../job.js";
import { type Content, intoPacks, type Moment, type State } from "../moment.js";
import { partsOf } from "../parts.js";
import { chargeInto } from "../run/charge.js";
import { rest, wait } from "../run/wait.js";
import { say } from "../say.js";
import { speedIn } from "../stirring.js";
import type { Turn } from "../turning.js";
import { type AddedOil, addOil } from "./additions.js";
import { inTheRoom } from "./in-the-room.js";
import type { ColdStep } from "./step.js";
import { type StirredIn, stirIn } from "./stir-in.js";

/** A step of the cold route that was run, with the schedule where oil was added, and what each addition asked of the stirrer. */
export interface ColdMoment extends Moment<ColdStep> {
  readonly added?: AddedOil | undefined;
  readonly turns?: readonly Turn[] | undefined;
}

/** Runs the steps of the cold route over one weighed lot: all of it comes from the room, and stirring warms it. */
export function runCold(job: Job, weighed: readonly Content[], scaled: ScaledBatch): readonly ColdMoment[] {
  const charge = inTheRoom(weighed, job.process.temperatureRoom);
  const steps = job.process.route === "cold" ? job.process.steps : [];
  let state: State = { contents: [], onHeat: false, time: 0, molten: new Set() };
  return steps.map((step, i): ColdMoment => {
    const before = state;
    const inPacks = steps.slice(0, i).some((earlier) => earlier.do === "fill");
    const done = run(step, before, { where: `step ${i + 1}`, inPacks }, job, charge, scaled);
    const { contents = before.contents, duration, temperature, law, obstacle, added, turns } = done;
    const time = before.time === undefined || duration === undefined ? undefined : before.time + duration;
    state = { ...before, contents, time, temperature };
    return { step, before, after: state, law, obstacle, added, turns };
  });
}

interface Done {
  readonly contents?: readonly Content[] | undefined;
  readonly duration?: number | undefined;
  readonly temperature?: number | undefined;
  readonly law: string;
  readonly obstacle?: string | undefined;
  readonly added?: AddedOil;
  readonly turns?: readonly Turn[];
}

function run(
  step: ColdStep,
  state: State,
  { where, inPacks }: { readonly where: string; readonly inPacks: boolean },
  job: Job,
  charge: readonly Content[],
  scaled: ScaledBatch,
): Done {
  switch (step.do) {
    case "charge":
      return chargeInto(state, step, ofPhase(charge, step.phase), job);
    case "add": {
      const more = ofPhase(charge, step.phase);
      const contents = [...state.contents, ...more];
      const added = addOil(step, state.contents, more, job, scaled);
      if (typeof added === "string") return { contents, law: `no schedule: ${added}`, obstacle: added };
      const stirred = stirIn(step, state, more, added, where, job);
      return {
        contents,
        duration: added.duration,
        temperature: stirred.temperature,
        law: `${lawOf(added)}${heatIn(stirred, state, added, contents, job)}`,
        added: { ...added, rows: stirred.rows },
        turns: stirred.turns,
      };
    }
    case "match clarity":
      return { duration: 0, temperature: state.temperature, law: "no time of its own" };
    case "fill":
      return { ...wait(state, step.duration, job), contents: intoPacks(state.contents, scaled) };
    case "stir":
    case "de-aerate":
      return wait(state, step.duration, job, speedIn(step, job));
    case "rest":
      // What is in packs no longer cools as the vessel does.
      return inPacks && state.temperature !== job.process.temperatureRoom
        ? rest(state, step.duration, job, scaled)
        : wait(state, step.duration, job);
  }
}

function ofPhase(charge: readonly Content[], name: string): readonly Content[] {
  return charge.filter(({ phase }) => phase === name);
}

/** What is known of the heat of stirring while oil goes in, as the end of a sentence. */
function heatIn(
  { turns, temperature }: StirredIn,
  before: State,
  { timesNotKnown }: AddedOil,
  contents: readonly Content[],
  job: Job,
): string {
  if (turns.length === 0 && temperature !== undefined) return "";
  const powers = turns.flatMap(({ stirred }) => (typeof stirred === "string" ? [] : [stirred.power]));
  const unknown = turns.find(({ stirred }) => typeof stirred === "string");
  const parts = partsOf(contents, new Set());
  if (typeof parts === "string") return `; heat of stirring left out, ${parts}`;
  if (temperature === undefined)
    return `; temperature not known: ${timesNotKnown ? "its times are not known" : before.temperature === undefined ? "the temperature before is not known" : "a law ends on the way"}`;
  if (typeof unknown?.stirred === "string")
    return `; heat of stirring left out in ${turns.length - powers.length} of them, ${unknown.stirred}`;
  const [min, max] = [Math.min(...powers), Math.max(...powers)].map(say.watts);
  return `; heat of stirring included, ${min} to ${max}, cooling by ${job.vessel.loss?.from}`;
}

function lawOf({ form, keeps, incorporationTimeFactor, timesNotKnown, rows }: AddedOil): string {
  const shares = form === "as at the bench" ? "the bench's own additions" : "the shares of the bench";
  if (timesNotKnown) return `${shares}; times not known: ${timesNotKnown}`;
  const kept = {
    time: "the same time",
    revolutions: "the same revolutions",
    "tip travel": "the same way of the tip",
    "energy per volume": "the same energy per volume",
    strain: "the same strain",
  };
  const many = form === "stream" ? "a stream" : `${rows.length} additions`;
  return `${many} by ${shares}; uptake as at the bench, ${kept[keeps]}${say.times(incorporationTimeFactor)}`;
}
