import type { Check } from "../../formula/index.js";
import { cavern } from "../../mixing/index.js";
import { checkLeastVolume } from "../checks/least-volume.js";
import { checkMotor } from "../checks/motor.js";
import { checkCovered, checkVortex } from "../checks/stirrer-level.js";
import { checkEven } from "../checks/stirring.js";
import type { Job, Stirrer } from "../job.js";
import { say } from "../say.js";
import { turningOf } from "../turning.js";
import type { ColdMoment } from "./run.js";
import type { ColdTurn } from "./turns.js";

/** Every question about the stirrer on the cold route; none where no stirrer is described. */
export function coldStirringChecks(
  moments: readonly ColdMoment[],
  turns: readonly ColdTurn[],
  job: Job,
): readonly Check[] {
  const { stirrer } = job.vessel;
  if (!stirrer || turns.length === 0) return [];
  return [
    ...checkEven(turningOf(moments, job), stirrer, job),
    ...checkWallMoves(turns, stirrer, job),
    ...checkMotor(turns, stirrer),
    ...checkCovered(turns, stirrer, job),
    ...checkLeastVolume(stirrer, job),
    ...checkVortex(turns, stirrer, job),
  ];
}

/** How far the stirrer moves a gel with a yield stress in one step: the least over its additions; undefined where it has none. */
export function leastMoved(
  turns: readonly ColdTurn[],
  step: number,
  stirrer: Stirrer,
  job: Job,
): { readonly where: string; readonly diameter: number; readonly reachesWall: boolean } | undefined {
  const moved = turns.flatMap(({ step: of, where, stirred }) => {
    if (of !== step || typeof stirred === "string" || !stirred.yieldStress) return [];
    const { powerNumber, speed, density, yieldStress } = stirred;
    const around = { diameterImpeller: stirrer.diameter, diameterVessel: job.vessel.diameter };
    const { diameter, reachesWall } = cavern({ powerNumber, speed, density, yieldStress, ...around });
    return [{ where, diameter, reachesWall }];
  });
  return moved.reduce<(typeof moved)[number] | undefined>(
    (least, one) => (least && least.diameter <= one.diameter ? least : one),
    undefined,
  );
}

/** The gel moves as far as the wall in every step that is to mix it: what stands still there takes up no oil and lets no air go. */
function checkWallMoves(turns: readonly ColdTurn[], stirrer: Stirrer, job: Job): readonly Check[] {
  if (stirrer.byHand) return [];
  const steps = [...new Set(turns.map(({ step }) => step))];
  return steps.flatMap((step): readonly Check[] => {
    const least = leastMoved(turns, step, stirrer, job);
    if (!least) return [];
    return [
      {
        id: `wall-moves:${step}`,
        verdict: least.reachesWall ? "met" : "not met",
        statement: least.reachesWall
          ? `The gel moves as far as the wall all through step ${step}.`
          : `In ${least.where} the gel stands still at the wall: what is there takes up no oil and lets no air go. Stir faster, take a wider stirrer or one that follows the wall, or bring the wall's gel in by hand with the stirrer off.`,
        value: `${say.millimetres(least.diameter)} moved in ${least.where}`,
        limit: `${say.millimetres(job.vessel.diameter)}, the vessel's diameter`,
        source: `cavern of Elson and others 1986 (from memory); flow curves from ${job.bench.source}`,
      },
    ];
  });
}
