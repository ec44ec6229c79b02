import type { ScaledBatch } from "../../batch/index.js";
import { doseTemperature } from "../dose.js";
import type { Job, Step } from "../job.js";
import { type Content, intoPacks, type Moment, type State } from "../moment.js";
import { speedIn } from "../stirring.js";
import { chargeInto } from "./charge.js";
import { cool } from "./cool.js";
import { heat } from "./heat.js";
import type { Outcome } from "./outcome.js";
import { rest, wait } from "./wait.js";

/** Runs the steps of a process over one weighed lot and keeps every moment. */
export function runSteps(job: Job, charge: readonly Content[], scaled: ScaledBatch): readonly Moment<Step>[] {
  const steps = job.process.route === "hot" ? job.process.steps : [];
  let state: State = { contents: [], onHeat: false, time: 0, molten: new Set() };
  return steps.map((step): Moment<Step> => {
    const before = state;
    const outcome = outcomeOf(step, before, job, charge, scaled);
    const { law, obstacle, segments, duration, temperature, contents, onHeat } = outcome;
    const after = {
      contents: contents ?? before.contents,
      onHeat: onHeat ?? before.onHeat,
      time: before.time === undefined || duration === undefined ? undefined : before.time + duration,
      temperature,
    };
    state = { ...after, molten: moltenAfter(before.molten, after, job) };
    return { step, before, after: state, law, obstacle, segments };
  });
}

/** What has melted stays dissolved until the gel sets. */
function moltenAfter(
  before: ReadonlySet<string>,
  { contents, temperature }: Omit<State, "molten">,
  job: Job,
): ReadonlySet<string> {
  if (temperature === undefined) return before;
  const sets = doseTemperature(job, contents, "temperatureSetting");
  const kept = sets !== undefined && temperature <= sets ? [] : [...before];
  const melted = contents.filter(({ material }) => material.melting && material.melting.temperatureEnd <= temperature);
  return new Set([...kept, ...melted.map(({ material }) => material.key)]);
}

function outcomeOf(step: Step, state: State, job: Job, charge: readonly Content[], scaled: ScaledBatch): Outcome {
  switch (step.do) {
    case "charge": {
      const added = charge.filter((content) => content.phase === step.phase);
      return chargeInto(state, step, added, job);
    }
    case "heat":
      return heat(state, step, job);
    case "take off the heat":
      return { duration: 0, temperature: state.temperature, onHeat: false, law: "no time of its own", segments: [] };
    case "cool":
      return cool(state, step, job);
    case "hold":
    case "stir":
      return wait(state, step.duration, job, speedIn(step, job));
    case "fill":
      return { ...wait(state, step.duration, job), contents: intoPacks(state.contents, scaled) };
    case "rest":
      return rest(state, step.duration, job, scaled);
  }
}
