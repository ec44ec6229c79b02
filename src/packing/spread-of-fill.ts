import { list, notNegative, record, refuse, result } from "../guards.js";
import { momentsOf } from "../numeric/moments.js";
import * as known from "./known.js";

/** What gross weighings and tares tell of the fill. */
export interface SpreadOfFill {
  /** Mean content [kg]. */
  readonly mean: number;
  /** Standard deviation of the content, with that of the tare taken out [kg]. */
  readonly spread: number;
  /** Standard deviation of the gross weighings [kg]. */
  readonly spreadGross: number;
  /** Standard deviation of the tares [kg]. */
  readonly spreadTare: number;
}

function weighed(masses: readonly number[], path: string): { readonly mean: number; readonly variance: number } {
  const { mean, variance } = momentsOf(list(masses, path, 2).map((mass, i) => notNegative(mass, `${path}[${i}]`)));
  return { mean: result(mean, path), variance: result(variance, path) };
}

/**
 * Mean and spread of the fill from full packs and from empty ones, weighed apart: the tare varies too, and is taken out.
 *
 * $$s_\mathrm{fill}^2 = s_\mathrm{gross}^2 - s_\mathrm{tare}^2 \qquad \bar m = \bar m_\mathrm{gross} - \bar m_\mathrm{tare}$$
 *
 * It holds where the filler does not know the tare, as a volumetric one does not. Few packs tell a spread badly: from 30
 * the true one may lie a quarter above. Where each pack is weighed empty and full, take the standard deviation of the
 * differences instead.
 *
 * @param input.gross - Full packs [kg], two at least.
 * @param input.tare - Empty packs of the same kind, with closure [kg], two at least.
 * @returns Mean content [kg] and the standard deviations of fill, gross weight and tare [kg].
 * @throws CalculationError `input` where an argument is out of range, `range` where the tares vary more than the full packs
 *   or weigh more: too few packs, or packs of two kinds.
 * @source definition, the variance of a sum of independent parts
 * @example
 * ```ts
 * import { spreadOfFill } from "gelwright/packing";
 * const fill = spreadOfFill({
 *   gross: [0.0712, 0.0704, 0.0709, 0.0717, 0.0701],
 *   tare: [0.0203, 0.0205, 0.0201, 0.0204, 0.0202],
 * });
 * (1000 * fill.mean).toFixed(2); // => "50.56"
 * (1000 * fill.spread).toFixed(2); // => "0.61"
 * ```
 */
export function spreadOfFill(input: {
  readonly gross: readonly number[];
  readonly tare: readonly number[];
}): SpreadOfFill {
  const { gross, tare } = record(input, "input", known.spreadOfFill);
  const full = weighed(gross, "gross");
  const empty = weighed(tare, "tare");
  const variance = full.variance - empty.variance;
  if (variance < 0)
    refuse(
      "range",
      "tare",
      `variance ${empty.variance} above ${full.variance}`,
      "tares that vary less than full packs",
    );
  if (!(full.mean > empty.mean)) refuse("range", "gross", full.mean, "full packs that weigh more than empty ones");
  return {
    mean: full.mean - empty.mean,
    spread: Math.sqrt(variance),
    spreadGross: Math.sqrt(full.variance),
    spreadTare: Math.sqrt(empty.variance),
  };
}
