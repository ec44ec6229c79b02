import { type Supply, vesselLeg } from "../../heat/index.js";
import { attempt } from "../attempt.js";
import { insideOf } from "../inside.js";
import type { Job, Step } from "../job.js";
import type { State } from "../moment.js";
import { speedIn } from "../stirring.js";
import { type Outcome, vesselOf } from "./outcome.js";
import { withStirring } from "./stirred.js";

type Heat = Extract<Step, { do: "heat" }>;

/** Heats with all that the heater gives, against the loss, through whatever melts. */
export function heat(state: State, step: Heat, job: Job): Outcome {
  const known = { temperature: step.temperature, onHeat: true };
  const { loss } = job.vessel;
  if (state.temperature !== undefined && state.temperature >= step.temperature)
    return { temperature: state.temperature, onHeat: true, duration: 0, law: "already that warm", stretches: [] };
  const given = heaterOf(state, step.temperature, job);
  if (typeof given === "string") return { ...known, law: `duration not known: ${given}` };
  const vessel = vesselOf(state, job, given.supply);
  if (typeof vessel === "string") return { ...known, law: `duration not known: ${vessel}` };
  const between = [vessel.temperatureStart, step.temperature] as const;
  const stirred = withStirring({ ...state, onHeat: true }, job, speedIn(step, job), vessel.supply, between);
  const leg = {
    ...vessel,
    supply: stirred.supply,
    kinks: [...vessel.kinks, ...stirred.kinks],
    temperatureEnd: step.temperature,
  };
  return attempt(
    () => {
      const { duration } = vesselLeg(leg);
      const latent = vessel.kinks.length > 0 ? "; latent heat of what melts included" : "";
      return {
        ...known,
        duration,
        law: `${given.by} against ${loss?.from}${latent}${stirred.said}`,
        stretches: [{ stretch: "vessel", ...leg }],
      };
    },
    (refusal) => ({
      onHeat: true,
      law: "not known: the heater does not reach it, or a law ends before",
      obstacle: refusal.message,
    }),
  );
}

/** The heater: its power, or where its temperature limits it, what its wall passes and no more than its power. */
function heaterOf(
  { contents, temperature = Number.NaN }: State,
  temperatureEnd: number,
  job: Job,
): { readonly supply: Supply | undefined; readonly by: string } | string {
  const { heater, heatedWall } = job.vessel;
  if (!heater) return { supply: undefined, by: "" };
  const { power, temperatureHighest } = heater;
  if (temperatureHighest === undefined || !heatedWall)
    return { supply: { supply: "power", power }, by: "constant heater power" };
  const inside = insideOf(job, heatedWall, contents, [temperature, temperatureEnd], "heating");
  if (typeof inside === "string") return `how heat passes from the heater, ${inside}`;
  const { area } = heatedWall;
  return {
    supply: {
      supply: "medium",
      temperature: temperatureHighest,
      conductance:
        inside.stated === undefined ? (at) => area * inside.at(at, temperatureHighest) : area * inside.stated,
      powerMost: power,
    },
    by: `heater limited by its temperature${inside.stated === undefined ? `, ${inside.from},` : ""}`,
  };
}
