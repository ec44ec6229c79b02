import { finite, record, refuse, result } from "../guards.js";
import type { Interval } from "./interval.js";
import * as known from "./known.js";

/**
 * How sure a correlation or a property is: between which ends the true figure is to be expected.
 *
 * A band is meant to hold nineteen true figures in twenty, so that each side of it is two standard uncertainties wide.
 * It stands as data beside the function or the property that it belongs to, whose result it does not change.
 */
export interface Band {
  /** `"factor"` if the ends multiply the figure, `"difference"` if they are added to it in its own unit. */
  readonly by: "factor" | "difference";
  /** Lower end: a factor above 0 and up to 1, or a difference of 0 or less. */
  readonly min: number;
  /** Upper end: a factor of 1 or more, or a difference of 0 or more. */
  readonly max: number;
  /** Where the ends come from: a source states them, sources or measurements spread so far, or it is our judgement. */
  readonly basis: "stated" | "spread" | "judgement";
  /** Keys of the bibliography that were compared or that state it; none for a judgement that rests on none. */
  readonly sources: readonly string[];
}

/**
 * A figure with its band around it.
 *
 * $$x\,b_\mathrm{min} \le x \le x\,b_\mathrm{max} \qquad x + b_\mathrm{min} \le x \le x + b_\mathrm{max}$$
 *
 * @param input.value - The figure, in any unit; of either sign.
 * @param input.band - Its band: factors above 0, or differences in the unit of the figure.
 * @returns The figure with both ends, in its unit.
 * @throws CalculationError `input` where the figure is no number, or a band does not hold its own figure.
 * @source definition
 * @example
 * ```ts
 * import { bandAround } from "gelwright/laws";
 * const band = { by: "factor", min: 0.75, max: 1.5, basis: "judgement", sources: [] } as const;
 * bandAround({ value: 200, band }); // => { min: 150, value: 200, max: 300 }
 * ```
 */
export function bandAround(input: { readonly value: number; readonly band: Band }): Interval {
  const { value: given, band } = record(input, "input", known.bandAround);
  const value = finite(given, "value");
  const { by, min, max } = record(band, "band");
  if (by !== "factor" && by !== "difference") refuse("input", "band.by", by, '"factor" or "difference"');
  const none = by === "factor" ? 1 : 0;
  if (!(finite(min, "band.min") <= none && (by === "difference" || min > 0)))
    refuse("input", "band.min", min, by === "factor" ? "above 0 and up to 1" : "0 or less");
  if (!(finite(max, "band.max") >= none)) refuse("input", "band.max", max, `${none} or more`);
  const [low, high] = by === "factor" ? [value * min, value * max] : [value + min, value + max];
  return { min: result(Math.min(low, high), "min"), value, max: result(Math.max(low, high), "max") };
}
