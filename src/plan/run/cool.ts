import { coolingTime } from "../../heat/index.js";
import { temperatureAtViscosity } from "../../laws/index.js";
import type { Job, Step } from "../job.js";
import { phasesOf, type State } from "../moment.js";
import { readingsFor } from "../viscosity.js";
import { capacityWithWall, type Outcome, obstacleOf } from "./outcome.js";

type Cool = Extract<Step, { do: "cool" }>;

export function cool(state: State, step: Cool, job: Job): Outcome {
  const { law, temperature, obstacle } =
    step.temperature === undefined
      ? aim(state, step.viscosity, job)
      : { law: "", temperature: step.temperature, obstacle: undefined };
  if (temperature === undefined) return { law, obstacle };
  const start = state.temperature;
  const { conductance } = job.vessel;
  const prefix = law && `${law}; `;
  if (start === undefined)
    return { temperature, law: `${prefix}duration not known: the temperature before is not known` };
  if (start <= temperature) return { temperature: start, duration: 0, law: `${prefix}already that cool` };
  const capacity = capacityWithWall(state, job);
  if (typeof capacity === "object") return { temperature, law: `${prefix}duration not known: ${capacity.missing}` };
  if (conductance === undefined) return { temperature, law: `${prefix}duration not known: no heat loss of the vessel` };
  try {
    const duration = coolingTime({
      heatCapacity: capacity,
      conductance,
      temperatureAmbient: job.process.temperatureRoom,
      temperatureStart: start,
      temperatureEnd: temperature,
    });
    return { temperature, duration, law: `${prefix}Newton cooling with the vessel's measured loss` };
  } catch (error) {
    return { law: `${prefix}not known: the room is too warm for it`, obstacle: obstacleOf(error) };
  }
}

/** The temperature at which the charge has a wanted viscosity, from readings of just this composition. */
function aim(state: State, viscosity: number, job: Job): Pick<Outcome, "law" | "temperature" | "obstacle"> {
  const readings = readingsFor(job, state.contents, "cooling");
  if (!readings)
    return {
      law: `not known: no viscosity readings on cooling of phases ${phasesOf(state.contents).join(" + ")} together`,
    };
  try {
    return {
      temperature: temperatureAtViscosity({ law: readings.law, viscosity }),
      law: `viscosity readings at ${readings.shearRate}`,
    };
  } catch (error) {
    return { law: "not known: the viscosity lies outside the readings", obstacle: obstacleOf(error) };
  }
}
