import { list, notNegative, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/**
 * Amounts in one measure, as shares of their sum.
 *
 * $$w_i = \frac{a_i}{\sum_j a_j}$$
 *
 * @param input.amounts - Parts, masses or percentages, all in the same measure; 0 or more, not all 0.
 * @returns Mass fractions in the same order, summing to 1.
 * @throws CalculationError `input` for an amount out of range or a sum of zero.
 * @source definition
 * @example
 * ```ts
 * import { normalise } from "gelwright/formula";
 * normalise({ amounts: [1, 4, 5] }); // => [0.1, 0.4, 0.5]
 * ```
 */
export function normalise(input: { readonly amounts: readonly number[] }): readonly number[] {
  const { amounts } = record(input, "input", known.normalise);
  let sum = 0;
  list(amounts, "amounts", 1).forEach((amount, i) => {
    sum += notNegative(amount, `amounts[${i}]`);
  });
  if (sum === 0) refuse("input", "amounts", "a sum of 0", "amounts of which at least one is above 0");
  result(sum, "sum of amounts");
  return amounts.map((amount) => amount / sum);
}
