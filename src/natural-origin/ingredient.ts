import { fraction, list, notNegative, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** The four indices of an ingredient; the product's content of the same name is their weighted mean. */
export type IndexName = "natural" | "naturalOrigin" | "organic" | "organicOrigin";

/**
 * One line of a product. An index left out is unknown and stays between bounds; it is never guessed.
 *
 * Each index is that of the material as supplied: what is declared for the active part goes through
 * `indexAsSupplied` first, or its strength would be counted twice.
 */
export interface Ingredient {
  /** What to call it. */
  readonly name?: string;
  /** Mass, or anything proportional to it [kg], 0 or more. */
  readonly mass: number;
  /** Natural index [0 to 1]. */
  readonly natural?: number;
  /** Natural origin index [0 to 1]. */
  readonly naturalOrigin?: number;
  /** Organic index [0 to 1]. */
  readonly organic?: number;
  /** Organic origin index [0 to 1]. */
  readonly organicOrigin?: number;
  /** Whether this is water added as such: its indices are then 1, 1, 0 and 0 of themselves. Water inside a raw material is not formulation water. */
  readonly formulationWater?: boolean;
}

/** Between which values a figure lies [0 to 1]; both are equal where it is known. */
export interface ContentBounds {
  readonly min: number;
  readonly max: number;
}

/** An ingredient after its checks, with the bounds of its indices. */
export interface Line {
  readonly name: string | undefined;
  readonly mass: number;
  readonly water: boolean;
  readonly min: Readonly<Record<IndexName, number>>;
  readonly max: Readonly<Record<IndexName, number>>;
}

/** The indices of formulation water. */
const ofWater: Readonly<Record<IndexName, number>> = { natural: 1, naturalOrigin: 1, organic: 0, organicOrigin: 0 };

const names = Object.keys(ofWater) as readonly IndexName[];

/**
 * What each index is a part of: organic matter is natural, and both are of natural origin. So a known
 * index bounds an unknown one, and two known ones can contradict each other. The first pair follows from
 * the others and stands here because the index between may be unknown.
 */
const parts: readonly (readonly [IndexName, IndexName])[] = [
  ["organic", "naturalOrigin"],
  ["organic", "natural"],
  ["organic", "organicOrigin"],
  ["natural", "naturalOrigin"],
  ["organicOrigin", "naturalOrigin"],
];

function lineOf(ingredient: Ingredient, path: string): Line {
  const { name, mass, formulationWater: water = false } = record(ingredient, path, known.ingredient);
  if (name !== undefined && typeof name !== "string") refuse("input", `${path}.name`, name, "a text");
  if (typeof water !== "boolean") refuse("input", `${path}.formulationWater`, water, "true or false");
  const min = { ...ofWater };
  const max = { ...ofWater };
  for (const key of names) {
    const index = ingredient[key];
    if (index !== undefined) fraction(index, `${path}.${key}`);
    if (!water) {
      min[key] = index ?? 0;
      max[key] = index ?? 1;
    } else if (index !== undefined && index !== ofWater[key])
      refuse("input", `${path}.${key}`, index, `${ofWater[key]} for formulation water`);
  }
  for (const [part, whole] of parts) {
    if (min[part] > max[whole]) refuse("input", `${path}.${part}`, min[part], `at most ${whole}, ${max[whole]}`);
    max[part] = Math.min(max[part], max[whole]);
    min[whole] = Math.max(min[whole], min[part]);
  }
  return { name, mass: notNegative(mass, `${path}.mass`), water, min, max };
}

/** The checked lines of a product that has a mass. */
export function linesOf(ingredients: readonly Ingredient[]): readonly Line[] {
  const lines = list(ingredients, "ingredients").map((each, i) => lineOf(each, `ingredients[${i}]`));
  massOf(lines);
  return lines;
}

/** The name of an index, if it is one. */
export function indexName(value: IndexName): IndexName {
  return names.includes(value) ? value : refuse("input", "content", value, `one of ${names}`);
}

/** The mass of some lines [kg], which must have one. */
export function massOf(lines: readonly Line[], path = "ingredients"): number {
  const mass = lines.reduce((sum, line) => sum + line.mass, 0);
  return mass ? result(mass, "mass") : refuse("input", path, mass, "a mass above 0");
}

/** The least or the greatest content of some lines that have a mass. */
export function contentOf(lines: readonly Line[], index: IndexName, bound: keyof ContentBounds): number {
  return lines.reduce((sum, line) => sum + line.mass * line[bound][index], 0) / massOf(lines);
}
