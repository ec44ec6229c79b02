import type { Acid } from "./shorthand.js";

/**
 * A value of an oil as a ratio of two sums over its acids, weighted with their percentages. Without a `bottom` it is the
 * upper sum alone. Every value of a profile in this room has this form, so that its extremes can be found exactly.
 */
export interface Ratio {
  readonly top: (acid: Acid) => number;
  readonly bottom?: (acid: Acid) => number;
}

/** The value for percentages of acids. */
export function ratioOf({ top, bottom }: Ratio, acids: readonly Acid[], percentages: readonly number[]): number {
  const sum = (of: (acid: Acid) => number) =>
    acids.reduce((all, acid, i) => all + of(acid) * (percentages[i] as number), 0);
  return sum(top) / (bottom ? sum(bottom) : 1);
}
