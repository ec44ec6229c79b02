import type { ScaledBatch } from "../batch/index.js";
import { afterFilling, checkSetThrough } from "./after-filling.js";
import { cautionsOf } from "./cautions.js";
import { commonChecksOf, hotChecksOf } from "./checks/index.js";
import { coldCautionsOf } from "./cold/cautions.js";
import { coldChecksOf, gelOf } from "./cold/checks.js";
import { expectedGel } from "./cold/droplets.js";
import { withLoss } from "./cold/in-the-room.js";
import { runCold } from "./cold/run.js";
import { speedsOf } from "./cold/speeds.js";
import { coldTimelineOf } from "./cold/timeline.js";
import { coldTurnsOf } from "./cold/turns.js";
import { warmingOf } from "./cold/warming.js";
import { evaporationOf } from "./evaporation.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";
import { oxidationRankingOf } from "./oxidation-ranking.js";
import type { NaturalOrigin, Plan } from "./plan.js";
import { runSteps } from "./run/run-steps.js";
import { coldScaleOf, scaleOf } from "./scale.js";
import { airOf } from "./strength/air.js";
import { checkAir } from "./strength/check-air.js";
import { checkParticles } from "./strength/check-particles.js";
import { checkStrength } from "./strength/check-strength.js";
import { filmsOf } from "./strength/films.js";
import { gelPointsOf } from "./strength/gel-points.js";
import { particlesOf } from "./strength/outlook.js";
import { suspendedIn } from "./strength/suspended.js";
import { exposedIn, thermalExposuresOf } from "./thermal-exposure.js";
import { timelineOf } from "./timeline.js";
import { turningOf } from "./turning.js";

/** What depends on the route: the run, what comes of it, and what is asked of it. */
type OfRoute = Pick<
  Plan,
  | "timeline"
  | "scale"
  | "afterFilling"
  | "thermalExposures"
  | "oxidationRanking"
  | "particles"
  | "gelPoints"
  | "strength"
  | "films"
  | "air"
  | "evaporation"
  | "cold"
  | "checks"
  | "cautions"
>;

/** What is known before the first step is run. */
interface Known {
  readonly scaled: ScaledBatch;
  readonly naturalOrigin: NaturalOrigin;
  readonly strength: Plan["strength"];
  readonly flow: Plan["flow"];
  readonly yieldStress: Plan["yieldStress"];
}

/** The hot route: heat, charges, cooling, packs. */
export function hotRoute(job: Job, charge: readonly Content[], known: Known): OfRoute {
  const { scaled, naturalOrigin, strength, flow, yieldStress } = known;
  const moments = runSteps(job, charge, scaled);
  const exposed = exposedIn(moments);
  const pastFilling = afterFilling(job, moments, scaled);
  const suspended = suspendedIn(moments, job, scaled);
  const air = airOf(job, moments, scaled, yieldStress);
  return {
    timeline: timelineOf(job, moments),
    scale: scaleOf(job, moments, turningOf(moments, job), scaled),
    afterFilling: pastFilling,
    thermalExposures: thermalExposuresOf(moments, exposed),
    oxidationRanking: oxidationRankingOf(job, moments, exposed, charge, scaled),
    particles: particlesOf(suspended, job, moments, yieldStress),
    gelPoints: gelPointsOf(job, moments),
    strength,
    films: filmsOf(job, scaled, moments, yieldStress),
    air,
    evaporation: evaporationOf(job, moments),
    checks: [
      ...hotChecksOf(job, scaled, moments, naturalOrigin),
      ...checkParticles(suspended, job, yieldStress),
      ...checkSetThrough(job, moments, pastFilling),
      ...checkStrength(job, { strength, flow, yieldStress, density: scaled.density }),
      ...checkAir(job, air),
    ],
    cautions: cautionsOf(job, moments),
  };
}

/** The cold route: oil added by a schedule, all of it from the room; only stirring warms it. */
export function emulsion(job: Job, charge: readonly Content[], { scaled, naturalOrigin, yieldStress }: Known): OfRoute {
  const here = withLoss(job);
  const moments = runCold(here, charge, scaled);
  const turns = coldTurnsOf(moments, job);
  const warming = warmingOf(moments, turns, here);
  const gel = expectedGel(job, gelOf(moments), yieldStress);
  const additions = moments.flatMap(({ added }, i) => {
    if (!added) return [];
    const { duration: _, ...schedule } = added;
    return [{ step: i + 1, ...schedule }];
  });
  const usual = cautionsOf(job, moments);
  return {
    timeline: coldTimelineOf(job, moments, turns),
    scale: { ...scaleOf(job, [], turns, scaled), ...coldScaleOf(additions, gel, warming) },
    afterFilling: {},
    thermalExposures: [],
    oxidationRanking: [],
    particles: [],
    gelPoints: [],
    films: filmsOf(job, scaled, moments, yieldStress),
    evaporation: [],
    cold: { additions, gel, warming, speeds: speedsOf(moments, job) },
    checks: [...commonChecksOf(job, scaled, moments, naturalOrigin), ...coldChecksOf(job, moments, turns, gel)],
    cautions: [...coldCautionsOf(job), ...usual],
  };
}
