import type { Particle } from "../../formula/index.js";
import { type Suspension, settlingOverCurve } from "../../particles/index.js";
import type { TemperatureHistory } from "../../transient/index.js";
import { type Basis, between, type Figure } from "../figure.js";
import { levelAt } from "../level.js";
import { packCooling } from "../pack.js";
import type { Moment, Run } from "../state.js";
import { along, by, type Cell, cell, otherwise, type Reason, remembered, stated } from "../unknown.js";
import { gelOf } from "./droplets.js";
import { dragOf, type Entering, suspensionOf } from "./entering.js";
import { byReadings, meltOf } from "./melt.js";
import { fillingOf, lastState, type WhichPack } from "./moments.js";
import { traceOf } from "./passing.js";
import { keepsWarm, takenForGranted } from "./taken-for-granted.js";
import { coolsByItself, type Way, wayAlong } from "./way.js";

/** How far particles of one size settle before the gel sets, downwards positive [m]; no further than vessel and pack are deep. */
export interface Settled {
  readonly inVessel: number;
  readonly inPack: Cell<number>;
}

/** Whether particles may settle farther than was found, by an unknown distance: what was left out keeps the melt warm for longer. */
export function mayGoFarther({ run, place }: Entering, which: WhichPack): boolean {
  const filling = run.moments.findIndex(({ step }) => step.do === "fill");
  const last = filling < 0 || which === "last-pack" ? filling : filling - 1;
  return run.moments
    .slice(place + 1, last < 0 ? undefined : last + 1)
    .some(
      (moment) =>
        moment.warmest?.() === null ||
        [...(moment.assumptions?.() ?? []), ...takenForGranted(run, moment).assumptions].some(keepsWarm),
    );
}

/** How far particles of a diameter settle [m], of a melt that is no warmer than a temperature [°C] as they go in. */
type Settling = (diameter: number, from?: number) => Settled;

/** Steps that keep particles moving. */
const stirs = new Set(["stir", "add"]);

/** Whatever the temperature of the melt. */
const anyWarmth = Number.MAX_VALUE;

/** How particles settle on their way into a pack, as if nothing were stirred but where a step says so. */
export function settlingOf(entering: Entering, which: WhichPack): Settling {
  return settlingsOf(entering)[which]();
}

/** The same, if a vessel that is warmed while it is drained warms what is left for the last pack as much as it can. */
export function settlingAtWarmest(entering: Entering, which: WhichPack): Settling {
  const isWarmed = which === "last-pack" && entering.run.moments.some(({ warmest }) => warmest);
  return isWarmed ? settlingsOf(entering).warmest() : settlingOf(entering, which);
}

const settlingsOf: (entering: Entering) => Readonly<Record<WhichPack | "warmest", Cell<Settling>>> = remembered(
  (entering: Entering) => ({
    "first-pack": cell(() => settlingInto(entering, "first-pack")),
    "last-pack": cell(() => settlingInto(entering, "last-pack")),
    warmest: cell(() => settlingInto(entering, "last-pack", true)),
  }),
);

function settlingInto(entering: Entering, which: WhichPack, atWarmest = false): Settling {
  const { run, particle, place } = entering;
  const isFirst = which === "first-pack";
  const ways = run.moments
    .slice(place + 1)
    // The first pack leaves the vessel as filling begins.
    .filter(({ step, speed }) => !stirs.has(step.do) && !(step.do === "fill" && (isFirst || speed)))
    .flatMap((moment) => wayIn(moment, particle, atWarmest));
  const inPack = cell(() => wayInPack(run, particle, isFirst, atWarmest));
  const depth = depthOfVessel(entering);
  const through = (all: readonly Way[], diameter: number, from: number): Settled => {
    const inVessel = all.reduce((sum, one) => sum + one(diameter, from), 0);
    return { inVessel: noFurther(inVessel, depth), inPack: cell(() => inPack()(diameter, from)) };
  };
  const inThisRun = along((diameter) => through(ways, diameter, anyWarmth));
  // Had they gone in earlier, they would have been in the melt while that cooled to where they do.
  return (diameter, from) =>
    from === undefined ? inThisRun(diameter) : through([...waysBeforeOf(entering), ...ways], diameter, from);
}

/** Down to the bottom or up to the surface, and no further. */
function noFurther(distance: number, depth: number): number {
  return Math.abs(distance) > depth ? Math.sign(distance) * depth : distance;
}

/** How deep the charge is in the vessel with the particles in it [m]; no end where that is not known. */
function depthOfVessel({ after }: Entering): number {
  return otherwise(
    () => levelAt(after.charge, after.temperature()),
    () => Number.MAX_VALUE,
  );
}

/** What particles would have done in the moments before they went in, from when the heat was off. */
const waysBeforeOf: (entering: Entering) => readonly Way[] = remembered((entering: Entering) => {
  const { run, particle, place, before, after } = entering;
  const suspension = suspensionOf(after.charge, particle);
  const cooled = before.temperature() - after.temperature();
  const off = run.moments
    .slice(0, Math.max(0, place))
    .map(({ step }) => step.do === "take off the heat")
    .lastIndexOf(true);
  return run.moments
    .slice(off + 1, Math.max(0, place))
    .filter(({ step }) => !stirs.has(step.do))
    .flatMap((moment): readonly Way[] => {
      const { sets } = meltOf(after.charge);
      const segments = moment.segments();
      if (segments.every(coolsByItself))
        return segments.flatMap((segment) => wayAlong(suspension, sets, segment, cooled));
      const trace = traceOf(segments, sets + cooled);
      const temperatures = trace.temperatures.map((temperature) => temperature - cooled);
      return alongTrace(suspension, { times: trace.times, temperatures });
    });
});

/** What particles do in one moment in the vessel, if asked for as warm as it may be while it is drained. Each composition is asked for its own readings. */
function wayIn(moment: Moment, particle: Particle, atWarmest: boolean): readonly Way[] {
  const { step, before, after } = moment;
  if (before.inPacks) return [];
  const charge = after.inPacks ? before.charge : after.charge;
  const [start, end] = [before.temperature(), after.temperature()];
  const stands = keepsStill(moment) && end >= start;
  const { warmest } = moment;
  if (end >= start && !stands) return [];
  const suspension = suspensionOf(charge, particle);
  const { sets } = meltOf(charge);
  if (start <= sets) return [];
  if (atWarmest && warmest) {
    const hottest = Math.max(start, warmest() ?? start);
    const level = alongTrace(suspension, { times: [0, moment.duration()], temperatures: [hottest, hottest] });
    return level.map((way) => (diameter) => way(diameter, anyWarmth));
  }
  const isJacketed = ("with" in step && step.with === "jacket") || moment.warmedBy !== undefined || step.do === "hold";
  if (stands || isJacketed) return alongTrace(suspension, traceOf(moment.segments(), sets));
  // What goes in at once takes no time, and what stirring gives makes the melt cool for longer.
  return moment.segments().flatMap((segment) => wayAlong(suspension, sets, segment));
}

/** Whether a step may leave the charge as warm as it is without stirring it, or warmer: what stands, and what is kept warm. */
function keepsStill({ step, before, warmedBy }: Moment): boolean {
  if (step.do === "hold") return !before.onHeat;
  return step.do === "rest" || (step.do === "fill" && ("held" in step || warmedBy !== undefined));
}

/** What particles do along a curve of temperature that falls or stays level. */
function alongTrace(suspension: Suspension, trace: TemperatureHistory): readonly Way[] {
  const { times, temperatures } = trace;
  if (times.length < 2) return [];
  const settled = (diameter: number, part: TemperatureHistory): readonly number[] =>
    by("settling", () => settlingOverCurve({ ...suspension, diameter, beyond: "extend", ...part })).distances;
  // A search for the warmest melt asks for the same diameter from many temperatures.
  const wholeOf = along((diameter) => settled(diameter, trace));
  const at = (list: readonly number[], i: number): number => list[i] as number;
  const straightTo = along((next) =>
    along((diameter) => {
      const duration = at(times, next) - at(times, next - 1);
      return at(settled(diameter, { times: [0, duration], temperatures: temperatures.slice(next - 1, next + 1) }), 1);
    }),
  );
  return [
    (diameter, from) => {
      const next = temperatures.findIndex((temperature) => temperature <= from);
      if (next < 0) return 0;
      const distances = wholeOf(diameter);
      const rest = at(distances, distances.length - 1) - at(distances, next);
      if (next === 0) return rest;
      const [warm, cool] = [at(temperatures, next - 1), at(temperatures, next)];
      const time = ((warm - from) / (warm - cool)) * (at(times, next) - at(times, next - 1));
      const duration = at(times, next) - at(times, next - 1) - time;
      // So near to a point of the curve the point alone will do.
      if (!(duration > 0)) return rest;
      // Between two points the way is shared out as along the straight line through them.
      const straight = straightTo(next)(diameter);
      const [, part = 0] = settled(diameter, { times: [0, duration], temperatures: [from, cool] });
      const stretch = at(distances, next) - at(distances, next - 1);
      return rest + (straight === 0 ? 0 : (stretch * part) / straight);
    },
  ];
}

/** What particles do in a pack until it has set. What has set in the vessel settles no further. */
function wayInPack(run: Run, particle: Particle, isFirst: boolean, atWarmest: boolean): Way {
  const { charge } = gelOf(run);
  const suspension = suspensionOf(charge, particle);
  const { sets } = meltOf(charge);
  const hasSet = otherwise(
    () => lastState(run).temperature() <= sets && !lastState(run).inPacks,
    () => false,
  );
  if (hasSet) return () => 0;
  const { before, after, warmest } = fillingOf(run);
  const found = (isFirst ? before : after).temperature();
  const temperature = Math.max(found, (atWarmest && warmest?.()) || found);
  if (temperature <= sets) return () => 0;
  const [way = () => 0] = alongTrace(suspension, packCooling(after.charge, temperature, run.scaled).curve(sets));
  const depth = run.job.pack?.content?.height ?? Number.MAX_VALUE;
  return (diameter, from) => noFurther(way(diameter, from), depth);
}

/** The largest size of a material [m]: it settles farthest. */
export function largestOf({ diameter, sizes = [] }: Particle): number {
  const there = sizes.filter(({ massFraction }) => massFraction > 0).map((size) => size.diameter);
  return there.length > 0 ? Math.max(...there) : diameter;
}

/** How far the largest of the particles settle before the gel has set, up or down [m]; if the pack is not known, at least as far as in the vessel. */
export function settledFigure(entering: Entering, which: WhichPack): Figure {
  const { run, particle, material, after } = entering;
  const { inVessel, inPack } = settlingOf(entering, which)(largestOf(particle));
  const basis: readonly Basis[] = [
    { kind: "law", key: "settling" },
    { kind: "law", key: dragOf(particle).key, of: material.key },
  ];
  const found = otherwise<Figure, Figure>(
    () => {
      const value = Math.abs(inVessel + inPack());
      const farther = settlingAtWarmest(entering, which)(largestOf(particle));
      return { min: value, max: Math.max(value, Math.abs(farther.inVessel + farther.inPack())), value, basis };
    },
    () => between(Math.abs(inVessel), null, basis),
  );
  const figure = mayGoFarther(entering, which) ? { ...found, max: null } : found;
  const { charge } = gelOf(run);
  return byReadings(charge, () => [after.temperature(), charge.setting().temperature], figure);
}

/** Why the way in the pack is not known; nothing where it is known. */
export function packLacks(entering: Entering, which: WhichPack): Reason | undefined {
  return otherwise(
    () => {
      settlingOf(entering, which)(largestOf(entering.particle)).inPack();
      return undefined;
    },
    (reason) => reason,
  );
}

/** Share of the mass of the particles that settles further than allowed [0 to 1]. */
export function massFractionBeyond(entering: Entering, which: WhichPack): number {
  const { run, particle } = entering;
  const allowed = stated(run.job.bench.settlingAllowed, "bench-settling-max");
  const settling = settlingAtWarmest(entering, which);
  let beyond = 0;
  let whole = 0;
  for (const { diameter, massFraction } of particle.sizes ?? [{ diameter: particle.diameter, massFraction: 1 }]) {
    const { inVessel, inPack } = settling(diameter);
    whole += massFraction;
    if (Math.abs(inVessel + inPack()) > allowed) beyond += massFraction;
  }
  return beyond / whole;
}
