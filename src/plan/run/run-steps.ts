import type { ScaledBatch } from "../../batch/index.js";
import type { Job, Step } from "../job.js";
import { type Content, type Moment, massOf, type State } from "../moment.js";
import { chargeInto } from "./charge.js";
import { cool } from "./cool.js";
import { heat } from "./heat.js";
import type { Outcome } from "./outcome.js";
import { rest, wait } from "./wait.js";

/** Runs the steps of a process over one weighed lot and keeps every moment. */
export function runSteps(job: Job, charge: readonly Content[], scaled: ScaledBatch): readonly Moment[] {
  let state: State = { contents: [], onHeat: false, time: 0 };
  return job.process.steps.map((step): Moment => {
    const before = state;
    const { law, obstacle, duration, temperature, contents, onHeat } = outcomeOf(step, before, job, charge, scaled);
    state = {
      contents: contents ?? before.contents,
      onHeat: onHeat ?? before.onHeat,
      time: before.time === undefined || duration === undefined ? undefined : before.time + duration,
      temperature,
    };
    return { step, before, after: state, law, obstacle };
  });
}

function outcomeOf(step: Step, state: State, job: Job, charge: readonly Content[], scaled: ScaledBatch): Outcome {
  switch (step.do) {
    case "charge": {
      const added = charge.filter((content) => content.phase === step.phase);
      return chargeInto(state, step, added, job);
    }
    case "heat":
      return heat(state, step, job);
    case "hold":
      return {
        duration: step.duration,
        temperature: state.temperature,
        law: "held by the heater; duration as written",
      };
    case "take off the heat":
      return { duration: 0, temperature: state.temperature, onHeat: false, law: "no time of its own" };
    case "cool":
      return cool(state, step, job);
    case "stir":
      return wait(state, step.duration, job);
    case "fill":
      return { ...wait(state, step.duration, job), contents: intoPacks(state.contents, scaled) };
    case "rest":
      return rest(state, step.duration, job, scaled);
  }
}

/** What arrives in the packs: the charge less every allowance, in the composition of the formula. */
function intoPacks(contents: readonly Content[], { lot }: ScaledBatch): readonly Content[] {
  const share = lot.delivered / massOf(contents);
  return contents.map((content) => ({ ...content, mass: content.mass * share }));
}
