import { refuse, show } from "../guards.js";
import { type Acid, acidOf, shorthandWanted } from "./shorthand.js";

/** A fatty acid with its names. */
export interface FattyAcid {
  /** The shorthand as a profile takes it: `18:2 n-6`. */
  readonly shorthand: string;
  /** The systematic name by IUPAC's rules; without places where the shorthand gives none. */
  readonly systematicName: string;
  /** The name in daily use, where there is one. */
  readonly trivialName?: string;
  /** Its formula: `C18H32O2`. */
  readonly formula: string;
  /** Carbon atoms of the chain, 4 to 30. */
  readonly carbons: number;
  /** Double bonds of the chain, 0 to 6. */
  readonly doubleBonds: number;
  /** The carbons from the acid group on at which the double bonds begin; empty where the shorthand gives no family. */
  readonly positions: readonly number[];
  /** Molar mass [kg/mol]. */
  readonly molarMass: number;
}

/** Stems of the chains of 4 to 30 carbons; IUPAC writes icos, not eicos, since 1975. */
const stems =
  "but pent hex hept oct non dec undec dodec tridec tetradec pentadec hexadec heptadec octadec nonadec icos henicos docos tricos tetracos pentacos hexacos heptacos octacos nonacos triacont";
const multiples = ["", "", "di", "tri", "tetra", "penta", "hexa"];

const trivialNames: Readonly<Record<string, string>> = {
  "4:0": "butyric",
  "6:0": "caproic",
  "8:0": "caprylic",
  "10:0": "capric",
  "12:0": "lauric",
  "14:0": "myristic",
  "16:0": "palmitic",
  "16:1 n-7": "palmitoleic",
  "17:0": "margaric",
  "18:0": "stearic",
  "18:1 n-9": "oleic",
  "18:1 n-12": "petroselinic",
  "18:1-OH n-9": "ricinoleic",
  "18:2 n-6": "linoleic",
  "18:3 n-3": "α-linolenic",
  "18:3 n-6": "γ-linolenic",
  "18:4 n-3": "stearidonic",
  "20:0": "arachidic",
  "20:1 n-9": "gondoic",
  "20:1 n-11": "gadoleic",
  "20:4 n-6": "arachidonic",
  "22:0": "behenic",
  "22:1 n-9": "erucic",
  "24:0": "lignoceric",
  "24:1 n-9": "nervonic",
  "26:0": "cerotic",
  "28:0": "montanic",
};

/** The shorthand that stands for a name in daily use, with or without "acid". */
export function shorthandOf(name: string): string | undefined {
  const wanted = name
    .trim()
    .toLowerCase()
    .replace(/ acid$/, "")
    .replace(/^alpha-/, "α-")
    .replace(/^gamma-/, "γ-");
  return Object.keys(trivialNames).find((shorthand) => trivialNames[shorthand] === wanted);
}

/**
 * A fatty acid from its shorthand or its name in daily use: systematic name, formula, molar mass.
 *
 * The shorthand is carbons, double bonds and, after n-, the carbon from the methyl end at which the first double bond
 * stands. Double bonds are cis and three carbons apart, as in seed oils; acids that are neither have no shorthand here.
 *
 * $$\mathrm{C}_c\mathrm{H}_{2(c-d)}\mathrm{O}_2, \qquad \Delta_k = c - n - 3\,(d - k) \quad (k = 1 \dots d)$$
 *
 * @param text - `"18:2 n-6"`, `"C18:1"`, `"C18:3 (n-3)"`, `"18:1-OH n-9"`, `"oleic acid"`.
 * @returns The acid with its names, its formula and its molar mass [kg/mol].
 * @throws CalculationError `input` where the text is none of these.
 * @source iupac-lipids-1976, appendix A
 * @source ciaaw-2021, abridged standard atomic weights
 * @example
 * ```ts
 * import { fattyAcid } from "gelwright/oils";
 * fattyAcid("C18:2 n-6").systematicName; // => "(9Z,12Z)-octadeca-9,12-dienoic acid"
 * fattyAcid("oleic acid").shorthand; // => "18:1 n-9"
 * ```
 */
export function fattyAcid(text: string): FattyAcid {
  const acid = acidOf(text) ?? (typeof text === "string" ? acidOf(shorthandOf(text)) : undefined);
  if (!acid) return refuse("input", "text", show(text), `${shorthandWanted}, or a name such as "oleic acid"`);
  const { shorthand, carbons, doubleBonds, hydroxyls, family, molarMass } = acid;
  const positions =
    family === undefined
      ? []
      : Array.from({ length: doubleBonds }, (_, k) => carbons - family - 3 * (doubleBonds - 1 - k));
  const trivial = trivialNames[shorthand];
  return {
    shorthand,
    systematicName: systematic(acid, positions),
    ...(trivial === undefined ? {} : { trivialName: `${trivial} acid` }),
    formula: `C${carbons}H${2 * (carbons - doubleBonds)}O${2 + hydroxyls}`,
    carbons,
    doubleBonds,
    positions,
    molarMass,
  };
}

function systematic({ carbons, doubleBonds, hydroxyls }: Acid, positions: readonly number[]): string {
  const stem = `${hydroxyls ? "hydroxy" : ""}${stems.split(" ")[carbons - 4]}`;
  if (doubleBonds === 0) return `${stem}anoic acid`;
  const places = positions.length ? `-${positions.join()}-` : "";
  const cis = positions.length ? `(${positions.map((position) => `${position}Z`).join()})-` : "";
  return `${cis}${stem}${doubleBonds > 1 ? "a" : ""}${places}${multiples[doubleBonds]}enoic acid`;
}
