/** Mean, variance and number of some readings. */
export interface Moments {
  readonly mean: number;
  /** Of the sample, over n − 1; 0 for a single reading. */
  readonly variance: number;
  readonly count: number;
}

/**
 * Mean and variance of one reading or more, counted from the first one, so that readings that lie close together keep
 * their digits and readings that are all the same have no variance at all.
 *
 * @source definition
 */
export function momentsOf(readings: readonly number[]): Moments {
  const count = readings.length;
  const first = readings[0] as number;
  const mean = first + readings.reduce((sum, value) => sum + (value - first) / count, 0);
  const squares = readings.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, variance: count > 1 ? squares / (count - 1) : 0, count };
}
