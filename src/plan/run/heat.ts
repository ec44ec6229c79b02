import { vesselLeg } from "../../heat/index.js";
import type { Job, Step } from "../job.js";
import type { State } from "../moment.js";
import { type Outcome, obstacleOf, vesselOf } from "./outcome.js";

type Heat = Extract<Step, { do: "heat" }>;

/** Heats with all that the heater gives, against the loss, through whatever melts. */
export function heat(state: State, step: Heat, job: Job): Outcome {
  const known = { temperature: step.temperature, onHeat: true };
  const { supply, loss } = job.vessel;
  if (state.temperature !== undefined && state.temperature >= step.temperature)
    return { temperature: state.temperature, onHeat: true, duration: 0, law: "already that warm", stretches: [] };
  const vessel = vesselOf(state, job, supply);
  if (typeof vessel === "string") return { ...known, law: `duration not known: ${vessel}` };
  const leg = { ...vessel, temperatureEnd: step.temperature };
  try {
    const { duration } = vesselLeg(leg);
    const by = supply?.supply === "medium" ? "heater limited by its temperature" : "constant heater power";
    const latent = vessel.kinks.length > 0 ? "; latent heat of what melts included" : "";
    return {
      ...known,
      duration,
      law: `${by} against ${loss?.from}${latent}`,
      stretches: [{ stretch: "vessel", ...leg }],
    };
  } catch (error) {
    return {
      onHeat: true,
      law: "not known: the heater does not reach it, or a law ends before",
      obstacle: obstacleOf(error),
    };
  }
}
