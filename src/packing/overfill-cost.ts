import { notNegative, positive, record, refuse, result, wholeNumber } from "../guards.js";
import * as known from "./known.js";

/** What overfill gives away. */
export interface OverfillCost {
  /** Above nominal in each pack [kg]. */
  readonly massPerPack: number;
  /** Price of that [the currency of `price`]. */
  readonly costPerPack: number;
  /** Above nominal in all packs [kg]. */
  readonly mass: number;
  /** Price of that [the currency of `price`]. */
  readonly cost: number;
}

/**
 * What the overfill costs: product above the nominal quantity, which the customer gets and does not pay for.
 *
 * $$K = n\,(\bar m - Q_n)\,p$$
 *
 * Against it stands what a smaller spread of the filler would cost: `targetFill` gives the target for both spreads.
 *
 * @param input.massFill - Mean content [kg], not below nominal.
 * @param input.nominal - Nominal quantity [kg], above 0.
 * @param input.price - Of the product [currency/kg], 0 or more.
 * @param input.packs - How many packs, a whole number.
 * @returns Mass and cost of the overfill, for a pack and for all.
 * @throws CalculationError `input` where an argument is out of range, `range` where a double cannot hold the result.
 * @source definition
 * @example
 * ```ts
 * import { overfillCost } from "gelwright/packing";
 * overfillCost({ massFill: 0.0504, nominal: 0.05, price: 24, packs: 5000 }).cost.toFixed(2); // => "48.00"
 * ```
 */
export function overfillCost(input: {
  readonly massFill: number;
  readonly nominal: number;
  readonly price: number;
  readonly packs: number;
}): OverfillCost {
  const { massFill, nominal, price, packs } = record(input, "input", known.overfillCost);
  const massPerPack = positive(massFill, "massFill") - positive(nominal, "nominal");
  if (massPerPack < 0) refuse("input", "massFill", massFill, "not below nominal");
  const each = notNegative(price, "price");
  const count = wholeNumber(packs, "packs", 1);
  const mass = result(massPerPack * count, "mass");
  return {
    massPerPack,
    costPerPack: result(massPerPack * each, "costPerPack"),
    mass,
    cost: result(mass * each, "cost"),
  };
}
