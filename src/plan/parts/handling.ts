import type { AssumptionCode } from "../codes/assumptions.js";
import { type Basis, exactly, type Figure, type NotKnown } from "../figure.js";
import { settingMarginOf } from "../job.js";
import { type PackCooling, packCooling } from "../pack.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { orNotKnown, where } from "../unknown.js";
import { filledAt, fillingOf } from "./moments.js";
import { takenForGranted } from "./taken-for-granted.js";

/** How long packs wait before something is done with them: each cools from the temperature at which it was filled. */
export interface PlanWait {
  /** Down to which a pack has to have cooled [°C]. */
  readonly temperature: number;
  /** From the filling of the first pack until it may be done with that [s]. */
  readonly firstPack: number;
  /** From the filling of the last pack until it may be done with that [s]. */
  readonly lastPack: number;
  /** From the end of filling until it may be done with all packs [s]. */
  readonly allPacks: number;
  readonly basis: readonly Basis[];
  readonly assumptions?: readonly AssumptionCode[];
}

/** A pack is capped once it is no warmer than the room by this, where no closing temperature is stated [K]: common practice, no source. */
const nearTheRoom = 5;

/** Where in a pack it is looked. */
type Where = "centre" | "surface";

/** Time from its filling at a temperature until a pack has cooled to another [s], at its centre or in the middle of its surface; at once where it is filled as cool. */
export function coolingUntil(run: Run, temperature: number, temperatureEnd: number, place: Where = "centre"): Figure {
  const { after } = fillingOf(run);
  const until = ({ timeUntil, timeUntilSurface }: PackCooling): number =>
    (place === "centre" ? timeUntil : timeUntilSurface)(temperatureEnd);
  // What is filled as cool as that has not to cool, whatever the pack.
  if (temperature <= temperatureEnd) return exactly(0);
  const cooling = packCooling(after.charge, temperature, run.scaled);
  const value = until(cooling);
  const { basis, assumptions, slowerMax } = cooling;
  return { min: value, value, max: slowerMax && value * slowerMax, basis: [basis], assumptions };
}

/** Both packs, until they have cooled to a temperature. */
function waitFor(run: Run, temperature: number, basis: readonly Basis[], place?: Where): PlanWait {
  const filling = fillingOf(run);
  const [first, last] = (["first-pack", "last-pack"] as const).map((which) =>
    coolingUntil(run, filledAt(run, which), temperature, place),
  ) as [Figure, Figure];
  const [firstPack, lastPack] = [first.value, last.value] as [number, number];
  const assumptions = unique([
    ...takenForGranted(run, filling).assumptions,
    ...(first.assumptions ?? []),
    ...(last.assumptions ?? []),
  ]);
  return {
    temperature,
    firstPack,
    lastPack,
    allPacks: Math.max(firstPack - filling.duration(), lastPack, 0),
    basis: unique([...basis, ...(first.basis ?? []), ...(last.basis ?? [])]),
    ...(assumptions.length > 0 && { assumptions }),
  };
}

/** As cool as the pack is to be closed, else near the room's temperature [°C]. */
function closingTemperatureOf({ job: { pack, process } }: Run): number {
  return pack?.closingTemperature ?? process.room + nearTheRoom;
}

/** When the packs may be capped. */
function cappingOf(run: Run): PlanWait {
  const isStated = run.job.pack?.closingTemperature !== undefined;
  return waitFor(run, closingTemperatureOf(run), [
    isStated ? { kind: "stated", key: "pack-closing-temperature" } : { kind: "practice", key: "capped-near-the-room" },
  ]);
}

/** As cool as a centre has to be before a pack is moved [°C]: below the setting temperature by the margin. */
function temperatureMovingOf(run: Run): number {
  return fillingOf(run).after.charge.setting().temperature - settingMarginOf(run.job);
}

/** When the packs may be moved: their centre has passed the setting temperature by the margin. */
function movingOf(run: Run): PlanWait {
  const { basis } = fillingOf(run).after.charge.setting();
  return waitFor(run, temperatureMovingOf(run), [{ kind: "practice", key: "moved-below-setting" }, basis]);
}

/** When a skin sets on the packs: from then on nothing more can be poured in. */
function skinOf(run: Run): PlanWait {
  const { temperature, basis } = fillingOf(run).after.charge.setting();
  return waitFor(run, temperature, [basis], "surface");
}

/** When the packs may be capped, when a skin sets on them, and when they may be moved. */
export interface PlanHandling {
  /** A pack is capped at this temperature or below [°C], also if it is not known when that is. */
  readonly temperatureCapping: number;
  /** A pack is moved once its centre is at this temperature or below [°C]; left out if nothing in it sets, or the setting temperature is not known. */
  readonly temperatureMoving?: number;
  /** When they may be capped. */
  readonly capping: PlanWait | NotKnown;
  /** When a skin has set on the middle of their surface; left out where nothing in them sets. */
  readonly skin?: PlanWait | NotKnown;
  /** When they may be moved; left out where nothing in them sets. */
  readonly moving?: PlanWait | NotKnown;
}

/** What is to be waited for once packs are filled. */
export function handlingOf(run: Run): PlanHandling {
  const sets = fillingOf(run).after.charge.dose() > 0;
  return {
    temperatureCapping: closingTemperatureOf(run),
    ...(sets && where("temperatureMoving", () => temperatureMovingOf(run))),
    capping: orNotKnown(() => cappingOf(run)),
    ...(sets && { skin: orNotKnown(() => skinOf(run)), moving: orNotKnown(() => movingOf(run)) }),
  };
}
