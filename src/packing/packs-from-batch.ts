import { fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import { stepsDown } from "../numeric/decimal.js";
import * as known from "./known.js";

/** Packs that a batch yields. */
export interface PacksFromBatch {
  /** Whole packs filled, those that are rejected among them. */
  readonly packs: number;
  /** Whole packs for sale. */
  readonly packsForSale: number;
  /** What is left over of the product [kg]. */
  readonly massLeft: number;
}

/**
 * How many whole packs a batch yields at a mean fill.
 *
 * $$n = \left\lfloor \frac{m_\mathrm{batch} - m_\mathrm{kept}}{\bar m} \right\rfloor$$
 *
 * Count with the mean fill, not with the nominal quantity: the overfill leaves in the packs too.
 *
 * @param input.massBatch - Product that reaches the filler [kg], above 0.
 * @param input.massFill - Mean content of a pack [kg], above 0.
 * @param input.massKept - Kept back: samples for release and stability, what stays in the line [kg]; default 0.
 * @param input.shareRejected - Share of packs that a check weigher or a look sorts out, 0 to 1; default 0.
 * @returns Whole packs, whole packs for sale, and the mass left over [kg].
 * @throws CalculationError `input` where an argument is out of range or more is kept back than there is, `range` where a
 *   double cannot hold the result.
 * @source definition
 * @example
 * ```ts
 * import { packsFromBatch } from "gelwright/packing";
 * packsFromBatch({ massBatch: 60, massFill: 0.0504, massKept: 0.9 }).packs; // => 1172
 * ```
 */
export function packsFromBatch(input: {
  readonly massBatch: number;
  readonly massFill: number;
  readonly massKept?: number;
  readonly shareRejected?: number;
}): PacksFromBatch {
  const { massBatch, massFill, massKept = 0, shareRejected = 0 } = record(input, "input", known.packsFromBatch);
  const batch = positive(massBatch, "massBatch");
  const each = positive(massFill, "massFill");
  const kept = notNegative(massKept, "massKept");
  const lost = fraction(shareRejected, "shareRejected");
  if (kept > batch) refuse("input", "massKept", kept, "not more than massBatch");
  const packs = result(stepsDown((batch - kept) / each), "packs");
  if (!Number.isSafeInteger(packs)) refuse("range", "packs", packs, "a whole number below 9e15");
  return {
    packs,
    packsForSale: stepsDown(packs * (1 - lost)),
    massLeft: Math.max(0, result(batch - kept - packs * each, "massLeft")),
  };
}
