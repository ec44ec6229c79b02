import { refuse } from "../guards.js";
import type { Entry, Range } from "./profile.js";
import { type Ratio, ratioOf } from "./ratio.js";

/**
 * The minimum and maximum of a ratio over all profiles within the limits whose percentages add up to 100.
 *
 * For a plain sum this is the continuous knapsack problem: every acid starts at its minimum, and what is left of the 100 %
 * goes to the acids in the order of their weight, each up to its maximum. For a ratio the weights are those of
 * top − value · bottom at the value reached so far, until that improves no more (Dinkelbach); each round is the exact
 * optimum of its own sum, so the last one is the optimum of the ratio.
 *
 * @source dantzig-1957 from memory, dinkelbach-1967 from memory
 */
export function extremesOf(ratio: Ratio, entries: readonly Entry<Range>[]): Range {
  return [extreme(ratio, entries, -1), extreme(ratio, entries, 1)];
}

function extreme(ratio: Ratio, entries: readonly Entry<Range>[], sign: 1 | -1): number {
  const acids = entries.map(({ acid }) => acid);
  const { top, bottom = () => 0 } = ratio;
  let value: number | undefined;
  for (;;) {
    const at = value ?? 0;
    const order = acids.map((acid) => sign * (top(acid) - at * bottom(acid)));
    const next = ratioOf(ratio, acids, filled(entries, order));
    // Rounding ends the search as surely as the optimum does: only a strict improvement goes on.
    if (value !== undefined && sign * (next - value) <= 0) return value;
    value = next;
  }
}

function filled(entries: readonly Entry<Range>[], weights: readonly number[]): readonly number[] {
  const amounts = entries.map(({ value }) => value[0]);
  let rest = 100 - amounts.reduce((sum, amount) => sum + amount, 0);
  const order = entries.map((_, i) => i).sort((a, b) => (weights[b] as number) - (weights[a] as number));
  for (const i of order) {
    const [min, max] = (entries[i] as Entry<Range>).value;
    const more = Math.min(Math.max(rest, 0), max - min);
    amounts[i] = min + more;
    rest -= more;
  }
  return amounts;
}

/** The limits, if some profile within them adds up to 100 %. */
export function feasible(entries: readonly Entry<Range>[], path: string): readonly Entry<Range>[] {
  const min = entries.reduce((sum, { value }) => sum + value[0], 0);
  const max = entries.reduce((sum, { value }) => sum + value[1], 0);
  return min <= 100 + 1e-9 && max >= 100 - 1e-9
    ? entries
    : refuse("unreachable", path, `sums from ${min} to ${max} %`, "limits between which 100 % can be reached");
}
