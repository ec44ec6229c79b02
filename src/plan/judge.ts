import type { Figure, Limit, Side, Verdict } from "./figure.js";

/** What a margin adds to either end of a limit, in the unit of the figure; policy, and never doubt. */
export interface Margin {
  /** Added to the lower end. */
  readonly min?: number;
  /** Taken off the upper end. */
  readonly max?: number;
}

/** How a figure lies to a limit. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly side: Side;
  /** How far the worst end of the figure is inside the moved limit; below 0 outside, `null` where an end is open. */
  readonly room: number | null;
}

/**
 * Judges a figure by a limit, each of whose ends the margin has moved inwards.
 *
 * Met, if the whole figure lies within the limit wherever that may lie; not met, if all of it lies outside however the
 * limit lies; else not known. An open end is inside nothing and outside nothing. Equality is inside.
 */
export function judge(figure: Figure, limit: Limit, margin: Margin = {}): Judgement {
  const low = limit.min && fromBelow(figure, moved(limit.min, margin.min ?? 0));
  const high = limit.max && fromBelow(mirrored(figure), moved(mirrored(limit.max), margin.max ?? 0));
  if (low?.verdict === "not-met") return { ...low, side: "below" };
  if (high?.verdict === "not-met") return { ...high, side: "above" };
  const ends = [low, high].filter((end) => end !== undefined);
  const open = ends.find((end) => end.verdict === "not-known");
  // An empty limit lets nothing in, also where the figure is not known.
  if (open && isEmpty(limit, margin)) return { verdict: "not-met", side: "none", room: open.room };
  const rooms = ends.map((end) => end.room);
  const room = rooms.includes(null) ? null : Math.min(...(rooms as readonly number[]));
  return { verdict: open || ends.length === 0 ? "not-known" : "met", side: "none", room };
}

/** The figure against a limit from below. */
function fromBelow(figure: Figure, limit: Figure): Omit<Judgement, "side"> {
  const within = figure.min !== null && limit.max !== null && figure.min >= limit.max;
  const outside = figure.max !== null && limit.min !== null && figure.max < limit.min;
  const room = figure.min === null || limit.max === null ? null : figure.min - limit.max;
  return { verdict: within ? "met" : outside ? "not-met" : "not-known", room };
}

function isEmpty({ min, max }: Limit, margin: Margin): boolean {
  if (!min || !max || min.min === null || max.max === null) return false;
  return min.min + (margin.min ?? 0) > max.max - (margin.max ?? 0);
}

function moved({ min, max }: Figure, by: number): Figure {
  return { min: min === null ? null : min + by, max: max === null ? null : max + by };
}

function mirrored({ min, max }: Figure): Figure {
  return { min: max === null ? null : -max, max: min === null ? null : -min };
}

/** One state that an answer quantifies over, judged. */
export interface Judged<State> extends Judgement {
  readonly state: State;
}

/** The state that decides, and with it the answer: of every state the worst, of some the best. No state is no answer. */
export function deciding<State>(
  states: readonly Judged<State>[],
  quantifier: "every" | "some",
): Judged<State> | undefined {
  const order: Readonly<Record<Verdict, number>> =
    quantifier === "every" ? { "not-met": 0, "not-known": 1, met: 2 } : { met: 0, "not-known": 1, "not-met": 2 };
  const sign = quantifier === "every" ? 1 : -1;
  return states.reduce<Judged<State> | undefined>((first, one) => {
    if (!first) return one;
    const ahead = order[first.verdict] - order[one.verdict];
    if (ahead !== 0) return ahead < 0 ? first : one;
    return sign * (roomOf(one) - roomOf(first)) < 0 ? one : first;
  }, undefined);
}

/** Of two open figures neither is worse; an open one is worse than any that is known. */
function roomOf({ room }: Judgement): number {
  return room ?? -Number.MAX_VALUE;
}
