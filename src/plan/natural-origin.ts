import type { Check, Formula } from "../formula/index.js";
import { type Ingredient, largestShare, productContent, shortfalls } from "../natural-origin/index.js";
import { attempt } from "./attempt.js";
import type { Job } from "./job.js";
import type { NaturalOrigin } from "./plan.js";
import { say } from "./say.js";

/**
 * The lines of a formula as ISO 16128 ingredients. An index that speaks of the active part holds for that part alone:
 * the rest of the material is an ingredient of its own whose index is not known.
 */
function ingredientsOf(formula: Formula): readonly Ingredient[] {
  return formula.lines.flatMap(({ material: key, massFraction }): readonly Ingredient[] => {
    const material = formula.materials[key];
    if (!material) return [];
    const { name, indices, formulationWater, strength } = material;
    const { of, ...known } = indices ?? { of: "material as supplied" };
    if (formulationWater) return [{ name, mass: massFraction, formulationWater }];
    if (of === "material as supplied" || strength === 1) return [{ name, mass: massFraction, ...known }];
    return [
      { name: `${name}, active part`, mass: massFraction * strength, ...known },
      { name: `${name}, carrier`, mass: massFraction * (1 - strength) },
    ];
  });
}

/** The figure, what it hangs on, and on the hot route the most gel former that keeps the claim. */
export function naturalOriginOf({ formula, process }: Job): NaturalOrigin {
  const ingredients = ingredientsOf(formula);
  const { withFormulationWater, withoutFormulationWater } = productContent({ ingredients }).naturalOrigin;
  return {
    withFormulationWater,
    withoutFormulationWater,
    shortfalls: shortfalls({ ingredients }).map(({ name = "", min, max }) => ({
      material: name,
      min,
      max,
    })),
    // The gel former of the cold route is no one material that could give way to the carrier.
    largestGelFormer: process.route === "hot" ? largestGelFormer(formula, ingredients) : undefined,
  };
}

function largestGelFormer(formula: Formula, ingredients: readonly Ingredient[]): NaturalOrigin["largestGelFormer"] {
  const { claimNaturalOrigin: claim, materials, lines } = formula;
  const formers = lines.filter((line) => materials[line.material]?.function === "gel former");
  // Of several none can be named: how they share the figure is the formulator's choice.
  const former = formers.length === 1 ? materials[formers[0]?.material ?? ""]?.name : undefined;
  const carrier = materials[lines.find((line) => line.carrier)?.material ?? ""]?.name;
  const once = (name: string): boolean => ingredients.filter((ingredient) => ingredient.name === name).length === 1;
  if (
    claim === undefined ||
    former === undefined ||
    carrier === undefined ||
    former === carrier ||
    !once(former) ||
    !once(carrier)
  )
    return undefined;
  // Unreachable: the claim fails even without this gel former. The check says so; there is no share to name.
  return attempt(
    () => {
      return {
        material: former,
        massFraction: largestShare({ ingredients, ingredient: former, replacing: carrier, claim }).share,
      };
    },
    () => undefined,
  );
}

/** The claimed figure lies within what every completion of the unknown indices allows. */
export function checkClaim(formula: Formula, { withFormulationWater: content }: NaturalOrigin): readonly Check[] {
  const claim = formula.claimNaturalOrigin;
  if (claim === undefined) return [];
  const slack = 1e-9;
  const verdict = content.min >= claim - slack ? "met" : content.max < claim - slack ? "not met" : "not known";
  return [
    {
      id: "natural-origin-claim",
      verdict,
      statement: {
        met: "The natural-origin content carries the claim.",
        "not met": "The natural-origin content does not carry the claim.",
        "not known": "An index is not known: the content may or may not carry the claim.",
      }[verdict],
      value:
        content.min === content.max
          ? say.percent(content.min)
          : `${say.percent(content.min)} to ${say.percent(content.max)}`,
      limit: `at least ${say.percent(claim)}`,
      source: "ISO 16128-2, content with formulation water; indices as the formula states them",
    },
  ];
}
