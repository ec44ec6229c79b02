import { fraction, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/**
 * How much of a material as supplied brings a wanted amount of its active part.
 *
 * $$w_\mathrm{supplied} = \frac{w_\mathrm{active}}{s}$$
 *
 * @param input.active - Wanted active part, as a mass fraction of the product (0 to 1).
 * @param input.strength - Active mass fraction of the material as supplied (above 0 to 1).
 * @returns The mass fraction of the material as supplied, 0 to 1.
 * @throws CalculationError `input` for an argument out of range; `unreachable` where more than the whole product would be needed.
 * @source definition
 * @example
 * ```ts
 * import { suppliedShare } from "gelwright/formula";
 * suppliedShare({ active: 0.002, strength: 0.7 }); // => 0.002857142857142857
 * ```
 */
export function suppliedShare(input: { readonly active: number; readonly strength: number }): number {
  const { active, strength } = record(input, "input", known.suppliedShare);
  const share = fraction(active, "active") / fraction(positive(strength, "strength"), "strength");
  if (share > 1)
    refuse("unreachable", "active", active, `${strength} at most: the strength of the material, undiluted`);
  return result(share, "supplied share");
}
