import { notNegative, positive, record, result, wholeNumber } from "../guards.js";
import * as known from "./known.js";

/** Between which readings a filling is left alone. */
export interface FillLimits {
  /** Of a single pack as the balance shows it, tare included [kg]. */
  readonly single: {
    /** [kg]. */
    readonly min: number;
    /** [kg]. */
    readonly max: number;
  };
  /** Of the mean of a sample, tare included [kg]. */
  readonly mean: {
    /** [kg]. */
    readonly min: number;
    /** [kg]. */
    readonly max: number;
  };
}

/**
 * The limits for weighing packs while they are filled: of single ones, and of the mean of a few.
 *
 * $$m_\mathrm{tare} + \bar m \pm z\,\sqrt{s^2 + s_\mathrm{tare}^2} \qquad m_\mathrm{tare} + \bar m \pm z\,\sqrt{\frac{s^2 + s_\mathrm{tare}^2}{n}}$$
 *
 * What a balance shows is the same hot or cold; only what evaporates in between is lost. A mean outside its limits says
 * that the filler has moved: set it anew. Three standard deviations are the custom of control charts.
 *
 * @param input.massFill - Mean content to aim at [kg], above 0.
 * @param input.spread - Standard deviation of the content [kg], 0 or more.
 * @param input.sampleSize - Packs in a sample of which the mean is taken, a whole number from 1.
 * @param input.massTare - Mean tare [kg]; 0 where the balance was tared with each pack.
 * @param input.spreadTare - Standard deviation of the tare [kg]; default 0.
 * @param input.deviations - Standard deviations to either side, above 0; default 3.
 * @returns Limits of single readings and of the mean [kg].
 * @throws CalculationError `input` where an argument is out of range, `range` where a double cannot hold the result.
 * @source common practice, no source: three standard deviations on control charts; the rest is a definition
 * @example
 * ```ts
 * import { fillLimits } from "gelwright/packing";
 * const { mean } = fillLimits({ massFill: 0.0504, spread: 0.0006, sampleSize: 5 });
 * [mean.min, mean.max].map((mass) => (1000 * mass).toFixed(2)); // => ["49.60", "51.20"]
 * ```
 */
export function fillLimits(input: {
  readonly massFill: number;
  readonly spread: number;
  readonly sampleSize: number;
  readonly massTare?: number;
  readonly spreadTare?: number;
  readonly deviations?: number;
}): FillLimits {
  const {
    massFill,
    spread,
    sampleSize,
    massTare = 0,
    spreadTare = 0,
    deviations = 3,
  } = record(input, "input", known.fillLimits);
  const gross = positive(massFill, "massFill") + notNegative(massTare, "massTare");
  const one = Math.hypot(notNegative(spread, "spread"), notNegative(spreadTare, "spreadTare"));
  const wide = positive(deviations, "deviations") * one;
  const narrow = wide / Math.sqrt(wholeNumber(sampleSize, "sampleSize", 1, 1e6));
  const around = (half: number) => ({ min: result(gross - half, "limit"), max: result(gross + half, "limit") });
  return { single: around(wide), mean: around(narrow) };
}
