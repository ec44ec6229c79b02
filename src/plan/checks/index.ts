import type { ScaledBatch } from "../../batch/index.js";
import type { Check } from "../../formula/index.js";
import { heatedWalls } from "../heated-wall.js";
import { checkInTime } from "../in-time.js";
import type { Job, Step } from "../job.js";
import type { Moment } from "../moment.js";
import { checkClaim } from "../natural-origin.js";
import type { NaturalOrigin } from "../plan.js";
import { checkDelivered, checkGelFormerRatio, checkMaximumShares, checkVolume } from "./batch.js";
import { checkFlashPoints, checkHeatSensitive, checkMaximumTemperatures } from "./heat.js";
import { checkObstacles } from "./obstacles.js";
import { checkAdditions, checkDissolved, checkFilling } from "./setting.js";
import { checkSkin } from "./skin.js";
import { checkStirring } from "./stirring.js";

/** Every question that is asked on either route. */
export function commonChecksOf(
  job: Job,
  scaled: ScaledBatch,
  moments: readonly Moment[],
  naturalOrigin: NaturalOrigin,
): readonly Check[] {
  return [
    ...checkClaim(job.formula, naturalOrigin),
    checkDelivered(scaled),
    checkVolume(scaled, job, moments),
    ...checkMaximumShares(job, scaled),
    ...checkObstacles(moments),
  ];
}

/** Every question that is asked of a job on the hot route, in the order in which the sheet answers them. */
export function hotChecksOf(
  job: Job,
  scaled: ScaledBatch,
  moments: readonly Moment<Step>[],
  naturalOrigin: NaturalOrigin,
): readonly Check[] {
  const walls = heatedWalls(moments, job);
  return [
    ...checkGelFormerRatio(job),
    ...commonChecksOf(job, scaled, moments, naturalOrigin),
    ...checkInTime(moments, job),
    ...checkHeatSensitive(moments),
    ...checkMaximumTemperatures(moments, walls),
    ...checkFlashPoints(moments, walls, job),
    ...checkSkin(moments, job),
    ...checkDissolved(moments, job),
    ...checkAdditions(moments, job),
    ...checkFilling(moments, job),
    ...checkStirring(moments, job),
  ];
}
