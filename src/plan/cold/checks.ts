import type { Check } from "../../formula/index.js";
import {
  checkOilFraction,
  checkRatio,
  checkWaterActivity,
  packingOf,
  surfactantForDroplets,
  waterActivity,
} from "../../gel/index.js";
import { attempt } from "../attempt.js";
import { checkHeld } from "../check-held.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import type { Plan } from "../plan.js";
import { say } from "../say.js";
import { checkAir } from "./air.js";
import { checkClarity } from "./clarity.js";
import { densityOfPhase, isGlycerin, isWater, oilFractionOf, phasesOfGel } from "./phases.js";
import type { ExpectedGel } from "./plan.js";
import type { ColdMoment } from "./run.js";
import { coldStirringChecks } from "./stirring-checks.js";
import type { ColdTurn } from "./turns.js";

/** Every question that only the cold route asks, in the order in which the sheet answers them. */
export function coldChecksOf(
  job: Job,
  moments: readonly ColdMoment[],
  turns: readonly ColdTurn[],
  expected: ExpectedGel,
): readonly Check[] {
  const contents = gelOf(moments);
  return [
    ...checkRatioOfPhases(job, contents),
    checkCeiling(job, contents),
    ...checkShares(moments, job),
    ...checkCoversImpeller(moments, job),
    ...coldStirringChecks(moments, turns, job),
    ...checkClarity(job, contents, whenMatched(moments)),
    checkCoverage(job, contents, expected),
    ...checkParticlesHeld(job, moments, expected),
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

/** The oil stays below what inverted in trials; where packing begins is said beside it. */
function checkCeiling(job: Job, contents: readonly Content[]): Check {
  const oil = oilFractionOf(phasesOfGel(job, contents), job.process.temperatureRoom);
  if (typeof oil === "string")
    return {
      id: "oil-fraction-ceiling",
      verdict: "not known",
      statement: `The volume fraction of oil is not known: ${oil}.`,
      value: "not known",
      limit: "not known",
      source: job.bench.source,
    };
  const { ceiling } = job.bench.coldRoute ?? {};
  const check = checkOilFraction({
    volumeFractionOil: oil,
    ...(ceiling !== undefined && { ceiling }),
    source: job.bench.source,
  });
  const { aboveClosest } = packingOf({ volumeFractionOil: oil });
  const packed =
    aboveClosest > 0
      ? "Its droplets press one another flat, as they do from 74 % by volume on."
      : "Its droplets are not packed yet: from 74 % by volume on they press one another flat.";
  return { ...check, statement: `${check.statement} ${packed}` };
}

/** No addition is larger than the bench took up at once. */
function checkShares(moments: readonly ColdMoment[], job: Job): readonly Check[] {
  return moments.flatMap(({ step, added, obstacle }): readonly Check[] => {
    if (step.do !== "add") return [];
    const check = { id: `additions-within-share:${step.phase}`, source: job.bench.source };
    const first = added?.rows[0];
    if (!added || !first)
      return [
        {
          ...check,
          verdict: "not known",
          statement: `In what steps phase ${step.phase} goes in is not known: ${obstacle ?? added?.timesNotKnown ?? "no schedule"}.`,
          value: "not known",
          limit: "not known",
        },
      ];
    if (added.form === "stream")
      return [
        {
          ...check,
          verdict: "not known",
          statement: `Phase ${step.phase} goes in as a stream of the mean rate of the bench's additions. Whether the gel takes a stream as it took those, the bench has to show.`,
          value: `${say.kilograms(60 * (first.rate ?? 0))} a minute at first`,
          limit: "tried at the bench",
        },
      ];
    const nearest = added.rows.reduce((least, row) => (roomOf(row) < roomOf(least) ? row : least));
    return [
      {
        ...check,
        verdict: "met",
        statement: `Phase ${step.phase} goes in in ${added.rows.length} additions, none larger than what the bench took up at once.`,
        value: `first ${say.kilograms(first.mass)}, largest ${say.kilograms(Math.max(...added.rows.map(({ mass }) => mass)))}`,
        limit: `the nearest: ${say.percent(nearest.share ?? 0)} of what is in the vessel, of ${say.percent(nearest.shareGreatest ?? 0)}`,
      },
    ];
  });
}

function roomOf({
  share = 0,
  shareGreatest = 1,
}: {
  readonly share?: number;
  readonly shareGreatest?: number;
}): number {
  return 1 - share / shareGreatest;
}

/** The gel former alone covers the impeller: the first oil goes into that and nothing else. */
function checkCoversImpeller(moments: readonly ColdMoment[], { vessel, process }: Job): readonly Check[] {
  const first = moments.find(({ step }) => step.do === "add");
  if (!first) return [];
  const check = {
    id: "gel-former-covers-impeller",
    limit: `at least ${say.litres(vessel.volumeLeast)}`,
    source: `stated for the ${vessel.name}`,
  };
  const density = densityOfPhase(first.before.contents, process.temperatureRoom);
  if (typeof density === "string")
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the gel former covers the impeller is not known: ${density}.`,
        value: "not known",
      },
    ];
  const volume = massOf(first.before.contents) / density;
  const met = volume >= vessel.volumeLeast;
  return [
    {
      ...check,
      verdict: met ? "met" : "not met",
      statement: met
        ? "The gel former covers the impeller before the first oil goes in."
        : "The gel former alone does not cover the impeller: the first oil would not be stirred in. Take a smaller vessel, or start in one and move over.",
      value: say.litres(volume),
    },
  ];
}

/** There is surfactant enough for the droplets that are made. */
function checkCoverage(job: Job, contents: readonly Content[], { diameter }: ExpectedGel): Check {
  const { surfactant } = job.bench.coldRoute ?? {};
  const check = { id: "surfactant-covers-droplets", source: `area per gram from ${job.bench.source}` };
  const { oil } = phasesOfGel(job, contents);
  const density = densityOfPhase(oil, job.process.temperatureRoom);
  const missing = !surfactant
    ? "the bench does not say what area the surfactant covers"
    : diameter === undefined
      ? "the size of the droplets is not known"
      : typeof density === "string"
        ? density
        : undefined;
  if (missing !== undefined || !surfactant || diameter === undefined || typeof density === "string")
    return {
      ...check,
      verdict: "not known",
      statement: `Whether the surfactant covers all droplets is not known: ${missing}.`,
      value: "not known",
      limit: "not known",
    };
  const material = job.formula.materials[surfactant.material];
  const charged = massOf(contents.filter((content) => content.material.key === surfactant.material));
  const { asSupplied } = surfactantForDroplets({
    volumeOil: massOf(oil) / density,
    diameter,
    adsorption: surfactant.adsorption,
    strength: material?.strength ?? 1,
  });
  const met = charged >= asSupplied;
  return {
    ...check,
    verdict: met ? "met" : "not met",
    statement: met
      ? "There is surfactant enough to cover all droplets; what is dissolved or in micelles comes on top."
      : "There is too little surfactant for droplets so fine: they would run together.",
    value: `${say.kilograms(charged)} of ${material?.name ?? surfactant.material}`,
    limit: `at least ${say.kilograms(asSupplied)} for droplets of ${say.micrometres(diameter)}`,
  };
}

/** Whether the gel holds its particles: by the yield stress that was measured, else by theory. */
function checkParticlesHeld(job: Job, moments: readonly ColdMoment[], expected: ExpectedGel): readonly Check[] {
  const held = heldBy(expected, job);
  return moments.flatMap(({ step, before, after }) =>
    step.do === "add" || step.do === "charge"
      ? after.contents
          .slice(before.contents.length)
          .flatMap(({ material }) =>
            material.particle ? [checkHeld(material, material.particle, gelOf(moments), job, held)] : [],
          )
      : [],
  );
}

function heldBy({ yieldStress, yieldStressByTheory }: ExpectedGel, { bench }: Job): Plan["yieldStress"] {
  const value = yieldStress ?? yieldStressByTheory;
  const from = yieldStress === undefined ? "of packed droplets, Princen and Kiss 1989" : `stated, ${bench.source}`;
  return value === undefined ? undefined : { value, least: value, greatest: value, from };
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
  const { waterActivity: measured } = job.bench.coldRoute ?? {};
  if (measured !== undefined) return [checkWaterActivity({ least: measured, source: `measured, ${job.bench.source}` })];
  const glycerin = massOf(gelFormer.filter(isGlycerin));
  return attempt(
    () => {
      const { norrish, wilson } = waterActivity({
        massFractionGlycerin: glycerin / (glycerin + water),
        temperature: job.process.temperatureRoom,
      });
      return [
        checkWaterActivity({
          least: Math.min(norrish, wilson),
          greatest: Math.max(norrish, wilson),
          source: "glycerin and water by Norrish's law and by that of Zhang, Grace and Sun",
        }),
      ];
    },
    () => [],
  );
}
