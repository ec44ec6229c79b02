import { type HeatedVessel, type Segment, vesselSegment } from "../heat/index.js";
import type { Job } from "./job.js";
import type { Moment } from "./moment.js";
import { noHeatSource, vesselOf } from "./run/outcome.js";

type VesselSegment = Extract<Segment, { kind: "vessel" }>;

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
  let last: VesselSegment | undefined;
  let at = start.temperature;
  for (const { segments } of before.slice(from + 1)) {
    if (!segments) return undefined;
    for (const segment of segments) {
      if (segment.kind === "ramp") time += segment.duration;
      else {
        const { duration, temperatureEnd } = vesselSegment(segment);
        if (temperatureEnd <= temperature) return time + durationTo(segment, temperature);
        time += duration;
        at = temperatureEnd;
        last = segment;
      }
    }
  }
  const cooling = last ?? vesselOf(moments[place]?.before ?? start, job, noHeatSource);
  return typeof cooling === "string" ? undefined : time + durationTo({ ...cooling, temperatureStart: at }, temperature);
}

function durationTo(
  vessel: HeatedVessel & { readonly breakpoints?: readonly number[] },
  temperatureEnd: number,
): number {
  const { temperatureStart, temperatureAmbient, heatCapacity, heatLoss, heatSource, breakpoints } = vessel;
  return vesselSegment({
    temperatureStart,
    temperatureAmbient,
    heatCapacity,
    heatLoss,
    heatSource,
    ...(breakpoints && { breakpoints }),
    temperatureEnd,
  }).duration;
}
