import { readName } from "../formula/ingredient-name.js";
import { refuse } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { compare, minus, nought, one, over, type Rational, times, total } from "../units/rational.js";
import { withShares } from "./amounts.js";

/** The classes that published certification standards for natural and organic cosmetics use. */
export type CertifiedClass =
  | "physically processed agro-ingredient"
  | "chemically processed agro-ingredient"
  | "water"
  | "mineral"
  | "other";

/** One line of the formula as a certifier sees it. A material of several classes is several lines. */
export interface CertifiedLine {
  /** Its name. */
  readonly name: string;
  /** How much goes in: `"12 %"`, `"0.3 kg"`, or for one line `"q.s."`. */
  readonly amount: string;
  /** The class, as the certifier has it. */
  readonly class: CertifiedClass;
  /**
   * How much of an agro-ingredient is organic, as text, after the standard's own rules for extracts and for what was
   * chemically processed; left out: not stated. Water, minerals and the rest are never organic.
   */
  readonly organic?: string;
  /**
   * How much of a chemically processed agro-ingredient is moieties of petrochemical origin, as text; left out: not stated.
   */
  readonly petrochemical?: string;
}

/** What may lie between two bounds. */
interface Between {
  readonly min: Rational;
  readonly max: Rational;
}

/** A line that was checked: its exact share of the product, and what is organic and petrochemical of it. */
export interface Certified {
  readonly name: string;
  readonly class: CertifiedClass;
  readonly share: Rational;
  readonly organic: Between;
  readonly petrochemical: Between;
}

const never: Between = { min: nought, max: nought };
const unstated: Between = { min: nought, max: one };

export const certifiedClasses: readonly CertifiedClass[] = [
  "physically processed agro-ingredient",
  "chemically processed agro-ingredient",
  "water",
  "mineral",
  "other",
];

const isAgro = (each: CertifiedClass): boolean => each.endsWith("agro-ingredient");
const isChemical = (each: CertifiedClass): boolean => each.startsWith("chemically");
const isPhysical = (each: CertifiedClass): boolean => each.startsWith("physically");

/** The figures of a product that certification standards set thresholds for. */
export type CertifiedFigure =
  | "organic of product"
  | "organic of physically processed"
  | "organic of agro-ingredients"
  | "natural origin of product"
  | "petrochemical moieties of product"
  | "other of product";

/** Of which classes a figure is a share, and how much of a line counts to it. */
interface Rule {
  readonly of: (each: CertifiedClass) => boolean;
  readonly counts: (line: Certified) => Between;
}

const rules: Readonly<Record<CertifiedFigure, Rule>> = {
  "organic of product": { of: () => true, counts: ({ organic }) => organic },
  "organic of physically processed": { of: isPhysical, counts: ({ organic }) => organic },
  "organic of agro-ingredients": { of: isAgro, counts: ({ organic }) => organic },
  "natural origin of product": {
    of: () => true,
    counts: (line) =>
      line.class === "other"
        ? never
        : { min: minus(one, line.petrochemical.max), max: minus(one, line.petrochemical.min) },
  },
  "petrochemical moieties of product": { of: () => true, counts: ({ petrochemical }) => petrochemical },
  "other of product": {
    of: () => true,
    counts: (line) => (line.class === "other" ? { min: one, max: one } : never),
  },
};

export const certifiedFigures: readonly CertifiedFigure[] = [
  "organic of product",
  "organic of physically processed",
  "organic of agro-ingredients",
  "natural origin of product",
  "petrochemical moieties of product",
  "other of product",
];

/** The checked lines of a product. */
export function certifiedLines(lines: readonly CertifiedLine[]): readonly Certified[] {
  return withShares(lines, "lines").map(({ line, at, share }) => {
    const name = readName(line.name, `${at}.name`);
    if (!certifiedClasses.includes(line.class))
      return refuse("input", `${at}.class`, line.class, `one of ${certifiedClasses.join(", ")}`);
    return {
      name,
      class: line.class,
      share,
      organic: statedOf(line.organic, isAgro(line.class), `${at}.organic`),
      petrochemical: statedOf(line.petrochemical, isChemical(line.class), `${at}.petrochemical`),
    };
  });
}

function statedOf(text: string | undefined, possible: boolean, path: string): Between {
  if (text === undefined) return possible ? unstated : never;
  const share = exactShare(text, path);
  if (!possible && compare(share, nought) > 0) return refuse("input", path, text, "nothing in this class");
  return { min: share, max: share };
}

/** The lines of a figure's classes, each with its share of them and how much of it counts. */
function countedIn(lines: readonly Certified[], figure: CertifiedFigure) {
  const { of, counts } = rules[figure];
  const among = lines.filter((line) => of(line.class));
  const whole = total(among.map(({ share }) => share));
  return among.map((line) => ({ line, weight: over(line.share, whole), counts: counts(line) }));
}

/** A figure of a product between its bounds; nothing where no line is in its classes. */
export function figureOf(lines: readonly Certified[], figure: CertifiedFigure): Between | undefined {
  const counted = countedIn(lines, figure);
  if (counted.length === 0) return undefined;
  const bound = (which: keyof Between): Rational =>
    total(counted.map(({ weight, counts }) => times(weight, counts[which])));
  return { min: bound("min"), max: bound("max") };
}

/** What each line takes from a figure of 1, between bounds. */
export function shortfallsOf(
  lines: readonly Certified[],
  figure: CertifiedFigure,
): readonly (Between & { readonly line: Certified })[] {
  return countedIn(lines, figure).map(({ line, weight, counts }) => {
    const cost = (counted: Rational): Rational => times(weight, minus(one, counted));
    return { line, min: cost(counts.max), max: cost(counts.min) };
  });
}
