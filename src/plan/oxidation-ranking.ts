import type { ScaledBatch } from "../batch/index.js";
import type { Material } from "../formula/index.js";
import { relativeRateFunction } from "../heat/index.js";
import { oxidationRanking, profileValues } from "../oils/index.js";
import { attempt } from "./attempt.js";
import { doseTemperature } from "./dose.js";
import type { OxidationRank } from "./heat-plan.js";
import type { Job, Step } from "./job.js";
import { type Content, type Moment, massOf } from "./moment.js";
import { runSteps } from "./run/run-steps.js";
import { type Exposed, exposedIn, massOfMaterial, untilFilled } from "./thermal-exposure.js";

/** What is known of one oil, before it is ranked among the others. */
interface Heated {
  readonly material: Material;
  readonly onHeat: boolean;
  readonly oxidisability: number;
  readonly massFraction: number;
  readonly equivalentTime: number;
  readonly equivalentTimeOffHeat: number;
  readonly setsIfOffHeat: boolean;
}

/**
 * The oils of the formula, ranked by what the heat of this run does to them and by what waiting would spare them. For an
 * oil that is charged on the heat the process is run again with that oil charged after the heat is off.
 */
export function oxidationRankingOf(
  job: Job,
  moments: readonly Moment[],
  exposed: Exposed,
  charge: readonly Content[],
  scaled: ScaledBatch,
): readonly OxidationRank[] {
  const inVessel = untilFilled(moments);
  const oils = Object.values(job.formula.materials).filter(
    (material) => material.function === "oil" && charge.some((content) => content.material === material),
  );
  const found = oils.map((material) => ({
    material,
    heated: heatedOil(material, job, inVessel, exposed, charge, scaled),
  }));
  const known = found.flatMap(({ heated }) => (typeof heated === "string" ? [] : [heated]));
  const ranked =
    known.length === 0
      ? []
      : oxidationRanking({ oils: known.map(({ material, ...oil }) => ({ ...oil, name: material.key })) });
  return [
    ...ranked.flatMap(({ name: key, ...burden }): readonly OxidationRank[] => {
      const oil = known.find(({ material }) => material.key === key);
      if (!oil) return [];
      const { material, ...rest } = oil;
      return [{ material: material.name, temperatureReference: job.process.temperatureRoom, ...rest, ...burden }];
    }),
    ...found.flatMap(({ material, heated }): readonly OxidationRank[] =>
      typeof heated === "string" ? [{ material: material.name, notKnown: heated }] : [],
    ),
  ];
}

function heatedOil(
  material: Material,
  job: Job,
  moments: readonly Moment[],
  exposed: Exposed,
  charge: readonly Content[],
  scaled: ScaledBatch,
): Heated | string {
  const oxidisability = oxidisabilityOf(material);
  if (typeof oxidisability === "string") return oxidisability;
  const whole = moments.at(-1)?.before;
  if (!whole) return "the process does not fill";
  const massFraction =
    massOf(whole.contents.filter((content) => content.material === material)) / massOf(whole.contents);
  const from = moments.findIndex((moment) => massOfMaterial(moment, material.key) > 0);
  const onHeat = moments.slice(from).some(({ after }) => after.onHeat);
  const oil = { material, onHeat, oxidisability, massFraction, setsIfOffHeat: false };
  // What does not oxidise needs no sensitivity to be ranked last.
  if (oxidisability === 0) return { ...oil, equivalentTime: 0, equivalentTimeOffHeat: 0 };
  const equivalentTime = equivalentOf(material, exposed, job);
  if (typeof equivalentTime === "string") return equivalentTime;
  if (!onHeat) return { ...oil, equivalentTime, equivalentTimeOffHeat: equivalentTime };
  const waited = ordersOffHeat(material, job, charge).map((order) => runOffHeat(material, order, scaled));
  if (waited.length === 0) return "the process never takes the vessel off the heat";
  const known = waited.find((run) => typeof run.equivalentTime === "number") ?? waited[0];
  return typeof known?.equivalentTime === "number"
    ? { ...oil, equivalentTime, equivalentTimeOffHeat: known.equivalentTime, setsIfOffHeat: known.sets }
    : `with it charged off the heat, ${known?.equivalentTime}`;
}

/** The Cox value of a material from its fatty acids, or why it is not known. */
function oxidisabilityOf({ fattyAcids }: Material): number | string {
  const acids = Object.entries(fattyAcids);
  if (acids.length === 0) return "no fatty acids are stated";
  return attempt(
    () => {
      return profileValues({ profile: Object.fromEntries(acids.map(([acid, share]) => [acid, 100 * share])) })
        .oxidisability;
    },
    (refusal) => `its fatty acids are not a profile, ${refusal.message}`,
  );
}

/** The time at the room's temperature that does as much as the way of a material [s]: one reference for all oils, so that their times can be laid beside one another. */
function equivalentOf(material: Material, exposed: Exposed, { process }: Job): number | string {
  const { ageingKinetics } = material;
  if (!ageingKinetics) return "no ageing kinetics are stated";
  const found = exposed(material);
  if (typeof found === "string") return found;
  return found.equivalentTime / relativeRateFunction(ageingKinetics)(process.temperatureRoom);
}

/** A job with another order of work, and what goes in with which of its charges. */
interface Order {
  readonly job: Job;
  readonly charge: readonly Content[];
}

/** Runs another order of work: what the oil goes through, and whether the mix would come too near its setting temperature. */
function runOffHeat(
  material: Material,
  { job, charge }: Order,
  scaled: ScaledBatch,
): { readonly equivalentTime: number | string; readonly sets: boolean } {
  const moments = runSteps(job, charge, scaled);
  const charged = moments.find((moment) => massOfMaterial(moment, material.key) > 0)?.after;
  const sets = charged && doseTemperature(job, charged.contents, "temperatureSetting");
  return {
    equivalentTime: equivalentOf(material, exposedIn(moments), job),
    sets:
      charged?.temperature !== undefined &&
      sets !== undefined &&
      charged.temperature < sets + job.process.settingMargin,
  };
}

/** The same process with one oil charged after the heat is off: with the first phase that is, and by itself at once. */
function ordersOffHeat(material: Material, job: Job, charge: readonly Content[]): readonly Order[] {
  if (job.process.route === "cold") return [];
  const { steps, temperatureRoom } = job.process;
  const off = steps.map((step) => step.do).lastIndexOf("take off the heat");
  if (off < 0) return [];
  const own = charge.filter((content) => content.material === material).map((content) => content.phase);
  const isAllOfThem = charge.every((one) => own.includes(one.phase) === (one.material === material));
  const alone = (isAllOfThem ? own[0] : undefined) ?? `${material.name}, by itself`;
  const step: Step = { do: "charge", phase: alone, temperature: temperatureRoom, duration: 0 };
  const before = steps.slice(0, off + 1).filter((one) => one.do !== "charge" || one.phase !== alone);
  const byItself = orderOf(material, job, charge, [...before, step, ...steps.slice(off + 1)], alone);
  const later = steps.slice(off).find((one) => one.do === "charge");
  return later ? [orderOf(material, job, charge, steps, later.phase), byItself] : [byItself];
}

function orderOf(
  material: Material,
  job: Job,
  charge: readonly Content[],
  steps: readonly Step[],
  phase: string,
): Order {
  const moved = charge.map((content) => (content.material === material ? { ...content, phase } : content));
  // Readings of the phases that it left, without the one that it joined, are of another composition now.
  const left = charge.filter((content) => content.material === material).map((content) => content.phase);
  const viscosities = job.bench.viscosities.filter(({ phases }) =>
    left.every((one) => phases.includes(one) === phases.includes(phase)),
  );
  const charged = steps.filter((step) => step.do !== "charge" || moved.some((content) => content.phase === step.phase));
  return {
    charge: moved,
    job: { ...job, bench: { ...job.bench, viscosities }, process: { ...job.process, route: "hot", steps: charged } },
  };
}
