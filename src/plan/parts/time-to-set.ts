import { thermalExposure, vesselSegment } from "../../heat/index.js";
import { balanceOf, noSource } from "../balance.js";
import type { Moment, Run, State } from "../state.js";
import { by, unknown } from "../unknown.js";
import { untilFilled } from "./in-vessel.js";

/** How long a melt stays above its setting temperature in the vessel. */
export interface TimeToSet {
  /** From the end of the last charge [s]. */
  readonly duration: number;
  /** What of it is left once the packs are full [s]; below 0 if it sets before. */
  readonly margin: number;
}

/**
 * The time until the melt sets in the vessel after the last charge: through the steps as they are written, stirring
 * included, and left to cool after the last of them.
 */
export function timeToSet(run: Run): TimeToSet {
  const inVessel = untilFilled(run);
  const last = inVessel.filter(({ before, after }) => after.charge.mass > before.charge.mass).at(-1);
  const { after: charged, number } = last ?? unknown("not-done");
  const filled = run.moments.find(({ step }) => step.do === "fill") ?? unknown("not-done");
  const sets = charged.charge.setting().temperature;
  const duration = untilCooled(
    charged,
    inVessel.filter((moment) => moment.number > number),
    sets,
  );
  return { duration, margin: duration - (filled.after.time() - charged.time()) };
}

/** From a state until the melt is as cool as a temperature [s]: through the steps after it, and left to cool after the last of them. */
export function untilCooled(charged: State, later: readonly Moment[], temperatureEnd: number): number {
  let state = charged;
  for (const moment of later) {
    if (state.temperature() <= temperatureEnd) break;
    if (moment.after.temperature() <= temperatureEnd)
      return state.time() - charged.time() + above(moment, temperatureEnd);
    // What is left in the vessel while the packs are filled cools as all of it did.
    state = moment.after.inPacks
      ? { ...moment.before, temperature: moment.after.temperature, time: moment.after.time }
      : moment.after;
  }
  return state.time() - charged.time() + leftToCool(state, temperatureEnd);
}

/** The part of a step in which the charge is above a temperature [s]. */
function above({ segments }: Moment, temperatureAbove: number): number {
  const ageingKinetics = { law: "q10", q10: 1, temperatureReference: temperatureAbove } as const;
  const found = by("thermal-exposure", () =>
    thermalExposure({ segments: segments(), ageingKinetics, temperatureAbove }),
  );
  return found.durationAbove ?? unknown("not-done");
}

/** From a state to a temperature below it, without stirring [s]. */
function leftToCool(state: State, temperatureEnd: number): number {
  if (state.temperature() <= temperatureEnd) return 0;
  const { vessel } = balanceOf(state, noSource);
  return by("heat-balance", () => vesselSegment({ ...vessel, temperatureEnd }).duration);
}
