import { record, result, wholeNumber, within } from "../guards.js";
import { studentT } from "../numeric/student.js";
import * as known from "./known.js";

/**
 * The factor by which a test lets the mean of a sample fall below nominal, from its confidence.
 *
 * $$k = \frac{t_{1-\alpha,\,n-1}}{\sqrt n} \qquad \bar x \ge Q_n - k\,s$$
 *
 * Acts print it rounded: 0.503 for 30 packs, 0.379 for 50, 0.640 for 20, each at 99.5 %. Where an act prints a factor, take
 * that one.
 *
 * @param input.sampleSize - Packs in the sample, a whole number from 2 to 1000.
 * @param input.confidence - One-sided, above 0.5 and below 1: 0.995 in the European directive.
 * @returns The factor.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source eec-76-211 Annex II 2.3.1
 * @example
 * ```ts
 * import { correctionFactor } from "gelwright/packing";
 * correctionFactor({ sampleSize: 50, confidence: 0.995 }).toFixed(3); // => "0.379"
 * ```
 */
export function correctionFactor(input: { readonly sampleSize: number; readonly confidence: number }): number {
  const { sampleSize, confidence } = record(input, "input", known.correctionFactor);
  const size = wholeNumber(sampleSize, "sampleSize", 2, 1000);
  const share = within(confidence, "confidence", 0.5, 1);
  return result(studentT(2 * share - 1, size - 1) / Math.sqrt(size), "correction factor");
}
