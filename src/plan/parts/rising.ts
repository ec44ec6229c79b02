import { type HeatedVessel, vesselSegment } from "../../heat/index.js";
import { densityFunction } from "../../laws/index.js";
import { root } from "../../numeric/root.js";
import { bubbleRise } from "../../particles/index.js";
import { endOf } from "../segments.js";
import type { Moment, Run } from "../state.js";
import { by } from "../unknown.js";
import { airAsked, bubbleOf } from "./bubble.js";
import { meltOf } from "./melt.js";

/** 0 °C [K]. */
const kelvin = 273.15;

/** How far bubbles rise in one segment of a melt that has not set. */
export interface Rise {
  /** [s]. */
  readonly duration: number;
  /** [m]. */
  readonly distance: number;
  /** Time from its start until they have risen so far [s]. */
  readonly after: (distance: number) => number;
}

/** How bubbles that are as wide as asked at a temperature rise in one moment, through whatever the melt goes through in it until it sets. */
export function risesIn(
  run: Run,
  { before: { charge }, segments }: Moment,
  temperatureOfWidth: number,
): readonly Rise[] {
  const { sets, densityFluid: law } = meltOf(charge);
  const { at: viscosityAt, breakpoints } = charge.readings("cooling");
  const bubble = bubbleOf(airAsked(run));
  const densityAt = densityFunction(law);
  const velocityAt = (temperature: number): number => {
    // The gas shrinks as it cools.
    const diameter = bubble.diameter * Math.cbrt((temperature + kelvin) / (temperatureOfWidth + kelvin));
    const densityFluid = densityAt(temperature);
    return bubbleRise({ ...bubble, diameter, densityFluid, viscosity: viscosityAt(temperature) }).velocity;
  };
  return by("bubble-rise", () =>
    segments().flatMap((segment): readonly Rise[] => {
      const { temperatureStart: from } = segment;
      if (from <= sets) return [];
      if (segment.kind === "ramp") return [level(segment.duration, velocityAt(from))];
      const { temperatureEnd, duration } = endOf(segment);
      const to = Math.max(temperatureEnd, sets);
      if (to === from) return [level(duration, velocityAt(from))];
      return [riseInVessel(segment, [...(segment.breakpoints ?? []), ...breakpoints], velocityAt, to)];
    }),
  );
}

/** At one temperature. */
function level(duration: number, velocity: number): Rise {
  return { duration, distance: duration * velocity, after: (way) => way / velocity };
}

function riseInVessel(
  { temperatureStart, heatCapacity, heatSource, heatLoss, temperatureAmbient }: HeatedVessel,
  breakpoints: readonly number[],
  velocityAt: (temperature: number) => number,
  end: number,
): Rise {
  const vessel = { temperatureStart, heatCapacity, heatSource, heatLoss, temperatureAmbient, breakpoints };
  const start: Risen = { temperature: temperatureStart, duration: 0, distance: 0 };
  /** Goes on from where bubbles have risen so far. */
  const on = (from: Risen, temperatureEnd: number): Risen => {
    if (temperatureEnd === from.temperature) return from;
    const { duration, totals } = vesselSegment({
      ...vessel,
      temperatureStart: from.temperature,
      temperatureEnd,
      rates: { distance: velocityAt },
    });
    return {
      temperature: temperatureEnd,
      duration: from.duration + duration,
      distance: from.distance + totals.distance,
    };
  };
  const whole = on(start, end);
  const after = (way: number): number => {
    // Each look goes on from the last that was too early.
    let early = start;
    const lacks = (at: number): number => {
      const there = at === end ? whole : on(early, at);
      if (there.distance < way) early = there;
      return there.distance - way;
    };
    const coolest = Math.min(end, temperatureStart);
    return on(early, root(lacks, coolest, Math.max(end, temperatureStart), "temperature", 1e-9)).duration;
  };
  return { duration: whole.duration, distance: whole.distance, after };
}

/** How far bubbles have risen on the way to a temperature. */
interface Risen {
  /** [°C]. */
  readonly temperature: number;
  /** [s]. */
  readonly duration: number;
  /** [m]. */
  readonly distance: number;
}

/** Time until bubbles have risen so far through segments that together let them [s]. */
export function durationOfRise(rises: readonly Rise[], distance: number): number {
  let [time, risen] = [0, 0];
  for (const rise of rises) {
    if (risen + rise.distance >= distance) return time + rise.after(distance - risen);
    time += rise.duration;
    risen += rise.distance;
  }
  return time;
}
