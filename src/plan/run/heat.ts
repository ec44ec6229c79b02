import { heatingTime } from "../../heat/index.js";
import type { Job, Step } from "../job.js";
import type { State } from "../moment.js";
import { capacityWithWall, type Outcome, obstacleOf } from "./outcome.js";

type Heat = Extract<Step, { do: "heat" }>;

export function heat(state: State, step: Heat, job: Job): Outcome {
  const known = { temperature: step.temperature, onHeat: true };
  const { power, conductance } = job.vessel;
  const start = state.temperature;
  const capacity = capacityWithWall(state, job);
  if (start === undefined) return { ...known, law: "duration not known: the temperature before is not known" };
  if (start >= step.temperature) return { temperature: start, onHeat: true, duration: 0, law: "already that warm" };
  if (typeof capacity === "object") return { ...known, law: `duration not known: ${capacity.missing}` };
  if (power === undefined) return { ...known, law: "duration not known: no heater power" };
  if (conductance === undefined) return { ...known, law: "duration not known: no heat loss of the vessel" };
  const melting = state.contents
    .flatMap(({ material, mass }) =>
      material.melting
        ? [{ temperature: material.melting.temperature, latentHeat: material.melting.latentHeat * mass }]
        : [],
    )
    .filter(({ temperature }) => temperature > start && temperature <= step.temperature)
    .sort((one, other) => one.temperature - other.temperature);
  // One leg a melting point: each ends when what melts there has melted.
  const legs = [...melting, { temperature: step.temperature, latentHeat: 0 }];
  let from = start;
  let duration = 0;
  try {
    for (const { temperature: to, latentHeat } of legs) {
      const leg = {
        power,
        conductance,
        temperatureAmbient: job.process.temperatureRoom,
        temperatureStart: from,
        temperatureEnd: to,
        heatCapacity: capacity,
      };
      duration += heatingTime(
        latentHeat > 0 ? { ...leg, melting: { temperature: to, latentHeat, heatCapacityMelt: capacity } } : leg,
      ).duration;
      from = to;
    }
  } catch (error) {
    return { ...known, law: "duration not known: the heater does not reach it", obstacle: obstacleOf(error) };
  }
  const latent = melting.length > 0 ? "; latent heat of what melts included" : "";
  return { ...known, duration, law: `constant heater power against the vessel's measured loss${latent}` };
}
