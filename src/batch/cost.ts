import { notNegative, positive, record, result, wholeNumber } from "../guards.js";
import * as known from "./known.js";
import { each } from "./named.js";

/** What the materials of a batch cost, in the one currency of its prices. */
export interface BatchCost {
  readonly lines: readonly {
    readonly name: string;
    /** Cost of the mass charged. */
    readonly cost: number;
  }[];
  /** Cost of all lines. */
  readonly batch: number;
  /** Per kilogram delivered: losses are paid for by what arrives. */
  readonly perKilogram: number;
  /** Per pack; only where the number of packs is given. */
  readonly perPack?: number;
}

/**
 * The cost of the materials of a batch, per kilogram delivered and per pack.
 *
 * $$K = \sum_i m_i\,k_i \qquad k = \frac{K}{m_\mathrm{delivered}}$$
 *
 * @param input.lines - Name, mass charged [kg] and price per kilogram of each line, 0 or more, all in one currency.
 * @param input.delivered - Finished product [kg], above 0.
 * @param input.packs - Number of packs filled, a whole number above 0; may be left out.
 * @returns Cost of each line, of the batch, per kilogram delivered, and per pack.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { costOf } from "gelwright/batch";
 * costOf({ lines: [{ name: "oil", mass: 36, pricePerKilogram: 7.5 }], delivered: 34.5, packs: 2300 }).batch; // => 270
 * ```
 */
export function costOf(input: {
  readonly lines: readonly { readonly name: string; readonly mass: number; readonly pricePerKilogram: number }[];
  readonly delivered: number;
  readonly packs?: number;
}): BatchCost {
  const { lines, delivered, packs } = record(input, "input", known.costOf);
  const costs = each(lines, "lines", ({ name, mass, pricePerKilogram }, at) => ({
    name,
    cost: notNegative(mass, `${at}.mass`) * notNegative(pricePerKilogram, `${at}.pricePerKilogram`),
  }));
  const batch = result(
    costs.reduce((sum, { cost }) => sum + cost, 0),
    "cost of the batch",
  );
  const perKilogram = result(batch / positive(delivered, "delivered"), "cost per kilogram");
  if (packs === undefined) return { lines: costs, batch, perKilogram };
  return { lines: costs, batch, perKilogram, perPack: batch / wholeNumber(packs, "packs", 1) };
}
