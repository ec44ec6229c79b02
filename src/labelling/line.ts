import { nameKey, plainName } from "../formula/ingredient-name.js";
import { list, record, refuse } from "../guards.js";
import { exactShare, one, type Rational, times } from "../units/exact.js";
import { sharesOf } from "./amounts.js";

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
  /** Fragrance allergens in it, an empty list for none; left out: nobody has stated them. */
  readonly allergens?: readonly AllergenContent[];
}

/** An ingredient with no parts of its own, with its exact share of the product. */
export interface Leaf {
  readonly name: string;
  /** What its name has in common with other spellings of it. */
  readonly key: string;
  readonly share: Rational;
  readonly colourant: boolean;
  /** Allergens with their exact shares of the product; left out where nobody has stated them. */
  readonly allergens?: readonly Content[];
}

/** An allergen within a material, as its exact share of the product. */
interface Content {
  readonly key: string;
  readonly share: Rational;
}

/** The ingredients of a formula, its premixes opened at any depth; all shares stay exact. */
export function openLines(lines: readonly LabelLine[], path = "lines", whole: Rational = one): readonly Leaf[] {
  const checked = list(lines, path, 1).map((line, i) => record(line, `${path}[${i}]`));
  const shares = sharesOf(
    checked.map(({ amount }) => amount),
    path,
    (i) => `${path}[${i}].amount`,
  );
  return checked.flatMap(({ name, colourant = false, parts, allergens }, i) => {
    const at = `${path}[${i}]`;
    const share = times(whole, shares[i] ?? one);
    const key = nameKey(name, `${at}.name`);
    if (typeof colourant !== "boolean") return refuse("input", `${at}.colourant`, colourant, "true or false");
    if (parts === undefined)
      return [{ name: plainName(name), key, share, colourant, ...contentsOf(allergens, share, `${at}.allergens`) }];
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
      key: nameKey(name, `${path}[${i}].name`),
      share: times(whole, exactShare(amount, `${path}[${i}].amount`)),
    };
  });
  return { allergens: contents };
}
