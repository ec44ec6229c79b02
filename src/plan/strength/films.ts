import type { ScaledBatch } from "../../batch/index.js";
import { drainedFilm, thickestFilm } from "../../rheology/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { levelOf } from "../level.js";
import { type Moment, massOf } from "../moment.js";
import { viscosityThen } from "../viscosity.js";
import type { PlanFilms, PlanYieldStress } from "./plan.js";

/** The film that does not run once the gel has set, and the one that has not drained from the vessel when it is empty. */
export function filmsOf(
  job: Job,
  { density }: ScaledBatch,
  moments: readonly Moment[],
  held: PlanYieldStress | undefined,
): PlanFilms {
  if (density === undefined) return {};
  const thicknessMax = held && held.min > 0 ? thickestFilm({ yieldStress: held.min, density }) : undefined;
  const thicknessOnWall = onTheWall(job, density, moments);
  return {
    ...(thicknessMax !== undefined && { thicknessMax }),
    ...(thicknessOnWall !== undefined && { thicknessOnWall }),
  };
}

/** By the viscosity at the end of filling, when the melt is thickest: what is left is rather less. */
function onTheWall(job: Job, density: number, moments: readonly Moment[]): number | undefined {
  const filled = moments.find(({ step }) => step.do === "fill");
  if (filled?.step.do !== "fill" || filled.step.duration === 0) return undefined;
  const { before, after, step } = filled;
  const thick = viscosityThen(job, { ...before, temperature: after.temperature }, "cooling");
  if (!thick) return undefined;
  const film = attempt(() =>
    drainedFilm({
      curve: { law: "newton", viscosity: thick.viscosity },
      density,
      distance: levelOf(massOf(before.contents) / density, job.vessel),
      duration: step.duration,
    }),
  );
  return typeof film === "string" ? undefined : film.thicknessMean;
}
