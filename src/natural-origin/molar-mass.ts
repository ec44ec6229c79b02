import { refuse, result } from "../guards.js";

/** Abridged standard atomic weights of the elements met in oils, surfactants, salts and pearl pigments. */
const weights: Readonly<Record<string, number>> = {
  H: 1.008,
  Li: 6.94,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Ti: 47.867,
  Cr: 51.996,
  Mn: 54.938,
  Fe: 55.845,
  Cu: 63.546,
  Zn: 65.38,
  Br: 79.904,
  Sn: 118.71,
  I: 126.9,
  Ba: 137.33,
  Bi: 208.98,
};

const wanted = "a formula such as C17H34O2 or C3H5(C18H33O2)3";

/**
 * The molar mass of a molecule, or of a part of one, from its formula.
 *
 * Brackets may be nested, and a count may be a mean: `C12H25(OC2H4)7.5OH`.
 *
 * @param formula - Element symbols with their counts, no spaces.
 * @returns The molar mass [kg/mol].
 * @throws CalculationError `input` where the text is no such formula or has an element that is not in the table.
 * @source ciaaw-2021, standard atomic weights; where those are intervals, the abridged value inside is from memory
 * @example
 * ```ts
 * import { molarMassOf } from "gelwright/natural-origin";
 * molarMassOf("C17H34O2"); // => 0.270457
 * ```
 */
export function molarMassOf(formula: string): number {
  if (typeof formula !== "string") return refuse("input", "formula", formula, wanted);
  const open: number[] = [];
  let mass = 0;
  let read = 0;
  for (const [token, symbol = "", digits] of formula.matchAll(/([A-Z][a-z]?|\))(\d*\.?\d*)|\(/g)) {
    read += token.length;
    if (token === "(") {
      open.push(mass);
      mass = 0;
    } else {
      const closes = symbol === ")";
      const unit = closes ? mass : weights[symbol];
      const before = closes ? open.pop() : mass;
      if (unit === undefined) return refuse("input", "formula", symbol, `one of ${Object.keys(weights).join(" ")}`);
      const count = Number(digits || 1);
      if (!unit || before === undefined || !(count > 0)) return refuse("input", "formula", formula, wanted);
      mass = before + unit * count;
    }
  }
  // What the pattern passed over leaves the lengths unequal: spaces, charges, a count in front.
  if (read !== formula.length || open.length || !mass) refuse("input", "formula", formula, wanted);
  return result(mass / 1000, "molar mass");
}
