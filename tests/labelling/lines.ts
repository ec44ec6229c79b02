import fc from "fast-check";

/** Shares as text that add up to 100 % exactly: whole hundredths of a percent, the last line taking what is left. */
export function sharesToHundred(count: number): fc.Arbitrary<readonly string[]> {
  return fc
    .uniqueArray(fc.integer({ min: 1, max: 9999 }), { minLength: count - 1, maxLength: count - 1 })
    .map((cuts) => {
      const ends = [0, ...[...cuts].sort((a, b) => a - b), 10_000];
      return ends.slice(1).map((end, i) => `${(end - (ends[i] ?? 0)) / 100} %`);
    });
}

/** The lines in another order. */
export function shuffled<T>(lines: readonly T[]): fc.Arbitrary<readonly T[]> {
  return fc.shuffledSubarray([...lines], { minLength: lines.length, maxLength: lines.length });
}
