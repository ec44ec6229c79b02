import { type HeatedVessel, type Segment, vesselSegment, vesselTimes } from "../../heat/index.js";
import { balanceOf, noSource } from "../balance.js";
import { endOf, type VesselSegment } from "../segments.js";
import type { Run } from "../state.js";
import { by, unknown } from "../unknown.js";

/** Steps after which the melt is another one, or begins to cool. */
const startsAnew = new Set(["charge", "add", "take off the heat"]);

/**
 * When the melt that an addition meets passes a temperature [s since the start]: during this run, and beyond the
 * addition as if it were put off and the melt went on cooling as before.
 */
export function timeOfPassing(temperature: number, { moments }: Run, place: number): number {
  const before = moments.slice(0, place);
  const from = before.map(({ step }) => startsAnew.has(step.do)).lastIndexOf(true);
  const start = before[from]?.after ?? unknown("not-done");
  let time = start.time();
  let at = start.temperature();
  if (at <= temperature) return time;
  let last: VesselSegment | undefined;
  for (const segment of before.slice(from + 1).flatMap(({ segments }) => segments())) {
    if (segment.kind === "ramp") {
      time += segment.duration;
      continue;
    }
    const { duration, temperatureEnd } = endOf(segment);
    if (temperatureEnd <= temperature) return time + durationTo(segment, segment.temperatureStart, temperature);
    time += duration;
    at = temperatureEnd;
    last = segment;
  }
  const cooling = last ?? balanceOf(moments[place]?.before ?? start, noSource).vessel;
  return time + durationTo(cooling, at, temperature);
}

/** How long a vessel takes from one temperature to another [s]. */
function durationTo(
  {
    temperatureAmbient,
    heatCapacity,
    heatLoss,
    heatSource,
    breakpoints = [],
  }: HeatedVessel & Pick<VesselSegment, "breakpoints">,
  temperatureStart: number,
  temperatureEnd: number,
): number {
  const vessel = { temperatureStart, temperatureAmbient, heatCapacity, heatLoss, heatSource, breakpoints };
  return by("heat-balance", () => vesselSegment({ ...vessel, temperatureEnd }).duration);
}

/** How the charge cools through segments down to a temperature, as times [s] and temperatures [°C] for what moves in it meanwhile. */
export function traceOf(
  segments: readonly Segment[],
  temperatureEnd: number,
): { readonly times: readonly number[]; readonly temperatures: readonly number[] } {
  const times: number[] = [];
  const temperatures: number[] = [];
  let time = 0;
  const add = (duration: number, temperature: number): void => {
    if (times.length > 0 && time + duration <= (times.at(-1) as number)) return;
    times.push(time + duration);
    temperatures.push(temperature);
  };
  for (const segment of segments) {
    const start = segment.temperatureStart;
    const whole = segment.kind === "ramp" ? segment : endOf(segment);
    if (start <= temperatureEnd && whole.temperatureEnd <= temperatureEnd) break;
    const end = Math.max(whole.temperatureEnd, temperatureEnd);
    add(0, start);
    if (segment.kind === "ramp" || start === whole.temperatureEnd) {
      const level = start === whole.temperatureEnd;
      for (let i = 1; i <= pointsOfTrace; i++) {
        const at = start + ((end - start) * i) / pointsOfTrace;
        add(whole.duration * (level ? i / pointsOfTrace : (at - start) / (whole.temperatureEnd - start)), at);
      }
    } else {
      const { temperatureAmbient, heatCapacity, heatLoss, heatSource, breakpoints = [] } = segment;
      const vessel = { temperatureStart: start, temperatureAmbient, heatCapacity, heatLoss, heatSource, breakpoints };
      const points = Array.from({ length: pointsOfTrace }, (_, i) => start + ((end - start) * (i + 1)) / pointsOfTrace);
      by("heat-balance", () => vesselTimes({ ...vessel, temperatures: points })).forEach((after, i) => {
        add(after, points[i] as number);
      });
    }
    time = times.at(-1) as number;
  }
  return { times, temperatures };
}

/** As many as leave the end of a window within a thousandth of a kelvin where a melt thickens fast, held against an ODE solver in tests/references/plan. */
const pointsOfTrace = 120;
