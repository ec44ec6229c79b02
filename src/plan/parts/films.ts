import { drainedFilm, thickestFilm } from "../../rheology/index.js";
import type { LawCode } from "../codes/bases.js";
import type { Job } from "../job.js";
import { levelAt } from "../level.js";
import type { Run } from "../state.js";
import { by, otherwise, stated, unknown, where, withAssumed } from "../unknown.js";
import { fillingOf, makesMelt } from "./moments.js";
import type { Note } from "./note.js";
import { yieldStressFigure, yieldStressOf } from "./yield-stress.js";

/** Films of the gel [m]. */
export interface PlanFilms {
  /** The thickest that does not run down an upright wall once it has set. */
  readonly thicknessMax?: number;
  /** Mean thickness of what has not drained from the wall of the vessel by the end of filling. */
  readonly thicknessOnWall?: number;
  /** The film that the batch allows for, if it allows for one. */
  readonly allowed?: {
    readonly thickness: number;
    readonly isStated: boolean;
    /** What it is by the gel or the melt that the vessel is emptied of, and by which law. */
    readonly predicted?: number;
    readonly by?: LawCode;
  };
}

/** The thickest film that does not run down an upright wall once it has set, by the lower end of the yield stress [m]. */
export function thickestFilmOf(run: Run): number {
  const { min: yieldStress } = yieldStressFigure(run);
  // Without a yield stress every film runs.
  if (yieldStress === 0) return 0;
  const density = stated(run.scaled.density, "material-density");
  return by("film-that-stays", () => thickestFilm({ yieldStress, density }));
}

/** The film that has not drained from the wall by the end of filling [m], by the viscosity then, when the melt is thickest: what is left is rather less. */
function filmOnWall(run: Run): number {
  const { before, after, duration: lasts, number } = fillingOf(run);
  // A filling without a time of its own leaves nothing time to drain.
  const duration = lasts() || unknown("not-done", { step: number });
  const { charge } = before;
  const temperature = after.temperature();
  const viscosity = charge.readings("cooling").at(temperature);
  const density = stated(run.scaled.density, "material-density");
  const distance = levelAt(charge, before.temperature());
  return by("drained-film", () => drainedFilm({ curve: { law: "newton", viscosity }, density, distance, duration }))
    .thicknessMean;
}

/** Whether the vessel is emptied of a melt that has not set: what stays on its wall is what has not drained. */
function isEmptiedHot(run: Run): boolean {
  if (!makesMelt(run)) return false;
  const { after, before } = fillingOf(run);
  // Without gel former nothing sets.
  if (before.charge.dose() === 0) return true;
  return after.temperature() > before.charge.setting().temperature;
}

/** The film that stays in the vessel, by the melt or by the gel that it is emptied of [m]. */
function filmLeft(run: Run): { readonly predicted: number; readonly by: LawCode } {
  if (isEmptiedHot(run)) {
    const { value: predicted, assumed } = withAssumed(() => filmOnWall(run));
    // By a curve that may err either way the thicker film counts, and that is the set gel's.
    if (assumed.length > 0) unknown("not-read", { field: "bench-viscosities" });
    return { predicted, by: "drained-film" };
  }
  const { value: yieldStress } = yieldStressOf(run.job);
  const density = stated(run.scaled.density, "material-density");
  return {
    predicted: by("film-that-stays", () => thickestFilm({ yieldStress, density })),
    by: "film-that-stays",
  };
}

/** The film that the batch allows for. */
function filmAllowance({ batch }: Job): { readonly thickness?: number | undefined } | undefined {
  return batch.allowances.find((allowance) => allowance.kind === "film");
}

/** Whether the batch leaves it to the plan how thick the film in the vessel is. */
export function leavesFilmOpen({ batch }: Job): boolean {
  return batch.allowances.some((allowance) => allowance.kind === "film" && allowance.thickness === undefined);
}

/**
 * The yield stress of a gel that would leave as thick a film as the melt does of which this run empties the vessel [Pa]:
 * films that state no thickness are computed from a yield stress. Unknown where the vessel is not emptied hot, or where the
 * film of the melt is not known: then it counts as that of the set gel, which is the thicker one.
 */
export function yieldStressOfFilm(run: Run): number {
  const { predicted, by: law } = filmLeft(run);
  if (law !== "drained-film") unknown("nothing-there");
  const density = stated(run.scaled.density, "material-density");
  return predicted / thickestFilm({ yieldStress: 1, density });
}

/** The film that the batch allows for, beside the one that is to be expected. */
function allowedFilm(run: Run): NonNullable<PlanFilms["allowed"]> {
  const { thickness } = filmAllowance(run.job) ?? unknown("nothing-there");
  const found = otherwise(
    () => filmLeft(run),
    () => undefined,
  );
  if (thickness !== undefined) return { thickness, isStated: true, ...found };
  const { predicted } = found ?? filmOfSetGel(run);
  return { thickness: predicted, isStated: false, ...found };
}

function filmOfSetGel(run: Run): { readonly predicted: number } {
  const density = stated(run.scaled.density, "material-density");
  return { predicted: thickestFilm({ yieldStress: yieldStressOf(run.job).value, density }) };
}

/** The film that does not run once the gel has set, the one that has not drained from the vessel when it is empty, and the one that is allowed for, as far as they are known. */
export function filmsOf(run: Run): PlanFilms {
  return {
    ...where("thicknessMax", () => thickestFilmOf(run)),
    ...where("thicknessOnWall", () => filmOnWall(run)),
    ...where("allowed", () => allowedFilm(run)),
  };
}

/** So much of a charge may be lost before it is out of the ordinary: common practice, no source. */
const usualLossMax = 0.1;

/** A loss that is out of the ordinary, with the allowance that takes the most; and a film that is not known. */
export function lossNotes(run: Run): readonly Note[] {
  const { lot } = run.scaled;
  const share = 1 - lot.delivered / lot.total;
  const [largest] = [...lot.allowances].sort((one, other) => other.mass - one.mass);
  const large: readonly Note[] =
    largest && share > usualLossMax
      ? [{ code: "loss-out-of-the-ordinary", of: largest.name, share, shareMax: usualLossMax }]
      : [];
  const isUnknown =
    leavesFilmOpen(run.job) &&
    otherwise(
      () => {
        filmLeft(run);
        return false;
      },
      () => true,
    );
  return isUnknown ? [...large, { code: "film-of-the-set-gel" }] : large;
}
