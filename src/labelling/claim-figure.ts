import { readName } from "../formula/ingredient-name.js";
import { record, refuse, wholeNumber } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { compare, hundred, nearestDouble, nought, one, over, roundedDown, times, total } from "../units/rational.js";
import { withShares } from "./amounts.js";
import type { LabellingCaution } from "./caution.js";
import * as known from "./known.js";

/** What a claimed figure is a share of. */
export type ClaimBasis = "whole product" | "without water" | "without water and salt";

/** One line of the formula as a claim sees it. */
export interface ClaimLine {
  /** Its name. */
  readonly name: string;
  /** How much goes in: `"12 %"`, `"0.3 kg"`, or for one line `"q.s."`. */
  readonly amount: string;
  /**
   * How much of it counts to the claim, as text: `"70 %"` for a natural origin index of 0.7, `"100 %"` for an organic oil.
   * Left out: not stated.
   */
  readonly counts?: string;
  /** Whether it is added water or salt, which some bases leave out. */
  readonly kind?: "water" | "salt";
}

/** A figure to be claimed, with its basis. */
export interface ClaimFigure {
  /** The figure that holds whatever is not stated, rounded down [%]. */
  readonly percent: number;
  /** The figure before rounding [0 to 1]: `min` with all that is not stated at 0, `max` with it at 1. */
  readonly share: { readonly min: number; readonly max: number };
  /** What it is a share of. */
  readonly basis: ClaimBasis;
  /** Ingredients whose share that counts is not stated. */
  readonly notStated: readonly string[];
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/** What each basis leaves out. */
const leftOut: Readonly<Record<ClaimBasis, readonly (string | undefined)[]>> = {
  "whole product": [],
  "without water": ["water"],
  "without water and salt": ["water", "salt"],
};

/**
 * The figure of a natural or organic claim with its basis, rounded down.
 *
 * $$C = \frac{\sum_i w_i\,c_i}{\sum_i w_i}, \qquad P = 10^{-d}\left\lfloor 10^{d} \cdot 100\,C \right\rfloor$$
 *
 * Both sums run over what the basis does not leave out. All is exact decimals of the text, so that a figure of exactly
 * 95 % does not come out as 94 %. What is not stated counts as nothing in the figure that is claimed. Which content is
 * meant (natural, natural origin, organic by an index of ISO 16128; organic by certificate) is the caller's: state it
 * beside the figure. ISO 16128 sets neither a threshold nor a rounding; 7 CFR 205.302 rounds down to whole percent and
 * leaves out water and salt.
 *
 * @param input.lines - The formula: names, amounts and what counts of each, as text.
 * @param input.basis - What the figure is a share of.
 * @param input.decimals - Decimals that are kept [0 to 6]; default 0.
 * @returns The figure rounded down, its bounds, its basis, and what was not stated.
 * @throws CalculationError `input` where an argument is out of range or amounts do not add up to 100 %; `unreachable` where the basis leaves nothing.
 * @source cfr-7-205-302 (a)(1) and (b)
 * @source iso-16128-2-2017 clause 5, from memory
 * @example
 * ```ts
 * import { claimFigure } from "gelwright/labelling";
 * const lines = [
 *   { name: "Almond Oil", amount: "87 %", counts: "100 %" },
 *   { name: "Gel Former", amount: "9.5 %", counts: "0 %" },
 *   { name: "Water", amount: "3 %", kind: "water" as const },
 *   { name: "Salt", amount: "0.5 %", kind: "salt" as const },
 * ];
 * const { percent, share } = claimFigure({ lines, basis: "without water and salt" });
 * percent; // => 90
 * share.min.toFixed(5); // => "0.90155"
 * ```
 */
export function claimFigure(input: {
  readonly lines: readonly ClaimLine[];
  readonly basis: ClaimBasis;
  readonly decimals?: number;
}): ClaimFigure {
  const { lines, basis, decimals = 0 } = record(input, "input", known.claimFigure);
  if (typeof basis !== "string" || !Object.hasOwn(leftOut, basis))
    refuse("input", "basis", basis, `one of ${Object.keys(leftOut).join(", ")}`);
  wholeNumber(decimals, "decimals", 0, 6);
  const read = withShares(lines, "lines").map(({ line: { name, counts, kind }, at, share }) => {
    if (kind !== undefined && kind !== "water" && kind !== "salt")
      refuse("input", `${at}.kind`, kind, '"water", "salt" or nothing');
    return {
      name: readName(name, `${at}.name`),
      kind,
      share,
      ...(counts !== undefined && { counts: exactShare(counts, `${at}.counts`) }),
    };
  });
  const kept = read.filter(({ kind }) => kind === undefined || !leftOut[basis].includes(kind));
  const whole = total(kept.map(({ share }) => share));
  if (compare(whole, nought) === 0)
    refuse("unreachable", "basis", basis, "something that the basis does not leave out");
  const figure = (unstated: typeof one) =>
    over(total(kept.map(({ share, counts = unstated }) => times(share, counts))), whole);
  const min = figure(nought);
  return {
    percent: roundedDown(times(min, hundred), decimals),
    share: { min: nearestDouble(min), max: nearestDouble(figure(one)) },
    basis,
    notStated: kept.flatMap(({ name, counts }) => (counts === undefined ? [name] : [])).sort(),
    caution: "responsible-person-decides",
  };
}
