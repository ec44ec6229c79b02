import { type Segment, vesselSegment } from "../../heat/index.js";
import { densityFunction, viscosityBreakpoints, viscosityFunction } from "../../laws/index.js";
import { hinderedFactor, type Suspension, terminalVelocity } from "../../particles/index.js";
import { endOf } from "../segments.js";
import { along, by } from "../unknown.js";

/** The way of a particle of a diameter in one stretch [m], from a temperature on down. */
export type Way = (diameter: number, from: number) => number;

/** What particles do in one segment of a melt that cools, until it sets: by what it goes through in this run, the heat of stirring included. */
export function wayAlong(suspension: Suspension, sets: number, segment: Segment): readonly Way[] {
  const { temperatureStart: start } = segment;
  if (segment.kind === "ramp" || start <= sets) return [];
  const end = Math.max(endOf(segment).temperatureEnd, sets);
  if (end >= start) return [];
  const { heatCapacity, heatLoss, heatSource, temperatureAmbient, breakpoints: stated = [] } = segment;
  const breakpoints = [...stated, ...viscosityBreakpoints(suspension.viscosity)];
  const vessel = { heatCapacity, heatLoss, heatSource, temperatureAmbient, breakpoints, temperatureEnd: end };
  const wayFrom = (temperatureStart: number, diameter: number): number => {
    const rates = { distance: velocityIn(suspension, diameter) };
    return by("settling", () => vesselSegment({ ...vessel, temperatureStart, rates })).totals.distance;
  };
  // A search for the warmest melt asks for the whole again and again.
  const whole = along((diameter) => wayFrom(start, diameter));
  return [
    (diameter, from) => {
      if (from <= end) return 0;
      return from >= start ? whole(diameter) : wayFrom(from, diameter);
    },
  ];
}

/** Laws that are the same at every Reynolds number, and so is what slows particles among their like. */
const creeping = new Set(["stokes", "disc", "spheroid"]);

/** The velocity of particles of a diameter among their like [m/s], downwards positive, by the temperature of the melt. */
function velocityIn(
  { densityParticle, densityFluid: density, viscosity: law, volumeFraction = 0, drag = { law: "stokes" } }: Suspension,
  diameter: number,
): (temperature: number) => number {
  const viscosityOf = viscosityFunction(law, { beyond: "extend" });
  const densityOf = densityFunction(density);
  return (temperature) => {
    const densityFluid = densityOf(temperature);
    const viscosity = viscosityOf(temperature);
    const one = { diameter, densityParticle, densityFluid, viscosity, drag, beyond: "extend" } as const;
    const { velocity, reynolds } = terminalVelocity(one);
    return velocity * hinderedFactor({ volumeFraction, reynolds: creeping.has(drag.law) ? 0 : reynolds });
  };
}
