import { fraction, record } from "../guards.js";
import * as known from "./known.js";

/**
 * The index of a material as it is supplied, from the index of its active part and that of its carrier.
 *
 * $$I = a\,I_\mathrm{active} + (1 - a)\,I_\mathrm{carrier}$$
 *
 * `Ingredient` takes indices as supplied. A supplier who states the index of the active part alone is
 * brought there with this, once; a declared index for the material as supplied already holds its strength.
 *
 * @param input.index - Any of the four indices, of the active part [0 to 1].
 * @param input.strength - Mass fraction of the active part in the material [0 to 1].
 * @param input.carrierIndex - The same index of what carries it: solvent, water, salt, preservative [0 to 1].
 * @returns The index of the material as supplied [0 to 1].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source gost-r-iso-16128-2-2022 4.1, the parts of a mixture are counted separately
 * @example
 * ```ts
 * import { indexAsSupplied } from "gelwright/natural-origin";
 * indexAsSupplied({ index: 0.6, strength: 0.5, carrierIndex: 1 }); // => 0.8
 * ```
 */
export function indexAsSupplied(input: {
  readonly index: number;
  readonly strength: number;
  readonly carrierIndex: number;
}): number {
  const { index, strength, carrierIndex } = record(input, "input", known.indexAsSupplied);
  const active = fraction(strength, "strength");
  return active * fraction(index, "index") + (1 - active) * fraction(carrierIndex, "carrierIndex");
}
