import { fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/**
 * The share of a mass that was lost, from a weighing before and after: evaporation on heating, or loss on drying.
 *
 * $$f = \frac{m_0 - m_1}{m_0}$$
 *
 * @param input.massBefore - Mass before, without the vessel [kg], above 0.
 * @param input.massAfter - Mass after, without the vessel [kg], 0 or more and not above the mass before.
 * @returns The loss as a mass fraction of what was there before.
 * @throws CalculationError `input` where an argument is no number or out of range, or the mass has grown.
 * @source bp-2013 appendix IX D, loss on drying (European Pharmacopoeia method 2.2.32)
 * @example
 * ```ts
 * import { lossFraction } from "gelwright/heat";
 * lossFraction({ massBefore: 0.25, massAfter: 0.245 }); // => 0.02
 * ```
 */
export function lossFraction(input: { readonly massBefore: number; readonly massAfter: number }): number {
  const { massBefore, massAfter } = record(input, "input", known.lossFraction);
  const whole = positive(massBefore, "massBefore");
  const left = notNegative(massAfter, "massAfter");
  if (left > whole) refuse("input", "massAfter", left, `not more than massBefore (${whole})`);
  return result((whole - left) / whole, "loss fraction");
}

/**
 * What must be charged so that the wanted mass is left when part of it has evaporated.
 *
 * $$m_0 = \frac{m_1}{1 - f}$$
 *
 * For a batch as a whole, or for one volatile part of it: then the others are charged as they are, and
 * the finished product has the composition of the formula.
 *
 * @param input.delivered - Mass wanted in the end [kg], above 0.
 * @param input.lossFraction - Share of the charge that is lost, 0 or more and below 1.
 * @returns The mass to charge [kg].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition, from the balance of `lossFraction`
 * @example
 * ```ts
 * import { chargeForEvaporation } from "gelwright/heat";
 * chargeForEvaporation({ delivered: 49, lossFraction: 0.02 }); // => 50
 * ```
 */
export function chargeForEvaporation(input: { readonly delivered: number; readonly lossFraction: number }): number {
  const { delivered, lossFraction: loss } = record(input, "input", known.chargeForEvaporation);
  const wanted = positive(delivered, "delivered");
  if (fraction(loss, "lossFraction") === 1) refuse("input", "lossFraction", loss, "a fraction below 1");
  return result(wanted / (1 - loss), "charge");
}

/**
 * What is left of a charge when part of it has evaporated; the inverse of `chargeForEvaporation`.
 *
 * $$m_1 = m_0\,(1 - f)$$
 *
 * @param input.charge - Mass charged [kg], above 0.
 * @param input.lossFraction - Share of the charge that is lost, 0 to 1.
 * @returns The mass left [kg].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition, from the balance of `lossFraction`
 * @example
 * ```ts
 * import { massAfterEvaporation } from "gelwright/heat";
 * massAfterEvaporation({ charge: 50, lossFraction: 0.02 }); // => 49
 * ```
 */
export function massAfterEvaporation(input: { readonly charge: number; readonly lossFraction: number }): number {
  const { charge, lossFraction: loss } = record(input, "input", known.massAfterEvaporation);
  return positive(charge, "charge") * (1 - fraction(loss, "lossFraction"));
}
