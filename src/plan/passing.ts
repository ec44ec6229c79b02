import { type Stretch, type SuppliedVessel, vesselLeg } from "../heat/index.js";
import type { Job } from "./job.js";
import type { Moment } from "./moment.js";
import { noSupply, vesselOf } from "./run/outcome.js";

type VesselStretch = Extract<Stretch, { stretch: "vessel" }>;

/**
 * When the melt that an addition meets passes a temperature [s since the start]: on the way of this plan, and beyond the
 * addition as if it were put off and the melt went on cooling as before. Nothing where a figure on the way is not known.
 */
export function timeOfPassing(
  temperature: number,
  moments: readonly Moment[],
  place: number,
  job: Job,
): number | undefined {
  const before = moments.slice(0, place);
  // What was charged before is in it from here on: an earlier melt was another one.
  const from = before.map(({ step }) => step.do === "charge" || step.do === "take off the heat").lastIndexOf(true);
  const start = before[from]?.after;
  if (!start || start.temperature === undefined) return undefined;
  let time = start.time;
  if (start.temperature <= temperature || time === undefined) return time;
  let last: VesselStretch | undefined;
  let at = start.temperature;
  for (const { stretches } of before.slice(from + 1)) {
    if (!stretches) return undefined;
    for (const stretch of stretches) {
      if (stretch.stretch === "ramp") time += stretch.duration;
      else {
        const { duration, temperatureEnd } = vesselLeg(stretch);
        if (temperatureEnd <= temperature) return time + durationTo(stretch, temperature);
        time += duration;
        at = temperatureEnd;
        last = stretch;
      }
    }
  }
  const cooling = last ?? vesselOf(moments[place]?.before ?? start, job, noSupply);
  return typeof cooling === "string" ? undefined : time + durationTo({ ...cooling, temperatureStart: at }, temperature);
}

function durationTo(vessel: SuppliedVessel & { readonly kinks?: readonly number[] }, temperatureEnd: number): number {
  const { temperatureStart, temperatureAmbient, heatCapacity, heatLoss, supply, kinks } = vessel;
  return vesselLeg({
    temperatureStart,
    temperatureAmbient,
    heatCapacity,
    heatLoss,
    supply,
    ...(kinks && { kinks }),
    temperatureEnd,
  }).duration;
}
