import { clearingTime } from "../../particles/index.js";
import { ofGel } from "../composition.js";
import { type Basis, between, exactly, type Figure } from "../figure.js";
import { levelAt } from "../level.js";
import type { Run, Turn } from "../state.js";
import { by, unknown } from "../unknown.js";
import { depthsIn } from "../vessel-shape.js";
import { airAsked, bubbleOf } from "./bubble.js";
import { heldBubbles } from "./bubbles.js";
import { byReadings } from "./melt.js";
import type { MomentOf } from "./moments.js";
import { movesAll, widthMoved } from "./moved.js";

/** Pressure under which bubbles were measured: that of the room [Pa], the standard atmosphere. */
const roomPressure = 101_325;

type Deaerating = MomentOf<"de-aerate">;

/** The bubbles of a de-aerating step: those of the emulsion, or those of the melt. */
function bubblesIn({ before: { charge } }: Deaerating, run: Run) {
  if (!charge.isEmulsion()) {
    const asked = bubbleOf(airAsked(run));
    return { ...asked, viscosityAt: charge.readings("cooling").at };
  }
  const { bubbleDiameter: diameter, viscosity } = ofGel(run.job, run.job.bench.emulsion?.air, "emulsion-air");
  return { diameter, viscosityAt: () => viscosity };
}

/** Temperatures of a de-aerating step from the warmest to the coolest [°C]; what was read of an emulsion is the room's. */
function temperaturesIn({ before, after }: Deaerating): readonly [number, number] {
  const { charge } = before;
  if (charge.isEmulsion()) return [charge.job.process.room, charge.job.process.room];
  const [start, end] = [before.temperature(), after.temperature()];
  return [Math.max(start, end), Math.min(start, end)];
}

/** How wide the bubbles are under the pressure of the step [m]. */
export function bubbleUnderPressure(moment: Deaerating, run: Run): Figure {
  const { diameter } = bubblesIn(moment, run);
  return exactly(diameter * Math.cbrt(roomPressure / (moment.step.pressure ?? roomPressure)), [
    { kind: "reading", key: moment.before.charge.isEmulsion() ? "emulsion-air" : "process-air" },
  ]);
}

/**
 * Up to which diameter bubbles are held where the gel stands still [m]. A melt that has not set holds none; a gel that
 * is stirred as far as the wall and the surface stands still nowhere.
 */
export function heldWhileDeaerating(moment: Deaerating, run: Run): Figure {
  const { charge } = moment.before;
  const [, coolest] = temperaturesIn(moment);
  if (!charge.isEmulsion() && coolest > charge.setting().temperature) return exactly(0, [charge.setting().basis]);
  const held = heldBubbles(run, charge.fluidDensity(coolest));
  const { min } = bubbleUnderPressure(moment, run);
  const leaves = min !== null && held.max !== null && min > held.max;
  if (leaves || moment.speed === undefined) return held;
  const all = turnsIn(moment, run).every((turn) => movesAll(turn, run));
  const basis = [...(held.basis ?? []), { kind: "law", key: "cavern" } as const];
  return all ? exactly(0, basis) : { ...held, basis };
}

function turnsIn({ number }: Deaerating, { turns }: Run): readonly Turn[] {
  return turns.filter(({ step }) => step === number);
}

/** How wide the stirrer surely moves the gel in a de-aerating step [m]. */
export function movedWhileDeaerating(moment: Deaerating, run: Run): number {
  const wide = turnsIn(moment, run).map((turn) => widthMoved(turn, run).min ?? unknown("no-method", { law: "cavern" }));
  return Math.min(run.job.vessel.diameter, ...wide);
}

/** How deep the gel is in a de-aerating step [m]. */
export function depthWhileDeaerating(moment: Deaerating): number {
  const [warmest] = temperaturesIn(moment);
  return levelAt(moment.before.charge, warmest);
}

/** Until bubbles from the bottom have left in a de-aerating step [s], at its warmest and at its coolest, over the depths that the bottom lets it have. */
export function clearingWhileDeaerating(moment: Deaerating, run: Run): Figure {
  const { charge } = moment.before;
  const { viscosityAt, ...bubble } = bubblesIn(moment, run);
  const { pressure } = moment.step;
  const depths = depthsIn(run.job.vessel, depthWhileDeaerating(moment));
  const timeAt = (temperature: number, depth: number): number =>
    by("bubble-rise", () =>
      clearingTime({
        ...bubble,
        viscosity: viscosityAt(temperature),
        densityFluid: charge.fluidDensity(temperature),
        depth,
        ...(pressure !== undefined && { pressure }),
      }),
    );
  const [warmest, coolest] = temperaturesIn(moment);
  const [min, max] = [timeAt(warmest, depths.min), timeAt(coolest, depths.max)];
  const basis: readonly Basis[] = [
    { kind: "law", key: "bubble-rise" },
    ...(charge.isEmulsion() ? [{ kind: "reading", key: "emulsion-air", source: run.job.bench.source } as const] : []),
  ];
  const figure = min === max ? exactly(max, basis) : between(min, max, basis);
  return charge.isEmulsion() ? figure : byReadings(charge, () => temperaturesIn(moment), figure);
}
