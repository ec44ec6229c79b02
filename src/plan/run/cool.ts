import { jacketTime, vesselLeg } from "../../heat/index.js";
import { temperatureAtViscosity } from "../../laws/index.js";
import { heatCapacityOf, isMissing } from "../heat-capacity.js";
import type { Job, Step } from "../job.js";
import { phasesOf, type State } from "../moment.js";
import { readingsFor } from "../viscosity.js";
import { noSupply, type Outcome, obstacleOf, vesselOf } from "./outcome.js";

type Cool = Extract<Step, { do: "cool" }>;

/** Lets the charge cool to a temperature or a viscosity, by itself or through the jacket. */
export function cool(state: State, step: Cool, job: Job): Outcome {
  const { law, temperature, obstacle } =
    step.temperature === undefined
      ? aim(state, step.viscosity, job)
      : { law: "", temperature: step.temperature, obstacle: undefined };
  if (temperature === undefined) return { law, obstacle };
  const prefix = law && `${law}; `;
  if (state.temperature !== undefined && state.temperature <= temperature)
    return { temperature: state.temperature, duration: 0, law: `${prefix}already that cool`, stretches: [] };
  const outcome = step.jacket ? byJacket(state, temperature, job) : byItself(state, temperature, job);
  return { ...outcome, law: prefix + outcome.law };
}

function byItself(state: State, temperature: number, job: Job): Outcome {
  const vessel = vesselOf(state, job, noSupply);
  if (typeof vessel === "string") return { temperature, law: `duration not known: ${vessel}` };
  const leg = { ...vessel, temperatureEnd: temperature };
  try {
    const { duration } = vesselLeg(leg);
    return {
      temperature,
      duration,
      law: `cooling by ${job.vessel.loss?.from}`,
      stretches: [{ stretch: "vessel", ...leg }],
    };
  } catch (error) {
    return { law: "not known: the room is too warm for it", obstacle: obstacleOf(error) };
  }
}

/** Through the jacket, which is so much faster than the loss to the room that this is left out. */
function byJacket(state: State, temperature: number, { vessel }: Job): Outcome {
  const { jacket, wall } = vessel;
  const start = state.temperature;
  if (!jacket || start === undefined)
    return { temperature, law: "duration not known: the temperature before is not known" };
  const capacity = heatCapacityOf(state.contents, { wall });
  if (isMissing(capacity)) return { temperature, law: `duration not known: ${capacity.missing}` };
  try {
    const { duration } = jacketTime({
      // The mean over the leg: what the charge gives off, over its fall of temperature.
      heatCapacity: capacity.between(temperature, start) / (start - temperature),
      conductance: jacket.conductance,
      ...(jacket.capacityFlow !== undefined && { capacityFlow: jacket.capacityFlow }),
      temperatureInlet: jacket.temperature,
      temperatureStart: start,
      temperatureEnd: temperature,
    });
    return {
      temperature,
      duration,
      law: `cooling through the jacket, coolant ${jacket.capacityFlow === undefined ? "at one temperature" : "warming on its way"}; loss to the room left out`,
      stretches: [{ stretch: "ramp", temperatureStart: start, temperatureEnd: temperature, duration }],
    };
  } catch (error) {
    return { law: "not known: the coolant is too warm for it", obstacle: obstacleOf(error) };
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
