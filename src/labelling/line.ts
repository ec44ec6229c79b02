import { nameKey, readName } from "../formula/ingredient-name.js";
import type { Named } from "../formula/merged.js";
import { list, record, refuse } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { one, type Rational, times } from "../units/rational.js";
import { withShares } from "./amounts.js";

/** How much of a substance is in a material as it is supplied. */
export interface AllergenContent {
  /** The substance, as the list of allergens names it. */
  readonly name: string;
  /** Its share of the material as supplied, as text: `"0.8 %"`. Where a supplier gives a range, its upper end. */
  readonly amount: string;
}

/** One line of the formula as its label sees it, or one part of a premix. */
export interface LabelLine {
  /** The name that goes on the label; of a premix, its name in the formula. */
  readonly name: string;
  /** How much goes in, before anything evaporates: `"12 %"`, `"0.3 kg"`, or for one line `"q.s."`. */
  readonly amount: string;
  /** Whether it is there to colour the product; left out: it is not. */
  readonly colourant?: boolean;
  /** For a premix: what is in it, with amounts of the premix. Its own name is then not on the label. */
  readonly parts?: readonly LabelLine[];
  /** Fragrance allergens in it, an empty list for none; left out: not stated. */
  readonly allergens?: readonly AllergenContent[];
}

/** An ingredient with no parts of its own, with its exact share of the product. */
export interface Leaf extends Named {
  readonly colourant: boolean;
  /** Allergens with their exact shares of the product; left out if they are not stated. */
  readonly allergens?: readonly Named[];
}

/** The ingredients of a formula, its premixes opened at any depth; all shares stay exact. */
export function openLines(lines: readonly LabelLine[], path = "lines", whole: Rational = one): readonly Leaf[] {
  return withShares(lines, path).flatMap(({ line, at, share: ofWhole }) => {
    const { colourant = false, parts, allergens } = line;
    const share = times(whole, ofWhole);
    const name = readName(line.name, `${at}.name`);
    if (typeof colourant !== "boolean") return refuse("input", `${at}.colourant`, colourant, "true or false");
    if (parts === undefined) {
      const key = nameKey(name, `${at}.name`);
      return [{ name, key, share, colourant, ...contentsOf(allergens, share, `${at}.allergens`) }];
    }
    if (allergens !== undefined || colourant)
      return refuse("input", at, name, "allergens and colourants stated of the parts of a premix, not of the whole");
    return openLines(parts, `${at}.parts`, share);
  });
}

function contentsOf(
  allergens: readonly AllergenContent[] | undefined,
  whole: Rational,
  path: string,
): Pick<Leaf, "allergens"> {
  if (allergens === undefined) return {};
  const contents = list(allergens, path).map((content, i) => {
    const { name, amount } = record(content, `${path}[${i}]`);
    return {
      name: readName(name, `${path}[${i}].name`),
      key: nameKey(name, `${path}[${i}].name`),
      share: times(whole, exactShare(amount, `${path}[${i}].amount`)),
    };
  });
  return { allergens: contents };
}
