import type { ScaledBatch } from "../../batch/index.js";
import { temperatureAfterCooling } from "../../heat/index.js";
import type { Job } from "../job.js";
import { heatCapacityOf, massOf, type State } from "../moment.js";
import { capacityWithWall, type Outcome } from "./outcome.js";

/** The vessel stands or is stirred for a while: on the heat it is held, off it it cools. */
export function wait(state: State, duration: number, job: Job): Outcome {
  const { conductance } = job.vessel;
  if (state.onHeat) return { duration, temperature: state.temperature, law: "held by the heater; duration as written" };
  if (state.temperature === undefined) return { duration, law: "not known: the temperature before is not known" };
  if (duration === 0 || state.temperature === job.process.temperatureRoom)
    return { duration, temperature: state.temperature, law: "duration as written" };
  const capacity = capacityWithWall(state, job);
  if (typeof capacity === "object") return { duration, law: `temperature not known: ${capacity.missing}` };
  if (conductance === undefined) return { duration, law: "temperature not known: no heat loss of the vessel" };
  return {
    duration,
    temperature: temperatureAfterCooling({
      heatCapacity: capacity,
      conductance,
      temperatureAmbient: job.process.temperatureRoom,
      temperatureStart: state.temperature,
      duration,
    }),
    law: "Newton cooling with the vessel's measured loss; duration as written",
  };
}

/** The filled packs stand. They cool by conduction, which only a cooling curve of the pack itself can stand for. */
export function rest(state: State, duration: number, job: Job, { wanted, packs }: ScaledBatch): Outcome {
  const { pack } = job;
  const capacity = heatCapacityOf(state.contents);
  const mass = massOf(state.contents);
  const fill = packs === undefined ? undefined : wanted / packs;
  if (
    state.temperature === undefined ||
    typeof capacity === "object" ||
    pack?.conductance === undefined ||
    fill === undefined
  )
    return { duration, law: "temperature not known: no cooling curve of the filled pack" };
  return {
    duration,
    temperature: temperatureAfterCooling({
      heatCapacity: (capacity / mass) * fill,
      conductance: pack.conductance,
      temperatureAmbient: job.process.temperatureRoom,
      temperatureStart: state.temperature,
      duration,
    }),
    law: "Newton cooling with the pack's measured loss; duration as written",
  };
}
