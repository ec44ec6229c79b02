/** The smallest of some numbers; a list of any length, where `Math.min(...values)` overflows the stack. Infinity for none. */
export function minOf(values: Iterable<number>): number {
  let min = Number.POSITIVE_INFINITY;
  for (const value of values) min = Math.min(min, value);
  return min;
}

/** The largest of some numbers, likewise. -Infinity for none. */
export function maxOf(values: Iterable<number>): number {
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) max = Math.max(max, value);
  return max;
}
