import { notNegative, record, refuse } from "../guards.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";

/**
 * The HLB of a blend of nonionic surfactants: their mean by mass.
 *
 * $$H = \sum_i w_i\,H_i$$
 *
 * Temperature, salt and concentration are not in it. It speaks of emulsions, so of the cold route; in a gel without
 * water it means nothing.
 *
 * @param input.parts - Mass [kg] or share, 0 or more, of which only the proportions count, and HLB, 0 or more, of each surfactant.
 * @returns The HLB of the blend, between the lowest and the highest of the parts.
 * @throws CalculationError `input` where an argument is out of range.
 * @source griffin-1949 from memory
 * @example
 * ```ts
 * import { hlbOfBlend } from "gelwright/oils";
 * hlbOfBlend({ parts: [{ mass: 1.64, hlb: 15 }, { mass: 1.36, hlb: 4.7 }] }); // => 10.330666666666666
 * ```
 */
export function hlbOfBlend(input: {
  readonly parts: readonly { readonly mass: number; readonly hlb: number }[];
}): number {
  const { parts } = record(input, "input", known.hlbOfBlend);
  return meanOf(fractionsOf(parts, "mass"), (i) => notNegative(parts[i]?.hlb, `parts[${i}].hlb`));
}

/**
 * The HLB that an oil phase asks of its surfactants, an indication for the first trials on the cold route.
 *
 * $$H_\mathrm{required} = \sum_i w_i\,H_{\mathrm{required},i}$$
 *
 * Only what is in the oil phase counts, so the masses are of that phase. Published values of one oil differ by a unit or
 * two. In a hot-route gel without water there is no emulsion, and the figure means nothing.
 *
 * @param input.parts - Mass [kg] or share in the oil phase, 0 or more, and required HLB, 0 or more, of each of its parts.
 * @returns The required HLB, between the lowest and the highest of the parts.
 * @throws CalculationError `input` where an argument is out of range.
 * @source griffin-1954 from memory, ocl-210096 for worked examples
 * @example
 * ```ts
 * import { requiredHlb } from "gelwright/oils";
 * requiredHlb({ parts: [{ mass: 35, requiredHlb: 12 }, { mass: 1, requiredHlb: 10 }, { mass: 1, requiredHlb: 15 }] }); // => 12.027027027027026
 * ```
 */
export function requiredHlb(input: {
  readonly parts: readonly { readonly mass: number; readonly requiredHlb: number }[];
}): number {
  const { parts } = record(input, "input", known.requiredHlb);
  return meanOf(fractionsOf(parts, "mass"), (i) => notNegative(parts[i]?.requiredHlb, `parts[${i}].requiredHlb`));
}

/**
 * How much of the first of two surfactants brings their blend to a wanted HLB.
 *
 * $$w_1 = \frac{H - H_2}{H_1 - H_2}$$
 *
 * @param input.hlb - The HLB wanted, 0 or more.
 * @param input.hlbFirst - HLB of the first surfactant, 0 or more.
 * @param input.hlbSecond - HLB of the second surfactant, 0 or more, other than the first.
 * @returns Mass fraction of the first in the two together, 0 to 1.
 * @throws CalculationError `input` where an argument is out of range or both are alike, `unreachable` where the HLB wanted does not lie between them.
 * @source griffin-1949 from memory, solved for the share
 * @example
 * ```ts
 * import { surfactantShare } from "gelwright/oils";
 * surfactantShare({ hlb: 10.5, hlbFirst: 15, hlbSecond: 4.3 }); // => 0.5794392523364487
 * ```
 */
export function surfactantShare(input: {
  readonly hlb: number;
  readonly hlbFirst: number;
  readonly hlbSecond: number;
}): number {
  const { hlb, hlbFirst, hlbSecond } = record(input, "input", known.surfactantShare);
  const first = notNegative(hlbFirst, "hlbFirst");
  const second = notNegative(hlbSecond, "hlbSecond");
  if (first === second) refuse("input", "hlbSecond", second, "an HLB other than that of the first");
  const share = (notNegative(hlb, "hlb") - second) / (first - second);
  return share >= 0 && share <= 1 ? share : refuse("unreachable", "hlb", hlb, `between ${first} and ${second}`);
}
