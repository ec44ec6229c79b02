import { notNegative, positive, record, refuse } from "../guards.js";
import * as known from "./known.js";

/** The natural origin index of a substance that was made from natural and other parts. */
export interface DerivedIndex {
  /** The natural part of the substance [0 to 1]. */
  readonly share: number;
  /** Its natural origin index: the share where that is more than a half, else 0. */
  readonly naturalOrigin: number;
  /** The method by which the share was calculated. It is kept with the index, because the methods differ. */
  readonly method: "molar mass" | "renewable carbon";
}

/**
 * The natural origin index of a substance by the mass of its natural parts.
 *
 * $$f = \frac{M_\mathrm{natural}}{M}, \qquad I_\mathrm{no} = \begin{cases} f & f > \tfrac12 \\ 0 & f \le \tfrac12 \end{cases}$$
 *
 * Which part an atom at a joint belongs to is an open convention: the texts at hand do not say whose the
 * oxygen of an ester bond is. With it counted to the acid, isopropyl myristate from mineral-oil
 * isopropanol has 227.368/270.457 = 0.841 (C14H27O2); counted to the alcohol, 0.782 (C14H27O). Say which
 * one was used.
 *
 * This is for a single substance. A blend is the mean of its substances, each with its own index
 * (`productContent`): the rule of the half is not put to the blend.
 *
 * @param input.molarMassNatural - Molar mass of the parts of natural origin [kg/mol], 0 or more, at most that of the whole.
 * @param input.molarMass - Molar mass of the substance [kg/mol], above 0.
 * @returns The natural share, the index, and the method.
 * @throws CalculationError `input` where an argument is out of range or the part outweighs the whole.
 * @source iso-16128-1-2016 derived natural ingredients, from memory
 * @source msl-2020, more than 50 % by molecular weight
 * @example
 * ```ts
 * import { indexByMolarMass, molarMassOf } from "gelwright/natural-origin";
 * const ester = indexByMolarMass({ molarMassNatural: molarMassOf("C14H27O2"), molarMass: molarMassOf("C17H34O2") });
 * ester.naturalOrigin; // => 0.8406807736534827
 * ```
 */
export function indexByMolarMass(input: {
  readonly molarMassNatural: number;
  readonly molarMass: number;
}): DerivedIndex {
  const { molarMassNatural, molarMass } = record(input, "input", known.indexByMolarMass);
  return derived(
    notNegative(molarMassNatural, "molarMassNatural"),
    positive(molarMass, "molarMass"),
    "molar mass",
    "molarMassNatural",
  );
}

/**
 * The natural origin index of a substance by its renewable carbon.
 *
 * $$f = \frac{C_\mathrm{renewable}}{C_\mathrm{total}}, \qquad I_\mathrm{no} = \begin{cases} f & f > \tfrac12 \\ 0 & f \le \tfrac12 \end{cases}$$
 *
 * Carbon may be counted in atoms of the formula or measured as mass by radiocarbon; both give the same
 * share. It differs from the share by molar mass, so the method is recorded with the index.
 *
 * @param input.carbonRenewable - Carbon of natural origin, in atoms or as mass, 0 or more, at most the total.
 * @param input.carbonTotal - All carbon in the same measure, above 0.
 * @returns The natural share, the index, and the method.
 * @throws CalculationError `input` where an argument is out of range or the part exceeds the total.
 * @source iso-16128-1-2016 derived natural ingredients, from memory
 * @example
 * ```ts
 * import { indexByRenewableCarbon } from "gelwright/natural-origin";
 * indexByRenewableCarbon({ carbonRenewable: 16, carbonTotal: 24 }).naturalOrigin; // => 0.6666666666666666
 * indexByRenewableCarbon({ carbonRenewable: 12, carbonTotal: 24 }).naturalOrigin; // => 0
 * ```
 */
export function indexByRenewableCarbon(input: {
  readonly carbonRenewable: number;
  readonly carbonTotal: number;
}): DerivedIndex {
  const { carbonRenewable, carbonTotal } = record(input, "input", known.indexByRenewableCarbon);
  return derived(
    notNegative(carbonRenewable, "carbonRenewable"),
    positive(carbonTotal, "carbonTotal"),
    "renewable carbon",
    "carbonRenewable",
  );
}

function derived(part: number, whole: number, method: DerivedIndex["method"], path: string): DerivedIndex {
  if (part > whole) return refuse("input", path, part, `at most the whole, ${whole}`);
  const share = part / whole;
  return { share, naturalOrigin: share > 0.5 ? share : 0, method };
}
