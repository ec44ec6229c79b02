import { drainedFilm, thickestFilm } from "../../rheology/index.js";
import type { Run } from "../state.js";
import { levelAt } from "../stirred.js";
import { by, stated, unknown, where } from "../unknown.js";
import { fillingOf } from "./moments.js";
import { yieldStressFigure } from "./yield-stress.js";

/** Films of the gel [m]. */
export interface PlanFilms {
  /** The thickest that does not run down an upright wall once it has set. */
  readonly thicknessMax?: number;
  /** Mean thickness of what has not drained from the wall of the vessel by the end of filling. */
  readonly thicknessOnWall?: number;
}

/** The thickest film that does not run down an upright wall once it has set, by the lower end of the yield stress [m]. */
function thickestFilmOf(run: Run): number {
  const { min: yieldStress } = yieldStressFigure(run);
  // Without a yield stress every film runs.
  if (yieldStress === 0) return 0;
  const density = stated(run.scaled.density, "material-density");
  return by("film-that-stays", () => thickestFilm({ yieldStress, density }));
}

/** The film that has not drained from the wall by the end of filling [m], by the viscosity then, when the melt is thickest: what is left is rather less. */
function filmOnWall(run: Run): number {
  const { before, after, step, number } = fillingOf(run);
  // A filling without a time of its own leaves nothing time to drain.
  const duration = step.for ?? unknown("not-done", { step: number });
  const { charge } = before;
  const temperature = after.temperature();
  const viscosity = charge.readings("cooling").at(temperature);
  const density = stated(run.scaled.density, "material-density");
  const distance = levelAt(charge, before.temperature());
  return by("drained-film", () => drainedFilm({ curve: { law: "newton", viscosity }, density, distance, duration }))
    .thicknessMean;
}

/** The film that does not run once the gel has set, and the one that has not drained from the vessel when it is empty, as far as they are known. */
export function filmsOf(run: Run): PlanFilms {
  return {
    ...where("thicknessMax", () => thickestFilmOf(run)),
    ...where("thicknessOnWall", () => filmOnWall(run)),
  };
}
