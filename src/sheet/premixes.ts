import { minOf } from "../numeric/extremes.js";
import type { Plan, WeighingLine, WeighingPremix } from "../plan/index.js";
import type { Sheet } from "./render.js";

/** A remainder below this share of a step of the balance is rounding, and not charged. */
const leftOver = 0.5;

function premixesOf({ weighing }: Plan, phase: string): readonly WeighingPremix[] {
  return weighing.premixes.filter((one) => one.phase === phase);
}

/** The mass of a line that goes into premixes [kg]. */
function massInPremixes(plan: Plan, phase: string, material: string): number {
  const parts = premixesOf(plan, phase).flatMap(({ lines }) => lines.filter((line) => line.material === material));
  return parts.reduce((sum, { mass }) => sum + mass, 0);
}

/** Whether a line goes in with premixes, all of it. */
export function isPremixed(plan: Plan, phase: string, material: string): boolean {
  const line = plan.weighing.lines.find((one) => one.phase === phase && one.material === material);
  const held = massInPremixes(plan, phase, material);
  return line !== undefined && held > 0 && line.mass - held < leftOver * line.increment;
}

/** The mass of a line that does not go into premixes [kg]. */
export function besidePremixes(plan: Plan, { phase, material, mass }: WeighingLine): number {
  return mass - massInPremixes(plan, phase, material);
}

/** The premixes that are charged with a phase, each with its mass; not those that all go into another. */
export function chargedPremixes(sheet: Sheet, phase: string): readonly string[] {
  const made = premixesOf(sheet.plan, phase);
  return made.flatMap((one) => {
    const inside = made.flatMap(({ premixes }) => premixes.filter(({ premix }) => premix === one.premix));
    const mass = inside.reduce((rest, held) => rest - held.mass, one.total);
    if (mass <= 1e-9 * one.total) return [];
    return [sheet.words.lines.kettle.premixOf({ name: one.name, mass: weighed(sheet, one, mass) })];
  });
}

/** Premixes, in the order in which they can be made, with what is weighed into each. */
export function makingPremixes(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { premixes: made } = plan.weighing;
  const { massOf, premixBeforehand, maskOn, sentences } = words.lines.kettle;
  const nameOf = (key: string): string => made.find(({ premix }) => premix === key)?.name ?? key;
  return made.map((one) => {
    const named = (what: string, mass: number): string => massOf({ material: what, mass: weighed(sheet, one, mass) });
    const materials = [
      ...one.lines.map(({ material, mass, weighing: of }) =>
        of
          ? massOf({ material: say.material(material), mass: say.weighed(mass, of.increment) })
          : named(say.material(material), mass),
      ),
      ...one.premixes.map(({ premix, mass }) => named(nameOf(premix), mass)),
    ];
    const making = premixBeforehand({ ...one, materials, total: weighed(sheet, one, one.total) });
    return one.lines.some(({ material }) => isDust(plan, material))
      ? `${making} ${sentences({ instruction: maskOn(), more: [] })}.`
      : making;
  });
}

/** A mass to the digit of the finest balance that weighs for a premix. */
function weighed({ plan, say }: Sheet, { phase, lines }: WeighingPremix, mass: number): string {
  const increments = lines.flatMap(({ material, weighing: of }) =>
    of
      ? [of.increment]
      : plan.weighing.lines
          .filter((line) => line.phase === phase && line.material === material)
          .map(({ increment }) => increment),
  );
  const finest = minOf(increments);
  return Number.isFinite(finest) ? say.weighed(mass, finest) : say.kilograms(mass);
}

/** Whether a material raises dust as it is weighed and poured. */
export function isDust({ cautions }: Plan, material: string): boolean {
  return cautions.some(({ code, materials = [] }) => code === "dust" && materials.includes(material));
}
