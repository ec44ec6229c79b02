import { temperatureAtViscosity } from "../../laws/index.js";
import { settingMarginOf } from "../job.js";
import { longerWhileDrained } from "../pack.js";
import type { Run } from "../state.js";
import { by, cell, otherwise, stated, unknown, where } from "../unknown.js";
import { fillingOf, isMelt } from "./moments.js";
import { untilCooled } from "./time-to-set.js";

/** How cool a melt may get while it is filled, and up to which it may be kept warm. */
export interface PlanFillingLimits {
  /** Below this no pack is filled: above the setting temperature by the margin, and no thicker than it still runs into the pack [°C]. */
  readonly temperatureMin: number;
  /** It may be kept as warm as this [°C]: its materials stand it, and its particles settle no further than allowed; left out if nothing limits it. */
  readonly temperatureMax?: number;
  /** From the first pack until the vessel is as cool as that, left to cool as in this run [s]; left out where it is kept warm. */
  readonly duration?: number;
  /** Longest filling for which the last pack is certain to be that warm, even if what is left loses as much heat as the full vessel did [s]; left out where it is kept warm. */
  readonly durationMax?: number;
}

/** The limits of the filling; not known for what does not set, or without the setting temperature. */
export function fillingLimitsOf(run: Run, temperatureMax: number | undefined): PlanFillingLimits {
  const filling = fillingOf(run);
  const { before, step } = filling;
  const { charge } = before;
  if (!isMelt(charge) || charge.dose() === 0) unknown("nothing-there");
  const sets = charge.setting().temperature + settingMarginOf(run.job);
  const temperatureMin = Math.max(
    sets,
    otherwise(
      () => thickestAt(run),
      () => sets,
    ),
  );
  const untilTooCool = cell(() => untilCooled(before, [filling], temperatureMin));
  const longer = longerWhileDrained(charge, run.scaled);
  const isKeptWarm = "held" in step || "jacketAt" in step;
  return {
    temperatureMin,
    ...(temperatureMax !== undefined && { temperatureMax }),
    ...(!isKeptWarm && where("duration", untilTooCool)),
    ...(!isKeptWarm && where("durationMax", () => untilTooCool() / (longer ?? unknown("nothing-there")))),
  };
}

/** Where the melt is as thick as it may be to run into a pack [°C]. */
function thickestAt(run: Run): number {
  const { law } = fillingOf(run).before.charge.readings("cooling");
  const viscosity = stated(run.job.bench.pourableViscosityMax, "bench-pourable-viscosity-max");
  return by("temperature-at-viscosity", () => temperatureAtViscosity({ law, viscosity }));
}
