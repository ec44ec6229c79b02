import type { Particle } from "../../formula/index.js";
import { settlingOverCooling, settlingOverCurve } from "../../particles/index.js";
import { type Basis, between, exactly, type Figure } from "../figure.js";
import { packCooling } from "../pack.js";
import { remembered } from "../setting.js";
import type { Moment, Run } from "../state.js";
import { by, type Cell, cell, otherwise, type Reason, stated } from "../unknown.js";
import { gelOf } from "./droplets.js";
import { dragOf, type Entering, suspensionOf } from "./entering.js";
import { byReadings } from "./melt.js";
import { fillingOf, lastState } from "./moments.js";
import { traceOf } from "./passing.js";

/** How far particles of one size settle before the gel sets, downwards positive [m]. */
export interface Settled {
  readonly inVessel: number;
  readonly inPack: Cell<number>;
}

/** Which pack is looked at: the first is the hottest, the last has stood in the vessel longest. */
export type WhichPack = "first-pack" | "last-pack";

/** How far particles of a diameter settle [m], one after another. */
type Settling = (diameter: number) => Settled;

/** The way of a particle of a diameter in one stretch [m]. */
type Way = (diameter: number) => number;

/** Steps that keep particles moving. */
const stirs = new Set(["stir", "add"]);

/** How particles settle on their way into a pack, as if nothing were stirred but where a step says so. */
export function settlingOf(entering: Entering, which: WhichPack): Settling {
  return settlingsOf(entering)[which]();
}

const settlingsOf: (entering: Entering) => Readonly<Record<WhichPack, Cell<Settling>>> = remembered(
  (entering: Entering) => ({
    "first-pack": cell(() => settlingInto(entering, "first-pack")),
    "last-pack": cell(() => settlingInto(entering, "last-pack")),
  }),
);

function settlingInto({ run, particle, place }: Entering, which: WhichPack): Settling {
  const { moments } = run;
  const isFirst = which === "first-pack";
  const way = moments
    .slice(place + 1)
    // The first pack leaves the vessel as filling begins.
    .filter(({ step }) => !stirs.has(step.do) && !(isFirst && step.do === "fill"))
    .flatMap((moment) => wayIn(moment, particle));
  const inPack = cell(() => wayInPack(run, particle, isFirst));
  return (diameter) => ({
    inVessel: way.reduce((sum, one) => sum + one(diameter), 0),
    inPack: cell(() => inPack()(diameter)),
  });
}

/** What particles do in one moment in the vessel. Each composition is asked for its own readings. */
function wayIn(moment: Moment, particle: Particle): readonly Way[] {
  const { step, before, after } = moment;
  if (before.inPacks) return [];
  const charge = after.inPacks ? before.charge : after.charge;
  const [temperatureStart, end] = [before.temperature(), after.temperature()];
  const stands = step.do === "rest" && end === temperatureStart;
  if (end >= temperatureStart && !stands) return [];
  const suspension = suspensionOf(charge, particle);
  const { sets } = suspension;
  if (temperatureStart <= sets) return [];
  const temperatureEnd = Math.max(end, sets);
  const isJacketed = "with" in step && step.with === "jacket";
  if (!stands && !isJacketed)
    return [
      (diameter) =>
        by("settling", () =>
          settlingOverCooling({ ...suspension, diameter, beyond: "extend", temperatureStart, temperatureEnd }),
        ).distance,
    ];
  const trace = traceOf(moment.segments(), temperatureEnd);
  return trace.times.length < 2
    ? []
    : [
        (diameter) =>
          by("settling", () => settlingOverCurve({ ...suspension, diameter, beyond: "extend", ...trace })).distance,
      ];
}

/** What particles do in a pack until it has set. What has set in the vessel settles no further. */
function wayInPack(run: Run, particle: Particle, isFirst: boolean): Way {
  const { charge } = gelOf(run);
  const suspension = suspensionOf(charge, particle);
  const { sets } = suspension;
  const hasSet = otherwise(
    () => lastState(run).temperature() <= sets && !lastState(run).inPacks,
    () => false,
  );
  if (hasSet) return () => 0;
  const { before, after } = fillingOf(run);
  const temperature = (isFirst ? before : after).temperature();
  if (temperature <= sets) return () => 0;
  const curve = packCooling(after.charge, temperature, run.scaled).curve(sets);
  return (diameter) =>
    by("settling", () => settlingOverCurve({ ...suspension, diameter, beyond: "extend", ...curve })).distance;
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
  const figure = otherwise(
    () => exactly(Math.abs(inVessel + inPack()), basis),
    () => between(Math.abs(inVessel), null, basis),
  );
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
  const settling = settlingOf(entering, which);
  let beyond = 0;
  let whole = 0;
  for (const { diameter, massFraction } of particle.sizes ?? [{ diameter: particle.diameter, massFraction: 1 }]) {
    const { inVessel, inPack } = settling(diameter);
    whole += massFraction;
    if (Math.abs(inVessel + inPack()) > allowed) beyond += massFraction;
  }
  return beyond / whole;
}
