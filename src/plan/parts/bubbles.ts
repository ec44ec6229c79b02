import { largestSuspendedDiameter, settlingOverCurve } from "../../particles/index.js";
import { exactly, type Figure } from "../figure.js";
import { levelAt } from "../level.js";
import { packCooling } from "../pack.js";
import type { Moment, Run, State } from "../state.js";
import { by, type Cell, cell, remembered, stated, unknown } from "../unknown.js";
import { airAsked, bubbleOf } from "./bubble.js";
import { gelOf } from "./droplets.js";
import { byReadings, densityOfAir, meltOf } from "./melt.js";
import { fillingOf, isMelt } from "./moments.js";
import { durationOfRise, risesIn } from "./rising.js";
import { yieldStressFigure } from "./yield-stress.js";

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

function segmentOf(run: Run, stretch: readonly Moment[], last: Moment): AirSegment {
  const [first = last] = stretch;
  const start = first.before;
  const depth = cell(() => levelAt(start.charge, start.temperature()));
  const rises = cell(() => stretch.flatMap((moment) => risesIn(run, moment, start.temperature())));
  const distance = cell(() => rises().reduce((sum, rise) => sum + rise.distance, 0));
  return {
    fromStep: first.number - 1,
    toStep: last.number,
    start,
    depth,
    distance: cell(() =>
      byReadings(
        start.charge,
        () => [start.temperature(), Math.max(last.after.temperature(), start.charge.setting().temperature)],
        exactly(distance(), [{ kind: "law", key: "bubble-rise" }]),
      ),
    ),
    durationToClear: cell(() => {
      if (distance() < depth()) unknown("nothing-there");
      return by("bubble-rise", () => durationOfRise(rises(), depth()));
    }),
  };
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
