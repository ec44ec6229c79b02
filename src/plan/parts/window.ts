import { temperatureAtViscosity } from "../../laws/index.js";
import { root } from "../../numeric/root.js";
import type { FieldCode } from "../codes/reasons.js";
import { by, otherwise, type Reason, remembered, stated, unknown } from "../unknown.js";
import type { Entering } from "./entering.js";
import { meltOf } from "./melt.js";
import { fillingTakesTime, heatOff, type WhichPack } from "./moments.js";
import { largestOf, settlingAtWarmest } from "./settling.js";

/** Between which temperatures of the melt particles may go in, as a thermometer shows it before [°C]. */
export interface Window {
  /** From here on down they settle no further than allowed on the rest of their way through this run. */
  readonly temperatureMax: number;
  /** Down to here it can be stirred; down to where it sets at most, if nothing says how thick that is. */
  readonly temperatureMin: number;
  /** The field that would tell how far down it can be stirred, if it is not stated. */
  readonly openBy?: FieldCode;
  /** Why the way in the pack is not known, if it is not: the upper end may then be lower. */
  readonly packLacks?: Reason;
}

/** The packs that are looked at. */
export function packsIn({ run }: Entering): readonly WhichPack[] {
  return fillingTakesTime(run) ? ["last-pack", "first-pack"] : ["last-pack"];
}

/** So near to the end of the window no thermometer reads [K]. */
const near = 1e-9;

/** The warmest mix, up to a temperature, from which on down the largest particles settle no further than allowed in vessel and pack [°C]. */
function carriedFrom(entering: Entering, which: WhichPack, sets: number, warmest: number, withPack: boolean): number {
  const allowed = stated(entering.run.job.bench.settlingAllowed, "bench-settling-max");
  const diameter = largestOf(entering.particle);
  const settling = settlingAtWarmest(entering, which);
  const room = (from: number): number => {
    const { inVessel, inPack } = settling(diameter, from);
    return allowed - Math.abs(inVessel + (withPack ? inPack() : 0));
  };
  if (room(warmest) >= 0) return warmest;
  const found = by("window-for-adding", () => root(room, sets, warmest, "temperature", near));
  return room(found) >= 0 ? found : Math.max(sets, found - near);
}

/** Down to where a melt can be stirred, from where the heat was off and no further than to where it sets [°C]; the readings need not go on beyond that. */
function stirrableDownTo({ after: { charge } }: Entering, start: number, sets: number, viscosity: number): number {
  const { law, at, temperatureMin, temperatureMax } = charge.readings("cooling");
  if (at(Math.min(start, temperatureMax)) >= viscosity) return start;
  if (sets >= temperatureMin && at(sets) <= viscosity) return sets;
  return Math.min(
    start,
    Math.max(
      sets,
      by("window-for-adding", () => temperatureAtViscosity({ law, viscosity })),
    ),
  );
}

/**
 * The window for adding. Its upper end is where the particles settle no further than allowed, by the same ways through
 * vessel and packs as `particles-settle` adds up: the two agree. The thermometer shows the melt before, which the
 * addition cools by as much as it does in this run.
 */
export const windowOf: (entering: Entering) => Window = remembered((entering: Entering): Window => {
  const { run, place, before, after } = entering;
  const { sets: temperatureEnd } = meltOf(after.charge);
  const temperatureStart = heatOff(run, place).temperature();
  // Off the heat it has set already.
  if (temperatureStart <= temperatureEnd) unknown("not-done", { step: entering.number });
  const cooled = before.temperature() - after.temperature();
  const warmest = Math.max(temperatureStart - cooled, after.temperature());
  // Warmer than the one pack allows there is nothing to look for by the other.
  const carried = (withPack: boolean): number =>
    packsIn(entering).reduce((max, which) => carriedFrom(entering, which, temperatureEnd, max, withPack), warmest);
  const top = otherwise<Pick<Window, "temperatureMax" | "packLacks">, Pick<Window, "temperatureMax" | "packLacks">>(
    () => ({ temperatureMax: carried(true) + cooled }),
    (packLacks) => ({ temperatureMax: carried(false) + cooled, packLacks }),
  );
  const { stirrableViscosityMax } = run.job.bench;
  if (stirrableViscosityMax === undefined)
    return { ...top, temperatureMin: temperatureEnd + cooled, openBy: "bench-stirrable-viscosity-max" };
  const temperatureMin = stirrableDownTo(entering, temperatureStart, temperatureEnd, stirrableViscosityMax);
  return { ...top, temperatureMin: temperatureMin + cooled };
});
