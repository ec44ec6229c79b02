import type { Check } from "../../formula/index.js";
import { checkRatio, checkWaterActivity, waterActivity } from "../../gel/index.js";
import { attempt } from "../attempt.js";
import { checkSuspended } from "../check-suspended.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import type { Plan } from "../plan.js";
import type { Turning } from "../turning.js";
import { checkAir } from "./air.js";
import { checkCoverage } from "./check-coverage.js";
import { checkCoversImpeller, checkMaximumOilFraction, checkShares } from "./check-oil.js";
import { checkClarity } from "./clarity.js";
import { isGlycerin, isWater, phasesOfGel } from "./phases.js";
import type { ExpectedGel } from "./plan.js";
import type { ColdMoment } from "./run.js";
import { coldStirringChecks } from "./stirring-checks.js";

/** Every question that only the cold route asks, in the order in which the sheet answers them. */
export function coldChecksOf(
  job: Job,
  moments: readonly ColdMoment[],
  turns: readonly Turning[],
  expected: ExpectedGel,
): readonly Check[] {
  const contents = gelOf(moments);
  return [
    ...checkRatioOfPhases(job, contents),
    checkMaximumOilFraction(job, contents),
    ...checkShares(moments, job),
    ...checkCoversImpeller(moments, job),
    ...coldStirringChecks(turns, job),
    ...checkClarity(job, contents, whenMatched(moments)),
    checkCoverage(job, contents, expected),
    ...checkParticlesSuspended(job, moments, expected),
    ...checkAir(moments, turns, job, expected),
    ...checkWater(job, contents),
  ];
}

/** All that is in the vessel before it is filled. */
export function gelOf(moments: readonly ColdMoment[]): readonly Content[] {
  const filled = moments.find(({ step }) => step.do === "fill");
  return (filled?.before ?? moments.at(-1)?.after)?.contents ?? [];
}

/** How warm the gel is when it is looked through [°C]; undefined where that is not known or it is not done. */
function whenMatched(moments: readonly ColdMoment[]): number | undefined {
  return moments.find(({ step }) => step.do === "match clarity")?.after.temperature;
}

function checkRatioOfPhases(job: Job, contents: readonly Content[]): readonly Check[] {
  const { gelFormer, oil } = phasesOfGel(job, contents);
  if (!job.bench.oilPerGelFormer || massOf(gelFormer) === 0) return [];
  return [
    checkRatio({ ratio: massOf(oil) / massOf(gelFormer), ...job.bench.oilPerGelFormer, source: job.bench.source }),
  ];
}

/** Whether the gel holds its particles: by the yield stress that was measured, else by theory. */
function checkParticlesSuspended(job: Job, moments: readonly ColdMoment[], expected: ExpectedGel): readonly Check[] {
  const held = heldBy(expected, job);
  return moments.flatMap(({ step, before, after }) =>
    step.do === "add" || step.do === "charge"
      ? after.contents
          .slice(before.contents.length)
          .flatMap(({ material }) =>
            material.particle ? [checkSuspended(material, material.particle, gelOf(moments), job, held)] : [],
          )
      : [],
  );
}

function heldBy({ yieldStress, yieldStressByTheory }: ExpectedGel, { bench }: Job): Plan["yieldStress"] {
  const value = yieldStress ?? yieldStressByTheory;
  const from = yieldStress === undefined ? "of packed droplets, Princen and Kiss 1989" : `stated, ${bench.source}`;
  return value === undefined ? undefined : { value, min: value, max: value, from };
}

/** Water activity of the gel former: reported beside the caution, never in place of a test. */
function checkWater(job: Job, contents: readonly Content[]): readonly Check[] {
  const { gelFormer } = phasesOfGel(job, contents);
  // What is not active in a material as supplied counts as water.
  const water = gelFormer.reduce(
    (sum, one) => sum + (isWater(one) ? one.mass : isGlycerin(one) ? 0 : one.mass * (1 - one.material.strength)),
    0,
  );
  if (water === 0) return [];
  const { waterActivity: measured } = job.bench.emulsion ?? {};
  if (measured !== undefined) return [checkWaterActivity({ min: measured, source: `measured, ${job.bench.source}` })];
  const glycerin = massOf(gelFormer.filter(isGlycerin));
  return attempt(
    () => {
      const { norrish, wilson } = waterActivity({
        massFractionGlycerin: glycerin / (glycerin + water),
        temperature: job.process.temperatureRoom,
      });
      return [
        checkWaterActivity({
          min: Math.min(norrish, wilson),
          max: Math.max(norrish, wilson),
          source: "glycerin and water by Norrish's law and by that of Zhang, Grace and Sun",
        }),
      ];
    },
    () => [],
  );
}
