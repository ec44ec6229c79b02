import type { Formula, Material } from "../../formula/index.js";
import {
  type ContentBounds,
  type Ingredient,
  largestShare,
  productContent,
  shortfalls,
} from "../../natural-origin/index.js";
import type { Job } from "../job.js";
import { by, where } from "../unknown.js";

/** The natural-origin content, and what it depends on. Shares 0 to 1. */
export interface NaturalOrigin {
  readonly withFormulationWater: ContentBounds;
  /** Left out if there is nothing but formulation water. */
  readonly withoutFormulationWater?: ContentBounds;
  /** What keeps the figure from 100 %, largest first, by the key of the material; they sum to 1 less the content. */
  readonly shortfalls: readonly ({ readonly material: string; readonly part?: MaterialPart } & ContentBounds)[];
  /** The most gel former that would keep the claimed figure, with the carrier making up the rest. */
  readonly largestGelFormer?: { readonly material: string; readonly massFraction: number };
}

/** The part of a material that an ingredient is, if it is not all of it. */
export type MaterialPart = "active" | "carrier";

/** An ISO 16128 ingredient with the material that it comes from. */
interface Listed {
  readonly ingredient: Ingredient;
  readonly material: string;
  readonly part?: MaterialPart;
}

/**
 * The lines of a formula as ISO 16128 ingredients. An index of the active part holds for that part alone: the rest of the
 * material is an ingredient of its own whose index is not known.
 */
function listed({ materials, lines }: Formula): readonly Listed[] {
  return lines.flatMap(({ material: key, massFraction: mass }): readonly Listed[] => {
    const { indices, formulationWater, strength } = materials[key] as Material;
    const { of, ...known } = indices ?? { of: "material as supplied" };
    if (formulationWater) return [{ material: key, ingredient: { mass, formulationWater } }];
    if (of === "material as supplied" || strength === 1) return [{ material: key, ingredient: { mass, ...known } }];
    return [
      { material: key, part: "active", ingredient: { mass: mass * strength, ...known } },
      { material: key, part: "carrier", ingredient: { mass: mass * (1 - strength) } },
    ];
  });
}

/** The natural-origin content of the product between the bounds that unknown indices leave. */
export function naturalOriginContent({ formula }: Job): ContentBounds {
  return contentOf(listed(formula)).withFormulationWater;
}

function contentOf(lines: readonly Listed[]): Pick<NaturalOrigin, "withFormulationWater" | "withoutFormulationWater"> {
  const ingredients = lines.map(({ ingredient }) => ingredient);
  const { withFormulationWater, withoutFormulationWater } = by(
    "iso-16128-2",
    () => productContent({ ingredients }).naturalOrigin,
  );
  return { withFormulationWater, ...(withoutFormulationWater && { withoutFormulationWater }) };
}

/** The figure, what it depends on, and the most gel former that keeps the claim. */
export function naturalOriginOf(job: Job): NaturalOrigin {
  const lines = listed(job.formula);
  const ingredients = lines.map(({ ingredient }) => ingredient);
  const former = claimOn(job, lines);
  return {
    ...contentOf(lines),
    shortfalls: by("iso-16128-2", () => shortfalls({ ingredients })).map(({ position, min, max }) => {
      const { material, part } = lines[position] as Listed;
      return { material, ...(part && { part }), min, max };
    }),
    // If the claim fails even without this gel former, the question says so: there is no share to give.
    ...(former && where("largestGelFormer", former)),
  };
}

/** How much of the gel former keeps the claim: only if it is one material, and can be replaced by the carrier. */
function claimOn(
  { formula, bench }: Job,
  lines: readonly Listed[],
): (() => NonNullable<NaturalOrigin["largestGelFormer"]>) | undefined {
  const { claimNaturalOrigin: claim, materials } = formula;
  // The outer phase of an emulsion is no one material that could be replaced by the carrier.
  const formers = formula.lines.filter(
    ({ material, phase }) => materials[material]?.function === "gel former" && phase !== bench.emulsion?.outerPhase,
  );
  const former = formers[0]?.material;
  const carrier = formula.lines.find((line) => line.carrier)?.material;
  const isOnce = (key: string | undefined): boolean => lines.filter(({ material }) => material === key).length === 1;
  // Of several none can be named: how they share the figure is the formulator's choice.
  if (claim === undefined || former === undefined || carrier === undefined || formers.length !== 1) return undefined;
  if (former === carrier || !isOnce(former) || !isOnce(carrier)) return undefined;
  const ingredients = lines.map(({ ingredient, material, part }) =>
    part ? ingredient : { ...ingredient, name: material },
  );
  return () => ({
    material: former,
    massFraction: by(
      "iso-16128-2",
      () => largestShare({ ingredients, ingredient: former, replacing: carrier, claim }).share,
    ),
  });
}
