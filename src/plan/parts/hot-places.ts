import type { Material } from "../../formula/index.js";
import { between, type Figure } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { either, otherwise, type Reason, stated } from "../unknown.js";
import { hottestWall } from "../walls.js";
import { momentsWith, warmestIn } from "./in-vessel.js";
import { upToTheWarmest } from "./warmth.js";

/** Where a material meets heat in the vessel. */
export type HeatPlace = "charge" | "heated-wall";

/** A material in one step, at one place. */
export interface Met {
  readonly moment: Moment;
  readonly place: HeatPlace;
}

/** The materials that are in the vessel at some time. */
export function materialsIn({ moments }: Run): readonly Material[] {
  return [...new Set(moments.flatMap(({ after }) => after.charge.contents.map(({ material }) => material)))];
}

/**
 * The steps in which a material is at a place, the warmest first: that one decides if the limit of the material is not
 * stated. The wall is hotter than the charge in all steps on the heat, and may be where a jacket keeps it warm.
 */
export function metAt(run: Run, { key }: Material, place: HeatPlace): readonly Met[] {
  return momentsWith(run, key)
    .filter((moment) => place === "charge" || moment.after.onHeat || moment.warmedBy !== undefined)
    .map((moment) => ({ moment, place }))
    .sort((one, other) => warmth(other) - warmth(one));
}

/** By which the steps are put in order: one that is not known may be the warmest. */
function warmth({ moment }: Met): number {
  return otherwise(
    () => warmestIn(moment),
    () => Number.MAX_VALUE,
  );
}

/** Where in the run that is. */
export function hotPlaceOf({ moment, place }: Met): { readonly step: number; readonly place: HeatPlace } {
  return { step: moment.number, place };
}

/** How warm it is at a place in a step [°C]. */
export function warmthAt({ moment, place }: Met, run: Run): Figure {
  return place === "charge"
    ? upToTheWarmest(run, moment, warmestIn(moment), moment.basis?.())
    : wallFigure(run, moment);
}

/** The heated wall: as the heater drives it, or where that is not known, between the charge and the hottest that the heater gets. */
function wallFigure(run: Run, moment: Moment): Figure {
  const { warmedBy } = moment;
  if (warmedBy !== undefined) return warmedFigure(moment, warmedBy);
  return otherwise(
    () => hottestIn(moment),
    () => {
      const { temperatureMax } = run.job.vessel.heater ?? {};
      const max = end(() => Math.max(stated(temperatureMax, "vessel-heater"), hottestCharge(moment)));
      // With no end at all the figure is not known, for the charge's own reason.
      return between(max === null ? warmestIn(moment) : end(() => warmestIn(moment)), max);
    },
  );
}

/** A wall that a warm jacket heats: between the charge and the medium. */
function warmedFigure(moment: Moment, warmedBy: number): Figure {
  const max = end(() => Math.max(warmedBy, moment.before.temperature()));
  return between(max === null ? warmestIn(moment) : end(() => warmestIn(moment)), max, [
    { kind: "law", key: "jacket" },
  ]);
}

/** One end of a figure: open where it is not known. */
function end(find: () => number): number | null {
  return otherwise<number, null>(find, () => null);
}

/** A charge that was poured in hotter than the heater warms the wall. How warm a heater made it is bounded by the heater. */
function hottestCharge(moment: Moment): number {
  return either(
    () => warmestIn(moment),
    () => (moment.step.do === "charge" ? warmestIn(moment) : moment.before.temperature()),
  );
}

/** The wall at the heater's power; of a step that only keeps the charge warm no more than that. */
function hottestIn(moment: Moment): Figure {
  const { step, before, after } = moment;
  const isHeating = step.do === "heat";
  const start = isHeating ? before.temperature() : warmestIn(moment);
  const { min, max, value, inside } = hottestWall(after.charge, start, isHeating ? after.temperature() : start);
  const basis = [{ kind: "law", key: "wall-temperature" } as const, ...inside.basis];
  if (!isHeating) return between(start, max === null ? null : Math.max(start, max), basis);
  const { assumptions } = inside;
  return { min, max, ...(value !== undefined && { value }), basis, ...(assumptions.length > 0 && { assumptions }) };
}

/** Why the wall is not known at the deciding state, if it is not. */
export function whyUnknown({ moment, place }: Met): Readonly<Record<string, string | undefined>> {
  if (place === "charge" || moment.warmedBy !== undefined) return {};
  return otherwise(
    () => {
      hottestIn(moment);
      return {};
    },
    ({ code, field, law, of: lacksOf }: Reason) => ({ code, field, law, lacksOf }),
  );
}

/** How far the hot end of a place is beyond what is allowed there [K], if it is. */
export function beyond(met: Met, run: Run, allowed: number): { readonly beyond?: number } {
  return otherwise(
    () => {
      const { max } = warmthAt(met, run);
      return max !== null && max > allowed ? { beyond: max - allowed } : {};
    },
    () => ({}),
  );
}
