/** So many halvings leave of a bracket a part that no thermometer and no clock can read. */
const halvings = 30;

/** How a value is looked for: whole numbers only, or any. */
export interface Search {
  /** Where it does not hold. */
  readonly from: number;
  /** Where it holds. */
  readonly to: number;
  /** Whether only whole numbers do. */
  readonly whole?: boolean | undefined;
}

/** The value nearest to the start of a bracket at which something holds that holds at its end, found by halving. */
export function nearest({ from, to, whole }: Search, holds: (value: number) => boolean): number {
  let [without, value] = [from, to];
  for (let i = 0; i < halvings; i++) {
    const middle = whole ? Math.round((without + value) / 2) : (without + value) / 2;
    if (middle === value || middle === without) break;
    if (holds(middle)) value = middle;
    else without = middle;
  }
  return value;
}

/** So many places of a bracket are looked at for one at which something holds. */
const places = 24;

/**
 * The part of a bracket in which something begins to hold: all of it where it holds at the end; else from one place to the
 * next, of places that lie closest near the start.
 */
export function partThatHolds({ from, to, whole }: Search, holds: (value: number) => boolean): Search | undefined {
  if (holds(to)) return { from, to, whole };
  let before = from;
  for (let i = 1; i < places; i++) {
    const far = from + (to - from) * (i / places) ** 2;
    const value = whole ? Math.round(far) : far;
    if (value === before) continue;
    if (holds(value)) return { from: before, to: value, whole };
    before = value;
  }
  return undefined;
}
