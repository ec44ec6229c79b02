import type { Check } from "../../formula/index.js";
import { checkMinimumVolume } from "../checks/minimum-volume.js";
import { checkMotor } from "../checks/motor.js";
import { checkCovered, checkVortex } from "../checks/stirrer-level.js";
import { checkEven } from "../checks/stirring.js";
import type { Job, Stirrer } from "../job.js";
import { say } from "../say.js";
import { movedBy } from "../stirring.js";
import type { Turning } from "../turning.js";

/** Every question about the stirrer on the cold route; none where no stirrer is described. */
export function coldStirringChecks(turns: readonly Turning[], job: Job): readonly Check[] {
  const { stirrer } = job.vessel;
  if (!stirrer || turns.length === 0) return [];
  return [
    ...checkEven(turns, stirrer, job),
    ...checkWallMoves(turns, stirrer, job),
    ...checkMotor(turns, stirrer),
    ...checkCovered(turns, stirrer, job),
    ...checkMinimumVolume(stirrer, job),
    ...checkVortex(turns, stirrer, job),
  ];
}

/** How far the stirrer moves a gel with a yield stress in one step: the least over its additions; undefined where it has none. */
export function movedMin(
  turns: readonly Turning[],
  step: number,
  stirrer: Stirrer,
  job: Job,
): { readonly where: string; readonly diameter: number; readonly reachesWall: boolean } | undefined {
  const moved = turns.flatMap(({ number, where, stirred }) => {
    if (number !== step || typeof stirred === "string" || !stirred.yieldStress) return [];
    const { yieldStress } = stirred;
    return [{ where, ...movedBy(stirrer, { ...stirred, yieldStress }, job.vessel) }];
  });
  return moved.reduce<(typeof moved)[number] | undefined>(
    (min, one) => (min && min.diameter <= one.diameter ? min : one),
    undefined,
  );
}

/** The gel moves as far as the wall in every step that is to mix it: what stands still there takes up no oil and lets no air go. */
function checkWallMoves(turns: readonly Turning[], stirrer: Stirrer, job: Job): readonly Check[] {
  if (stirrer.byHand) return [];
  // Without readings of a yield stress the gel counts as without one.
  const yields = (job.bench.emulsion?.thickness.yieldStress ?? []).length > 1;
  const steps = [...new Set(turns.map(({ number }) => number))];
  return steps.flatMap((step): readonly Check[] => {
    const min = movedMin(turns, step, stirrer, job);
    const check = {
      id: `gel-moves-at-wall:${step}`,
      limit: `${say.millimetres(job.vessel.diameter)}, the vessel's diameter`,
      source: `cavern of Elson and others 1986 (from memory); flow curves from ${job.bench.source}`,
    };
    const unseen = yields && turns.find(({ number, stirred }) => number === step && typeof stirred === "string");
    if (unseen && min?.reachesWall !== false)
      return [
        {
          ...check,
          verdict: "not known",
          statement: `Whether the gel moves as far as the wall in ${unseen.where} is not known: ${unseen.stirred}.`,
          value: "not known",
        },
      ];
    if (!min) return [];
    return [
      {
        ...check,
        verdict: min.reachesWall ? "met" : "not met",
        statement: min.reachesWall
          ? `The gel moves as far as the wall all through step ${step}.`
          : `In ${min.where} the gel stands still at the wall: what is there takes up no oil and lets no air go. Stir faster, take a wider stirrer or one that follows the wall, or bring the wall's gel in by hand with the stirrer off.`,
        value: say.moved(min, min.where),
      },
    ];
  });
}
