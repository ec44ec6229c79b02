import { vesselSegment } from "../../heat/index.js";
import { densityAt } from "../../laws/index.js";
import {
  type Bubble,
  bubbleRise,
  clearingOverCooling,
  largestSuspendedDiameter,
  riseOverCooling,
  settlingOverCurve,
} from "../../particles/index.js";
import { exactly, type Figure } from "../figure.js";
import type { Job } from "../job.js";
import { packCooling } from "../pack.js";
import { remembered } from "../setting.js";
import type { Moment, Run, State } from "../state.js";
import { levelAt } from "../stirred.js";
import { by, type Cell, cell, stated, unknown } from "../unknown.js";
import { gelOf } from "./droplets.js";
import { byReadings, densityOfAir, meltOf } from "./melt.js";
import { fillingOf, isMelt } from "./moments.js";
import { yieldStressFigure } from "./yield-stress.js";

type Air = NonNullable<Job["process"]["air"]>;

/** 0 °C [K]. */
const kelvin = 273.15;

/** The bubbles that the process asks about. */
export function airAsked({ job }: Run): Air {
  return stated(job.process.air, "process-air");
}

/** The bubbles as the kernels take them. */
export function bubbleOf({
  bubbleDiameter: diameter,
  surface,
}: Air): Pick<Bubble, "diameter" | "surface"> & { readonly beyond: "extend" } {
  return { diameter, ...(surface && { surface }), beyond: "extend" };
}

/** One stretch in which the melt cools off the heat, without stirring or an addition. */
export interface AirSegment {
  /** Step after which it begins, and step by whose end it is over; from 1. */
  readonly fromStep: number;
  readonly toStep: number;
  /** The vessel as it begins. */
  readonly start: State;
  /** How deep the melt is [m]. */
  readonly depth: Cell<number>;
  /** How far bubbles rise through it [m]. */
  readonly distance: Cell<Figure>;
  /** Until the whole depth is clear [s]; not known if it is not by the end. */
  readonly durationToClear: Cell<number>;
}

/** Each time that the melt stands off the heat without an addition or stirring that a step speaks of. */
export const airSegmentsIn: (run: Run) => readonly AirSegment[] = remembered((run: Run): readonly AirSegment[] => {
  const { moments } = run;
  return moments.flatMap((moment, place): readonly AirSegment[] => {
    const isFilling = moment.step.do === "fill" && !moment.speed && isMelt(moment.before.charge);
    if (!isFilling && !isQuiet(moment)) return [];
    // Only the last of several in a row: it began where the first did.
    const next = moments[place + 1];
    if (next && isQuiet(next)) return [];
    const rest = moments
      .slice(0, place)
      .map((one) => !isQuiet(one))
      .lastIndexOf(true);
    const stretch = moments.slice(rest + 1, place + 1);
    return [segmentOf(run, stretch, moment)];
  });
});

function isQuiet({ step, before }: Moment): boolean {
  const stands = step.do === "cool" || step.do === "rest" || (step.do === "hold" && !before.onHeat);
  return stands && !before.inPacks && isMelt(before.charge);
}

/** Whether the vessel is kept warm or cooled on purpose in a step, so that its own cooling does not describe it. */
function isHeld({ step }: Moment): boolean {
  return step.do === "hold" || "held" in step || "jacketAt" in step || ("with" in step && step.with === "jacket");
}

function segmentOf(run: Run, stretch: readonly Moment[], last: Moment): AirSegment {
  const [first = last] = stretch;
  const start = first.before;
  const depth = cell(() => levelAt(start.charge, start.temperature()));
  const cooling = cell(() => coolingOf(run, start, last.after));
  const byItself = cell(() => !stretch.some(isHeld) && cooling().temperatureEnd < cooling().temperatureStart);
  const distance = cell(() =>
    byItself()
      ? by("bubble-rise", () => riseOverCooling(cooling())).distance
      : stretch.reduce((sum, moment) => sum + riseIn(run, moment, start.temperature()), 0),
  );
  return {
    fromStep: first.number - 1,
    toStep: last.number,
    start,
    depth,
    distance: cell(() =>
      byReadings(
        start.charge,
        () => [start.temperature(), cooling().temperatureEnd],
        exactly(distance(), [{ kind: "law", key: "bubble-rise" }]),
      ),
    ),
    durationToClear: cell(() => {
      if (distance() < depth()) unknown("nothing-there");
      if (!byItself()) unknown("no-method");
      return by("bubble-rise", () => clearingOverCooling({ ...cooling(), depth: depth() })).duration;
    }),
  };
}

/** Bubbles in a melt that cools by itself from one state to another, or until it sets. */
function coolingOf(run: Run, { charge, temperature }: State, end: State) {
  const { sets, ...melt } = meltOf(charge);
  const temperatureStart = temperature();
  const temperatureEnd = Math.max(end.temperature(), sets);
  return { ...melt, ...bubbleOf(airAsked(run)), temperatureStart, temperatureEnd };
}

/** How far bubbles rise in one moment, through whatever the melt goes through in it while it has not set [m]. */
function riseIn(run: Run, { before: { charge }, segments }: Moment, temperatureStart: number): number {
  const { sets, densityFluid: law } = meltOf(charge);
  const { at: viscosityAt, breakpoints } = charge.readings("cooling");
  const bubble = bubbleOf(airAsked(run));
  const velocityAt = (temperature: number): number => {
    // The gas shrinks as it cools.
    const diameter = bubble.diameter * Math.cbrt((temperature + kelvin) / (temperatureStart + kelvin));
    const densityFluid = densityAt({ law, temperature });
    return bubbleRise({ ...bubble, diameter, densityFluid, viscosity: viscosityAt(temperature) }).velocity;
  };
  return by("bubble-rise", () =>
    segments().reduce((sum, segment) => {
      const { temperatureStart: from } = segment;
      if (from <= sets) return sum;
      if (segment.kind === "ramp") return sum + segment.duration * velocityAt(from);
      const { temperatureEnd } = vesselSegment(segment);
      const end = temperatureEnd < sets ? { temperatureEnd: sets, duration: undefined } : {};
      const rates = { distance: velocityAt };
      const all = [...(segment.breakpoints ?? []), ...breakpoints];
      return (
        sum +
        vesselSegment({ ...segment, ...end, rates, breakpoints: all } as typeof segment & { rates: typeof rates })
          .totals.distance
      );
    }, 0),
  );
}

/** How far bubbles rise in the last pack before it has set, as stiff spheres as light as air, and how deep that is [m]. */
export function riseInPack(run: Run): { readonly distance: number; readonly depth: number } {
  const { height: depth } = stated(run.job.pack?.content, "pack-cooling");
  const { charge, temperature } = fillingOf(run).after;
  const { sets, viscosity, densityFluid } = meltOf(gelOf(run).charge);
  if (temperature() <= sets) return { distance: 0, depth };
  const { diameter } = bubbleOf(airAsked(run));
  const curve = packCooling(charge, temperature(), run.scaled).curve(sets);
  const bubble = { viscosity, densityFluid, diameter, densityParticle: densityOfAir, beyond: "extend" } as const;
  return { distance: Math.abs(by("bubble-rise", () => settlingOverCurve({ ...bubble, ...curve })).distance), depth };
}

/** Up to which diameter a gel with the yield stress of the finished one holds bubbles [m]: surely up to `min`, above `max` not. */
export function heldBubbles(run: Run, densityFluid: number): Figure {
  const { min, value, max } = yieldStressFigure(run);
  const held = (yieldStress: number) =>
    by("bubble-held", () => largestSuspendedDiameter({ yieldStress, densityParticle: densityOfAir, densityFluid }));
  return {
    min: held(min).min,
    value: held(value).value,
    max: held(max).max,
    basis: [{ kind: "law", key: "bubble-held" }],
  };
}
