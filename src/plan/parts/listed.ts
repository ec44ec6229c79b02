import type { Material } from "../../formula/index.js";
import type { Job } from "../job.js";

/** Fragrance allergens in the product, by the caller's names. Which are to be named, and from how much on, `labelFor` says by the caller's table. */
export interface PlanAllergens {
  /** Share of the product [0 to 1] and the keys of the materials that bring it, the largest first. */
  readonly found: readonly {
    readonly name: string;
    readonly massFraction: number;
    readonly materials: readonly string[];
  }[];
  /** Keys of the materials for which they are not stated: there may be more. */
  readonly notStated: readonly string[];
}

/** The allergens of all materials in the formula. */
export function allergensOf({ formula: { lines, materials } }: Job): PlanAllergens {
  const found = new Map<string, { massFraction: number; materials: string[] }>();
  const notStated = new Set<string>();
  for (const { material: key, massFraction } of lines) {
    const { allergens = [], allergensStated = false } = materials[key] as Material;
    if (!allergensStated) notStated.add(key);
    for (const { name, massFraction: share } of allergens) {
      const one = found.get(name) ?? { massFraction: 0, materials: [] };
      one.massFraction += massFraction * share;
      if (!one.materials.includes(key)) one.materials.push(key);
      found.set(name, one);
    }
  }
  return {
    found: [...found]
      .map(([name, one]) => ({ name, ...one }))
      .sort((one, other) => other.massFraction - one.massFraction),
    notStated: [...notStated],
  };
}

/** Names for the ingredient list, by the keys of the materials that state one. */
export function listingNamesOf({ formula: { materials } }: Job): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.values(materials).flatMap(({ key, listingName }) => (listingName === undefined ? [] : [[key, listingName]])),
  );
}
