import type { Change } from "./change.js";
import { nearest } from "./nearest.js";
import type { Answer } from "./questions/question.js";

/** A verdict that is another from one row to the next. */
export interface Flip extends Pick<Answer, "id" | "of"> {
  /** The row after which it flips, from 0. */
  readonly row: number;
  readonly before: Answer["verdict"];
  readonly after: Answer["verdict"];
  /** The value nearest to the row before at which the verdict is that of the row after; left out where more than one value differs between the two. */
  readonly change?: Change;
}

/** Where the verdict of one answer flips along rows of changes. */
export function flipsOf(
  { id, of, verdicts }: Pick<Answer, "id" | "of"> & { readonly verdicts: readonly (Answer["verdict"] | null)[] },
  rows: readonly (readonly Change[])[],
  verdictOf: (changes: readonly Change[]) => Answer["verdict"] | undefined,
): readonly Flip[] {
  return verdicts.flatMap((before, row): readonly Flip[] => {
    const after = verdicts[row + 1];
    const [one, other] = [rows[row], rows[row + 1]];
    if (!before || !after || before === after || !one || !other) return [];
    const change = flipBetween(one, other, (changes) => verdictOf(changes) === after);
    return [{ id, of, row, before, after, ...(change && { change }) }];
  });
}

/** The value at which something begins to hold between two rows that differ in one value alone. */
function flipBetween(
  one: readonly Change[],
  other: readonly Change[],
  holds: (changes: readonly Change[]) => boolean,
): Change | undefined {
  const bare = ({ value: _, ...others }: Change): string => JSON.stringify(others);
  if (one.length !== other.length || one.some((change, i) => bare(change) !== bare(other[i] as Change)))
    return undefined;
  const differing = one.flatMap(({ value }, i) => (value === other[i]?.value ? [] : [i]));
  const [place = 0, another] = differing;
  const [from, to] = [one[place], other[place]];
  if (another !== undefined || !from || !to || from.value === to.value) return undefined;
  const withValue = (value: number): readonly Change[] =>
    other.map((change, i) => (i === place ? { ...change, value } : change));
  // There is no half of a lot, and none of an addition.
  const whole = to.change === "lots" || (to.change === "step" && to.field === "equalAdditions");
  const value = nearest({ from: from.value, to: to.value, whole }, (between) => holds(withValue(between)));
  return { ...to, value };
}
