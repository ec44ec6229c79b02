import { readName } from "../formula/ingredient-name.js";
import { finite, list, record, refuse, result } from "../guards.js";
import type { LabellingCaution } from "./caution.js";
import * as known from "./known.js";

/** A change that an opened pack undergoes, measured or computed by the caller. */
export interface ChangeAfterOpening {
  /** What changes: water taken up, peroxide value, colour. */
  readonly cause: string;
  /** Its value when the pack is opened, in any unit. */
  readonly initial: number;
  /** The value to which it may fall, where the product is no longer wanted, in the same unit. This, `max` or both. */
  readonly min?: number;
  /** The value to which it may rise, where the product is no longer wanted, in the same unit. */
  readonly max?: number;
  /** How fast it changes, in the same unit per second, below 0 where it falls; left out: not known. */
  readonly rate?: number;
}

/** When one change comes to its limit. */
export interface LimitAfterOpening {
  /** What changes. */
  readonly cause: string;
  /** `"not-reached"` if it stands still, or moves the way on which no limit is stated. */
  readonly status: "reached" | "not-reached" | "not-known";
  /** The time from opening until the limit is reached [s]; 0 if it is at the limit, or past it, from the start. */
  readonly time?: number;
}

/** What a person has to decide on a period after opening with. */
export interface PeriodAfterOpening {
  /** Each change with the time that it takes, in the order given. */
  readonly changes: readonly LimitAfterOpening[];
  /** The change that is at its limit first; absent where none is known to come there. */
  readonly first?: {
    /** What changes. */
    readonly cause: string;
    /** The time from opening [s]. */
    readonly time: number;
    /** Whole months in that time. */
    readonly months: number;
  };
  /** Changes whose rate is not known: while there are any, `first` is only an upper bound. */
  readonly notKnown: readonly string[];
  /** The code of the caution. */
  readonly caution: LabellingCaution;
}

/** A twelfth of 365.25 days [s]. */
const month = 2_629_800;

/**
 * How long after opening each change of the product takes to reach its limit: the data for a person who decides on a
 * period after opening.
 *
 * $$t = \frac{x_\mathrm{limit} - x_0}{\dot x}$$
 *
 * A constant rate is the caller's assumption: take the fastest that was measured. Water taken up by an open gel and the
 * rise of a peroxide value come from the rooms that compute them; a peroxide value rises slowly at first and then fast,
 * so that a rate from early readings is too low. Microbial growth is not such a change: it needs a challenge test. The
 * function does not give the period; it says which change comes first, and which are not known.
 *
 * @param input.changes - The changes, each with its value at the start, its limits and its rate.
 * @returns The time to each limit, the first of them, and what is not known.
 * @throws CalculationError `input` where an argument is no number, or a change has no limit or two the wrong way round; `range` where a time exceeds what a double holds.
 * @source definition
 * @example
 * ```ts
 * import { periodAfterOpening } from "gelwright/labelling";
 * const { first, notKnown } = periodAfterOpening({
 *   changes: [
 *     { cause: "water taken up [%]", initial: 0, max: 2, rate: 1e-7 },
 *     { cause: "peroxide value [meq/kg]", initial: 2, max: 10 },
 *   ],
 * });
 * first?.months; // => 7
 * notKnown; // => ["peroxide value [meq/kg]"]
 * ```
 */
export function periodAfterOpening(input: { readonly changes: readonly ChangeAfterOpening[] }): PeriodAfterOpening {
  const changes = list(record(input, "input", known.periodAfterOpening).changes, "changes", 1).map((change, i) =>
    limitOf(change, `changes[${i}]`),
  );
  let first: PeriodAfterOpening["first"];
  for (const { cause, time } of changes)
    if (time !== undefined && (!first || time < first.time)) first = { cause, time, months: Math.floor(time / month) };
  return {
    changes,
    ...(first && { first }),
    notKnown: changes.flatMap(({ cause, status }) => (status === "not-known" ? [cause] : [])),
    caution: "responsible-person-decides",
  };
}

function limitOf(change: ChangeAfterOpening, at: string): LimitAfterOpening {
  const { cause: name, ...stated } = record(change, at, known.change);
  const cause = readName(name, `${at}.cause`);
  const initial = finite(stated.initial, `${at}.initial`);
  const [min, max, rate] = (["min", "max", "rate"] as const).map((field) =>
    stated[field] === undefined ? undefined : finite(stated[field], `${at}.${field}`),
  );
  if (min === undefined && max === undefined) return refuse("input", at, change, "a min, a max or both");
  if (min !== undefined && max !== undefined && max < min)
    refuse("input", `${at}.max`, max, `the min (${min}) or more`);
  if ((min !== undefined && initial <= min) || (max !== undefined && initial >= max))
    return { cause, status: "reached", time: 0 };
  if (rate === undefined) return { cause, status: "not-known" };
  const limit = rate > 0 ? max : min;
  if (rate === 0 || limit === undefined) return { cause, status: "not-reached" };
  return { cause, status: "reached", time: result((limit - initial) / rate, `${at}.time`) };
}
