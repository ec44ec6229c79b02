import { type HeatSource, vesselSegment } from "../../heat/index.js";
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
    return { temperature: state.temperature, onHeat: true, duration: 0, law: "already that warm", segments: [] };
  const given = heaterOf(state, step.temperature, job);
  if (typeof given === "string") return { ...known, law: `duration not known: ${given}` };
  const vessel = vesselOf(state, job, given.heatSource);
  if (typeof vessel === "string") return { ...known, law: `duration not known: ${vessel}` };
  const between = [vessel.temperatureStart, step.temperature] as const;
  const stirred = withStirring({ ...state, onHeat: true }, job, speedIn(step, job), vessel.heatSource, between);
  const segment = {
    ...vessel,
    heatSource: stirred.heatSource,
    breakpoints: [...vessel.breakpoints, ...stirred.breakpoints],
    temperatureEnd: step.temperature,
  };
  return attempt(
    () => {
      const { duration } = vesselSegment(segment);
      const latent = vessel.breakpoints.length > 0 ? "; latent heat of what melts included" : "";
      return {
        ...known,
        duration,
        law: `${given.by} against ${loss?.from}${latent}${stirred.said}`,
        segments: [{ kind: "vessel", ...segment }],
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
): { readonly heatSource: HeatSource | undefined; readonly by: string } | string {
  const { heater, heatedWall } = job.vessel;
  if (!heater) return { heatSource: undefined, by: "" };
  const { power, temperatureMax } = heater;
  if (temperatureMax === undefined || !heatedWall)
    return { heatSource: { kind: "power", power }, by: "constant heater power" };
  const inside = insideOf(job, heatedWall, contents, [temperature, temperatureEnd], "heating");
  if (typeof inside === "string") return `how heat passes from the heater, ${inside}`;
  const { area } = heatedWall;
  return {
    heatSource: {
      kind: "medium",
      temperature: temperatureMax,
      conductance: inside.stated === undefined ? (at) => area * inside.at(at, temperatureMax) : area * inside.stated,
      powerMax: power,
    },
    by: `heater limited by its temperature${inside.stated === undefined ? `, ${inside.from},` : ""}`,
  };
}
