import type { Material } from "../../formula/index.js";
import { oxidationRanking, profileValues } from "../../oils/index.js";
import type { Content } from "../contents.js";
import type { NotKnown } from "../figure.js";
import { settingMarginOf } from "../job.js";
import type { Moment, Run } from "../state.js";
import type { Step } from "../step-documents.js";
import { by, either, otherwise, type Reason, Unknown, unknown, where } from "../unknown.js";
import { isHeated, massOfMaterial, untilFilled } from "./in-vessel.js";
import { equivalentOf } from "./thermal-exposure.js";

/** What is known of one oil before it is ranked among the others. */
interface Heated {
  /** Whether it is in the vessel while that is on the heat. */
  readonly onHeat: boolean;
  /** Cox value from its fatty acids. */
  readonly oxidisability: number;
  /** Share of the product [0 to 1]. */
  readonly massFraction: number;
  /** The time [s] at `temperatureReference` that does as much as its way through the vessel. */
  readonly equivalentTime: number;
  /** The same if it is charged after the heat is off [s]. */
  readonly equivalentTimeOffHeat: number;
  /** Whether the mix would come too near its setting temperature if the oil waited; left out if that is not known. */
  readonly setsIfOffHeat?: boolean;
}

/** What the heat of the run does to one oil, and what it would do if the oil waited until the heat is off. */
export interface OxidationRank extends Heated {
  /** The temperature of the room, for which all these times count [°C]. */
  readonly temperatureReference: number;
  /** Cox value times share times the equivalent time, as planned [s]. */
  readonly burden: number;
  /** The same if it is charged after the heat is off [s]. */
  readonly burdenOffHeat: number;
  /** What charging it after the heat is off takes away [s]. */
  readonly spared: number;
  /** What it has of all that the heat does to the oils that are known [0 to 1]. */
  readonly share: number;
}

/** One oil by its key, ranked; or why it cannot be ranked. */
export type RankedOil = { readonly material: string } & (OxidationRank | NotKnown);

/**
 * The oils of a process that heats, ranked by what charging them after the heat is off would spare them: the largest
 * saving first, those that cannot be ranked last. For an oil that is charged on the heat the process is run again with
 * that oil charged after the heat is off.
 */
export function oxidationRankingOf(run: Run): readonly RankedOil[] {
  if (!isHeated(run)) return [];
  const oils = [...new Set(run.weighed.map(({ material }) => material))].filter(
    (material) => material.function === "oil",
  );
  const known = new Map<string, Heated>();
  const notRanked: RankedOil[] = [];
  for (const oil of oils) {
    const heated = otherwise(
      () => heatedOil(run, oil),
      (notKnown) => {
        notRanked.push({ material: oil.key, notKnown });
        return undefined;
      },
    );
    if (heated) known.set(oil.key, heated);
  }
  if (known.size === 0) return notRanked;
  const ranked = by("oxidisability", () =>
    oxidationRanking({ oils: [...known].map(([name, oil]) => ({ ...oil, name })) }),
  );
  const temperatureReference = run.job.process.room;
  return [
    ...ranked.flatMap(({ name: material, ...burden }): readonly RankedOil[] => {
      const heated = known.get(material);
      return heated ? [{ material, temperatureReference, ...heated, ...burden }] : [];
    }),
    ...notRanked,
  ];
}

function heatedOil(run: Run, material: Material): Heated {
  const { key } = material;
  const oxidisability = oxidisabilityOf(material);
  const moments = untilFilled(run);
  const from = moments.findIndex((moment) => massOfMaterial(moment, key) > 0);
  if (from < 0) unknown("nothing-there", { of: key });
  const onHeat = moments.slice(from).some(({ after }) => after.onHeat);
  const massFraction = shareOf(moments, key);
  const oil = { onHeat, oxidisability, massFraction };
  // What does not oxidise needs no kinetics to be ranked last.
  if (oxidisability === 0) return { ...oil, equivalentTime: 0, equivalentTimeOffHeat: 0, setsIfOffHeat: false };
  const equivalentTime = equivalentOf(run, material);
  if (!onHeat) return { ...oil, equivalentTime, equivalentTimeOffHeat: equivalentTime, setsIfOffHeat: false };
  return { ...oil, equivalentTime, ...offHeat(run, material) };
}

/** Share of a material in all that is in the vessel before it is filled. */
function shareOf(moments: readonly Moment[], key: string): number {
  const last = moments.at(-1) ?? unknown("not-done");
  const { charge } = last.after.inPacks ? last.before : last.after;
  return charge.shares().get(key) ?? unknown("nothing-there", { of: key });
}

/** The Cox value of a material from its fatty acids. */
function oxidisabilityOf({ key, fattyAcids }: Material): number {
  const acids = Object.entries(fattyAcids);
  if (acids.length === 0) unknown("not-stated", { field: "material-fatty-acids", of: key });
  const profile = Object.fromEntries(acids.map(([acid, share]) => [acid, 100 * share]));
  return by("oxidisability", () => profileValues({ profile }).oxidisability, { of: key });
}

/** What it would go through if it were charged after the heat is off: with the first phase that is, else by itself at once. */
function offHeat(run: Run, material: Material): Pick<Heated, "equivalentTimeOffHeat" | "setsIfOffHeat"> {
  const steps = run.moments.map(({ step }) => step);
  const off = steps.map((step) => step.do).lastIndexOf("take off the heat");
  if (off < 0) unknown("not-done", { of: material.key });
  const own = run.weighed.filter((content) => content.material === material).map(({ phase }) => phase);
  const isAllOfThem = run.weighed.every((one) => own.includes(one.phase) === (one.material === material));
  // A phase of the caller, or one that no phase of the caller can be.
  const alone = (isAllOfThem ? own[0] : undefined) ?? `\u0000${material.key}`;
  const charged: Step = { do: "charge", phase: alone, at: run.job.process.room };
  const before = steps.slice(0, off + 1).filter((step) => step.do !== "charge" || step.phase !== alone);
  const byItself = (): ReturnType<typeof offHeat> =>
    waited(run, material, [...before, charged, ...steps.slice(off + 1)], alone);
  const later = steps.slice(off).find((step) => step.do === "charge");
  return later ? either(() => waited(run, material, steps, later.phase), byItself) : byItself();
}

/** Runs the steps again with a material moved to a phase. */
function waited(planned: Run, material: Material, steps: readonly Step[], phase: string): ReturnType<typeof offHeat> {
  const { job } = planned;
  const weighed = planned.weighed.map(
    (content): Content => (content.material === material ? { ...content, phase } : content),
  );
  const charges = steps.filter((step) => !("phase" in step) || weighed.some((content) => content.phase === step.phase));
  const run = planned.again(charges, weighed);
  return inPhasesOf(job.formula.phases, () => ({
    equivalentTimeOffHeat: equivalentOf(run, material),
    ...where("setsIfOffHeat", () => sets(run, material)),
  }));
}

/** Whether the mix comes too near its setting temperature where a material goes in. */
function sets({ job, moments }: Run, { key }: Material): boolean {
  const charged = moments.find((moment) => massOfMaterial(moment, key) > 0) ?? unknown("nothing-there", { of: key });
  const { charge, temperature } = charged.after;
  if (charge.dose() === 0) return false;
  return temperature() < charge.setting().temperature + settingMarginOf(job);
}

/** Keeps phases and step numbers that only this run has out of a reason. */
function inPhasesOf<T>(phases: readonly string[], find: () => T): T {
  return otherwise(find, (reason): never => {
    const { phases: all, step: _, ...others } = reason;
    const own: Reason = { ...others, ...(all && { phases: all.filter((phase) => phases.includes(phase)) }) };
    throw new Unknown(own);
  });
}
