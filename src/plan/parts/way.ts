import { type Segment, vesselSegment } from "../../heat/index.js";
import { viscosityBreakpoints } from "../../laws/index.js";
import type { Suspension } from "../../particles/index.js";
import { velocityCurve } from "../../particles/velocity-curve.js";
import { endOf } from "../segments.js";
import { along, by } from "../unknown.js";

/** The way of a particle of a diameter in one stretch [m], from a temperature on down. */
export type Way = (diameter: number, from: number) => number;

/** Whether a melt cools in a segment by the balance of its heat, so that its way of cooling follows from its temperature alone. */
export function coolsByItself(segment: Segment): segment is Extract<Segment, { readonly kind: "vessel" }> {
  return segment.kind === "vessel" && endOf(segment).temperatureEnd < segment.temperatureStart;
}

/**
 * What particles do in one segment of a melt that cools, until it sets: by what it goes through in this run, the heat of
 * stirring included. They meet the melt, and are asked about it, some kelvins cooler than the segment has it, if what
 * comes in with them has cooled it by as much.
 */
export function wayAlong(suspension: Suspension, sets: number, segment: Segment, cooled: number = 0): readonly Way[] {
  const start = segment.temperatureStart - cooled;
  if (!coolsByItself(segment) || start <= sets) return [];
  const end = Math.max(endOf(segment).temperatureEnd - cooled, sets);
  const { heatCapacity, heatLoss, heatSource, temperatureAmbient, breakpoints: stated = [] } = segment;
  const ofMelt = viscosityBreakpoints(suspension.viscosity);
  const breakpoints = [...stated, ...ofMelt.map((breakpoint) => breakpoint + cooled)];
  const vessel = { heatCapacity, heatLoss, heatSource, temperatureAmbient, breakpoints };
  const velocityOf = along((diameter) => velocityCurve({ ...suspension, diameter }, "extend").velocityAt);
  const between = (from: number, to: number, diameter: number): number => {
    const velocityAt = velocityOf(diameter);
    const rates = { distance: (temperature: number): number => velocityAt(temperature - cooled) };
    const [temperatureStart, temperatureEnd] = [from + cooled, to + cooled];
    return by("settling", () => vesselSegment({ ...vessel, temperatureStart, temperatureEnd, rates })).totals.distance;
  };
  // A search for the warmest melt asks from many temperatures: all but the way to the next breakpoint is the same again.
  const stops = breakpoints.map((breakpoint) => breakpoint - cooled).filter((stop) => stop < start && stop > end);
  const nextOf = (from: number): number => Math.max(end, ...stops.filter((stop) => stop < from));
  const wayFrom = (from: number, diameter: number): number => {
    if (from <= end) return 0;
    const next = nextOf(from);
    return between(from, next, diameter) + toEnd(next)(diameter);
  };
  const toEnd = along((from) => along((diameter): number => wayFrom(from, diameter)));
  return [(diameter, from) => (from < start ? wayFrom(from, diameter) : toEnd(start)(diameter))];
}
