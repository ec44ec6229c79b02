import { fraction, notNegative, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/** Gel former and the oil that it gels, both in one unit. */
export interface GelFormerAndOil {
  /** Gel former [kg, or % of the formula]. */
  readonly gelFormer: number;
  /** Oil that it gels, in the unit of the gel former. */
  readonly oil: number;
}

/**
 * How much oil there is to a unit of gel former, by mass: the gel-former-to-oil ratio as one number.
 *
 * $$r = \frac{m_\mathrm{oil}}{m_\mathrm{gel\,former}}$$
 *
 * @param input.gelFormer - Gel former, above 0 [kg, or % of the formula].
 * @param input.oil - Oil that it gels, 0 or more, in the same unit.
 * @returns The ratio [kg oil per kg gel former].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { ratioOf } from "gelwright/gel";
 * ratioOf({ gelFormer: 8, oil: 88 }); // => 11
 * ```
 */
export function ratioOf(input: GelFormerAndOil): number {
  const { gelFormer, oil } = record(input, "input", known.ratioOf);
  return result(notNegative(oil, "oil") / positive(gelFormer, "gelFormer"), "ratio");
}

/**
 * The ratio of oil to gel former in a gel of these two alone, from the gel former's share of it.
 *
 * $$r = \frac{1 - w}{w}$$
 *
 * @param input.shareGelFormer - Mass fraction of gel former in gel former and oil together, above 0 and up to 1.
 * @returns The ratio [kg oil per kg gel former].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { ratioOfShare } from "gelwright/gel";
 * ratioOfShare({ shareGelFormer: 0.08 }); // => 11.5
 * ```
 */
export function ratioOfShare(input: { readonly shareGelFormer: number }): number {
  const { shareGelFormer } = record(input, "input", known.ratioOfShare);
  const share = positive(fraction(shareGelFormer, "shareGelFormer"), "shareGelFormer");
  return result((1 - share) / share, "ratio");
}

/**
 * The gel former's share of a gel of gel former and oil alone, from the ratio of oil to gel former.
 *
 * $$w = \frac{1}{1 + r}$$
 *
 * @param input.ratio - Oil per gel former by mass, 0 or more.
 * @returns The mass fraction of gel former in gel former and oil together.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { shareOfRatio } from "gelwright/gel";
 * shareOfRatio({ ratio: 9 }); // => 0.1
 * ```
 */
export function shareOfRatio(input: { readonly ratio: number }): number {
  return 1 / (1 + notNegative(record(input, "input", known.shareOfRatio).ratio, "ratio"));
}

/**
 * Splits a total of gel former and oil by their ratio.
 *
 * $$m_\mathrm{gel\,former} = \frac{m}{1 + r} \qquad m_\mathrm{oil} = \frac{r\,m}{1 + r}$$
 *
 * @param input.total - Gel former and oil together, above 0 [kg, or % of the formula].
 * @param input.ratio - Oil per gel former by mass, 0 or more.
 * @returns Gel former and oil, in the unit of the total.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { massesForTotal } from "gelwright/gel";
 * massesForTotal({ total: 60, ratio: 11 }).oil; // => 55
 * ```
 */
export function massesForTotal(input: { readonly total: number; readonly ratio: number }): GelFormerAndOil {
  const { total, ratio } = record(input, "input", known.massesForTotal);
  const whole = positive(total, "total");
  const share = notNegative(ratio, "ratio") + 1;
  return { gelFormer: whole / share, oil: whole * (ratio / share) };
}

/**
 * The oil that a stock of gel former can take at a ratio.
 *
 * $$m_\mathrm{oil} = r\,m_\mathrm{gel\,former}$$
 *
 * @param input.gelFormer - Gel former in stock, above 0 [kg, or % of the formula].
 * @param input.ratio - Oil per gel former by mass, 0 or more.
 * @returns The oil, in the unit of the gel former.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { oilForGelFormer } from "gelwright/gel";
 * oilForGelFormer({ gelFormer: 2.5, ratio: 11 }); // => 27.5
 * ```
 */
export function oilForGelFormer(input: { readonly gelFormer: number; readonly ratio: number }): number {
  const { gelFormer, ratio } = record(input, "input", known.oilForGelFormer);
  return result(positive(gelFormer, "gelFormer") * notNegative(ratio, "ratio"), "oil");
}

/**
 * The gel former that an amount of oil needs at a ratio.
 *
 * $$m_\mathrm{gel\,former} = \frac{m_\mathrm{oil}}{r}$$
 *
 * @param input.oil - Oil to be gelled, above 0 [kg, or % of the formula].
 * @param input.ratio - Oil per gel former by mass, above 0.
 * @returns The gel former, in the unit of the oil.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { gelFormerForOil } from "gelwright/gel";
 * gelFormerForOil({ oil: 33, ratio: 11 }); // => 3
 * ```
 */
export function gelFormerForOil(input: { readonly oil: number; readonly ratio: number }): number {
  const { oil, ratio } = record(input, "input", known.gelFormerForOil);
  return result(positive(oil, "oil") / positive(ratio, "ratio"), "gel former");
}
