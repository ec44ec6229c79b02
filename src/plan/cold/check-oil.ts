import type { Check } from "../../formula/index.js";
import { checkOilFraction, packingOf } from "../../gel/index.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import { say } from "../say.js";
import { densityOfPhase, oilFractionOf, phasesOfGel } from "./phases.js";
import type { ColdMoment } from "./run.js";

/** The oil stays below what inverted in trials; where packing begins is said beside it. */
export function checkMaximumOilFraction(job: Job, contents: readonly Content[]): Check {
  const oil = oilFractionOf(phasesOfGel(job, contents), job.process.temperatureRoom);
  if (typeof oil === "string")
    return {
      id: "maximum-oil-fraction",
      verdict: "not known",
      statement: `The volume fraction of oil is not known: ${oil}.`,
      value: "not known",
      limit: "not known",
      source: job.bench.source,
    };
  const { volumeFractionOilMax } = job.bench.emulsion ?? {};
  const check = checkOilFraction({
    volumeFractionOil: oil,
    ...(volumeFractionOilMax !== undefined && { volumeFractionOilMax }),
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
export function checkShares(moments: readonly ColdMoment[], job: Job): readonly Check[] {
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
    const nearest = added.rows.reduce((min, row) => (roomOf(row) < roomOf(min) ? row : min));
    return [
      {
        ...check,
        verdict: "met",
        statement: `Phase ${step.phase} goes in in ${added.rows.length} additions, none larger than what the bench took up at once.`,
        value: `first ${say.kilograms(first.mass)}, largest ${say.kilograms(Math.max(...added.rows.map(({ mass }) => mass)))}`,
        limit: `the nearest: ${say.percent(nearest.share ?? 0)} of what is in the vessel, of ${say.percent(nearest.shareMax ?? 0)}`,
      },
    ];
  });
}

function roomOf({ share = 0, shareMax = 1 }: { readonly share?: number; readonly shareMax?: number }): number {
  return 1 - share / shareMax;
}

/** The gel former alone covers the impeller: the first oil goes into that and nothing else. */
export function checkCoversImpeller(moments: readonly ColdMoment[], { vessel, process }: Job): readonly Check[] {
  const first = moments.find(({ step }) => step.do === "add");
  if (!first) return [];
  const check = {
    id: "gel-former-covers-impeller",
    limit: `at least ${say.litres(vessel.volumeMin)}`,
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
  const met = volume >= vessel.volumeMin;
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
