import type { Formula, FormulaLine, Material } from "../formula/index.js";
import type { CertifiedLine, ClaimLine, LabelLine, LabelParticle } from "../labelling/index.js";
import type { ClaimedIndex } from "./documents/label.js";
import { stated } from "./unknown.js";

/** Twelve digits give every share that people write back as they wrote it: thresholds are compared on its text. */
const digits = 12;

/** A share as the text that the kernels of a label read. */
export function shareText(massFraction: number): string {
  return `${Number((100 * massFraction).toPrecision(digits))} %`;
}

/** The line that takes the rest does so here as well, so that all of them make up the product exactly. */
function amountOf({ massFraction, carrier }: FormulaLine): string {
  return carrier ? "q.s." : shareText(massFraction);
}

/** The lines of a formula with their materials. */
export function linesOf({
  lines,
  materials,
}: Formula): readonly { readonly line: FormulaLine; readonly of: Material }[] {
  return lines.flatMap((line) => {
    const of = materials[line.material];
    return of ? [{ line, of }] : [];
  });
}

/** The name of a material on a label; its own where no other is stated. */
export function listingNameOf({ listingName, name }: Material): string {
  return listingName ?? name;
}

/** Each line as a label sees it: a material that is mixed of several stands by its parts. */
export function labelLines(formula: Formula): readonly LabelLine[] {
  return linesOf(formula).map(({ line, of }): LabelLine => {
    const own = { name: listingNameOf(of), amount: amountOf(line) };
    const colourant = of.function === "colourant" ? { colourant: true } : {};
    const { ingredients = [], allergens } = of;
    if (ingredients.length === 0) return { ...own, ...colourant, ...allergensIn(of, 1) };
    const main = ingredients.reduce((one, other) => (other.massFraction > one.massFraction ? other : one));
    return {
      ...own,
      // The largest part takes the rest, and with it what is stated of the whole.
      parts: ingredients.map((part) => ({
        name: part.name,
        amount: part === main ? "q.s." : shareText(part.massFraction),
        ...colourant,
        ...(part === main || allergens.length === 0 ? allergensIn(of, part.massFraction) : { allergens: [] }),
      })),
    };
  });
}

/** The allergens of a material as shares of one part of it; left out if they are not stated. */
function allergensIn({ allergens, allergensStated }: Material, part: number): Pick<LabelLine, "allergens"> {
  if (!allergensStated) return {};
  return { allergens: allergens.map(({ name, massFraction }) => ({ name, amount: shareText(massFraction / part) })) };
}

/** The particles of a formula, with what they are made of if that is stated. */
export function particlesIn(formula: Formula): readonly LabelParticle[] {
  return linesOf(formula)
    .filter(({ of }) => of.particle || of.function === "particle")
    .map(({ line, of }) => ({
      name: listingNameOf(of),
      amount: shareText(line.massFraction),
      ...(of.particle?.nature !== undefined && { nature: of.particle.nature }),
    }));
}

/** Each line as a claim sees it, by an index. An index of the active part holds for that part alone. */
export function claimLines(formula: Formula, index: ClaimedIndex): readonly ClaimLine[] {
  return linesOf(formula).map(({ line, of }): ClaimLine => {
    const { [index]: value, of: whose } = of.indices ?? { of: "material as supplied" };
    const isPart = whose === "active part" && of.strength < 1;
    const isWater = of.formulationWater || of.function === "water";
    return {
      name: of.key,
      amount: amountOf(line),
      // Of the part that no index speaks of nothing is claimed.
      ...(value !== undefined && { counts: shareText(isPart ? value * of.strength : value) }),
      ...(isWater && { kind: "water" }),
    };
  });
}

/** Each line as a certifier sees it. */
export function certifiedLines(formula: Formula): readonly CertifiedLine[] {
  return linesOf(formula).map(({ line, of }): CertifiedLine => {
    const { class: own, organic, petrochemical } = stated(of.certified, "material-certified-class", { of: of.key });
    return {
      name: of.key,
      amount: amountOf(line),
      class: own,
      ...(organic !== undefined && { organic: shareText(organic) }),
      ...(petrochemical !== undefined && { petrochemical: shareText(petrochemical) }),
    };
  });
}
