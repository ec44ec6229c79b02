import type { Check } from "../../formula/index.js";
import {
  additionTemperatureMin,
  fewestAdditions,
  heatCapacityFunction,
  largestAddition,
  meltTemperatureMin,
} from "../../heat/index.js";
import { attempt } from "../attempt.js";
import { doseTemperature, doseWords } from "../dose.js";
import type { Job } from "../job.js";
import { type Content, doseOf, type Moment, massOf } from "../moment.js";
import { partsOf } from "../parts.js";
import { say } from "../say.js";

/** The gel former is dissolved before the vessel comes off the heat. */
export function checkDissolved(moments: readonly Moment[], job: Job): readonly Check[] {
  const hottest = moments
    .filter((moment) => moment.after.onHeat && doseOf(moment.after.contents) > 0)
    .sort((one, other) => (other.after.temperature ?? 0) - (one.after.temperature ?? 0))[0];
  if (!hottest) return [];
  const { contents, temperature } = hottest.after;
  const needed = doseTemperature(job, contents, "temperatureDissolving");
  const known = needed !== undefined && temperature !== undefined;
  return [
    {
      id: "gel-former-dissolves",
      verdict: !known ? "not known" : temperature >= needed ? "met" : "not met",
      statement: !known
        ? needed === undefined
          ? `No dissolving temperature was measured at a dose of ${say.percent(doseOf(contents))}.`
          : "How warm the charge gets is not known."
        : temperature >= needed
          ? "The charge gets warmer than the dissolving temperature of its gel former."
          : "The charge does not reach the dissolving temperature of its gel former: lumps will stay.",
      value: temperature === undefined ? "not known" : say.celsius(temperature),
      limit: needed === undefined ? "not measured" : `above ${say.celsius(needed)}`,
      source: `${job.bench.source}; ${doseWords(job, contents, "temperatureDissolving")}`,
    },
  ];
}

/** No addition brings the mix down to where it sets: it would set in lumps and hold air. */
export function checkAdditions(moments: readonly Moment[], job: Job): readonly Check[] {
  return moments.flatMap((moment, i) => {
    const { step, before, after } = moment;
    if (step.do !== "charge" || doseOf(before.contents) === 0 || doseOf(after.contents) === 0) return [];
    const sets = doseTemperature(job, after.contents, "temperatureSetting");
    const min = sets === undefined ? undefined : sets + job.process.settingMargin;
    const met = after.temperature === undefined || min === undefined ? undefined : after.temperature >= min;
    const verdict = met === undefined ? "not known" : met ? "met" : "not met";
    const unknown =
      sets === undefined
        ? `no setting temperature was measured at a dose of ${say.percent(doseOf(after.contents))}`
        : moment.law;
    const limits = limitsOf(moment, min, job);
    return [
      {
        id: `above-setting:${step.phase}`,
        verdict,
        statement: {
          met: `Phase ${step.phase} leaves the mix warm enough. ${limits}`,
          "not met": `Phase ${step.phase} brings the mix too near its setting temperature (step ${i + 1}). ${limits}`,
          "not known": `Whether phase ${step.phase} leaves the mix warm enough is not known: ${unknown}.`,
        }[verdict].trim(),
        value: after.temperature === undefined ? "not known" : say.celsius(after.temperature),
        limit:
          min === undefined
            ? "not measured"
            : `at least ${say.celsius(min)}, ${say.kelvins(job.process.settingMargin)} above setting`,
        source: `${job.bench.source}; ${doseWords(job, after.contents, "temperatureSetting")}`,
      },
    ];
  });
}

/** How much could go in at this temperature, and how warm all of it would have to be. */
function limitsOf({ step, before, after }: Moment, min: number | undefined, job: Job): string {
  const added = after.contents.slice(before.contents.length);
  const warm = before.temperature;
  if (step.do !== "charge" || min === undefined || warm === undefined) return "";
  if (step.temperature >= min || warm <= min) return "";
  const inside = partsOf(before.contents, before.molten, job.vessel.wall);
  const outside = partsOf(added, before.molten);
  if (typeof inside === "string" || typeof outside === "string") return "";
  const melt = inside.map((part) => ({ ...part, temperature: warm }));
  const mass = massOf(added);
  if (outside.some(({ specificHeat }) => typeof specificHeat === "object" && specificHeat.law === "melting")) return "";
  // One figure for the whole phase: that of the middle of its way.
  const middle = (step.temperature + min) / 2;
  const specificHeat = heatCapacityFunction({ parts: outside })(middle) / mass;
  const addition = { mass, specificHeat: { law: "constant", specificHeat }, temperature: step.temperature } as const;
  const max = largestAddition({ melt, addition, temperatureMin: min });
  if (max >= mass) return `Up to ${say.kilograms(max)} could go in at ${say.celsius(step.temperature)}.`;
  const remedies = [
    // The gel former is diluted part by part, so each part has a setting temperature of its own.
    () => {
      const { number, mass: each } = fewestAdditions({
        melt: inside,
        temperatureMelt: warm,
        addition,
        temperatureMin: (massAdded) => minWith(before.contents, added, massAdded / mass, min, job),
      });
      return `in ${number} equal parts of ${say.kilograms(each)}, the vessel brought back to ${say.celsius(warm)} before each`;
    },
    () => {
      const warmed = additionTemperatureMin({
        melt,
        addition,
        temperatureStored: step.temperature,
        temperatureMin: min,
      });
      return `all of it warmed to ${say.celsius(warmed)}`;
    },
    () => {
      const hotter = meltTemperatureMin({ melt: inside, addition, temperatureMin: min });
      return `all of it as it is, into a melt of ${say.celsius(hotter)}`;
    },
  ].flatMap((remedy) => attempt(remedy, () => []));
  const first = `At ${say.celsius(step.temperature)} only ${say.kilograms(max)} may go in at once.`;
  return remedies.length === 0 ? first : `${first} What would do: ${remedies.join("; or ")}.`;
}

/** The least temperature of a mix that holds a share of an addition; that of the whole where no dose near it was measured. */
function minWith(before: readonly Content[], added: readonly Content[], share: number, min: number, job: Job): number {
  const contents = [...before, ...added.map((content) => ({ ...content, mass: content.mass * share }))];
  const sets = doseTemperature(job, contents, "temperatureSetting");
  return sets === undefined ? min : Math.max(min, sets + job.process.settingMargin);
}

/** The packs are full before the gel sets in the vessel or the filler. */
export function checkFilling(moments: readonly Moment[], job: Job): readonly Check[] {
  return moments.flatMap((moment) => {
    const { step, before, after } = moment;
    if (step.do !== "fill" || doseOf(before.contents) === 0) return [];
    const sets = doseTemperature(job, before.contents, "temperatureSetting");
    const known = sets !== undefined && after.temperature !== undefined;
    const met = known && after.temperature > sets;
    return [
      {
        id: "filled-before-it-sets",
        verdict: !known ? ("not known" as const) : met ? ("met" as const) : ("not met" as const),
        statement: !known
          ? "Whether the packs are full before the gel sets is not known."
          : met
            ? "The packs are full before the gel sets."
            : "The gel sets before the last pack is full: fill faster, or keep the vessel warm.",
        value:
          after.temperature === undefined ? "not known" : `${say.celsius(after.temperature)} at the end of filling`,
        limit: sets === undefined ? "not measured" : `above ${say.celsius(sets)}`,
        source: `${job.bench.source}; ${doseWords(job, before.contents, "temperatureSetting")}`,
      },
    ];
  });
}
