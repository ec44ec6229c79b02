import type { Answer, Figure } from "gelwright/plan";
import { keyOf } from "../jobs/plans.js";
import { tolerances } from "./tolerances.js";

/** An answer as the independent script has it. */
export interface Recomputed {
  readonly verdict: Answer["verdict"];
  readonly side: Answer["side"];
  readonly at: Answer["at"];
  readonly figure: Figure;
  readonly limit: Answer["limit"];
  readonly margin?: NonNullable<Answer["margin"]>;
  readonly states: { readonly met: number; readonly "not-met": number; readonly "not-known": number };
  /** States that decide alike to nine digits. */
  readonly tied?: readonly Answer["at"][];
}

/** What the independent script printed: with which versions, and every answer of every job. */
export interface RecomputedJobs {
  readonly versions: Readonly<Record<string, string>>;
  readonly jobs: Readonly<Record<string, Readonly<Record<string, Recomputed>>>>;
  readonly after: After;
}

/** What the script has of an example after the batch, and of the statistics of stability. */
export interface After {
  readonly packs: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly stability: Readonly<Record<string, Readonly<Record<string, Interval>>>>;
  readonly label: Readonly<
    Record<
      string,
      {
        readonly ordered: Readonly<Record<string, number>>;
        readonly anyOrder: Readonly<Record<string, number>>;
        readonly allergens: Readonly<Record<string, number>>;
        readonly claims: readonly { readonly of: string; readonly percent: number; readonly min: number }[];
        readonly certified?: Readonly<Record<string, number>>;
      }
    >
  >;
  readonly exposure: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, number>>>>>>;
  readonly shelfLife: readonly {
    readonly lots: Readonly<Record<string, readonly number[]>>;
    readonly min: number;
    readonly model: string;
    readonly slopes: number;
    readonly intercepts: number;
    readonly duration: number;
  }[];
  readonly welch: readonly {
    readonly first: readonly number[];
    readonly second: readonly number[];
    readonly t: number;
    readonly degreesOfFreedom: number;
    readonly probability: number;
    readonly difference: Interval;
  }[];
}

interface Interval {
  readonly min: number;
  readonly value?: number;
  readonly max: number;
}

/** How an answer of the plan lies to the same answer of the script. */
export interface Comparison {
  readonly key: string;
  readonly id: Answer["id"];
  /** Largest deviation of any end of figure and limit, as a share of the larger one; infinite where one alone is open. */
  readonly deviation: number;
  readonly allowed: number;
  /** What is not the same and has no size. */
  readonly differs: readonly string[];
}

/** Keys of the script name what an answer is about in any order. */
const sorted = (key: string): string => {
  const [id, ...of] = key.split(":");
  return [id, ...of.sort()].join(":");
};

function apart(one: number | null | undefined, other: number | null | undefined): number {
  if (one === other) return 0;
  if (one === null || other === null) return Number.POSITIVE_INFINITY;
  // A best value is compared where both have one.
  if (one === undefined || other === undefined) return 0;
  return Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other));
}

const ends = ["min", "value", "max"] as const;

function apartFigures(one: Figure | undefined, other: Figure | undefined): number {
  if (!one || !other) return one === other ? 0 : Number.POSITIVE_INFINITY;
  return Math.max(...ends.map((end) => apart(one[end], other[end])));
}

const inOrder = (at: Answer["at"]): string => JSON.stringify(Object.entries(at).sort());

/** Compares every answer of a plan with that of the script. */
export function compareAnswers(
  answers: readonly Answer[],
  recomputed: Readonly<Record<string, Recomputed>>,
): readonly Comparison[] {
  const theirs = new Map(Object.entries(recomputed).map(([key, one]) => [sorted(key), one]));
  return answers.flatMap((answer): readonly Comparison[] => {
    const key = sorted(keyOf(answer));
    const other = theirs.get(key);
    if (!other) return [];
    const { id, figure, limit, margin, verdict, side, at, states } = answer;
    const deviation = Math.max(
      apartFigures(figure, other.figure),
      apartFigures(limit.min, other.limit.min),
      apartFigures(limit.max, other.limit.max),
      apart(margin?.min ?? 0, other.margin?.min ?? 0) > 1e-12 ? Number.POSITIVE_INFINITY : 0,
      apart(margin?.max ?? 0, other.margin?.max ?? 0) > 1e-12 ? Number.POSITIVE_INFINITY : 0,
    );
    const named = [other.at, ...(other.tied ?? [])].map(inOrder);
    const counts = [states.met, states.notMet, states.notKnown].join(", ");
    const others = [other.states.met, other.states["not-met"], other.states["not-known"]].join(", ");
    const differs = [
      ...(verdict === other.verdict && side === other.side
        ? []
        : [`${verdict} ${side}, and ${other.verdict} ${other.side}`]),
      ...(named.includes(inOrder(at)) ? [] : [`decided at ${inOrder(at)}, and at ${inOrder(other.at)}`]),
      ...(counts === others ? [] : [`of states met, not met and not known there are ${counts}, and ${others}`]),
    ];
    return [{ key, id, deviation, allowed: (tolerances[id] ?? tolerances["every other"]).relative, differs }];
  });
}

/** Answers of a plan that the script does not give. */
export function notRecomputed(
  answers: readonly Answer[],
  recomputed: Readonly<Record<string, Recomputed>>,
): readonly string[] {
  const theirs = new Set(Object.keys(recomputed).map(sorted));
  return answers.map((answer) => sorted(keyOf(answer))).filter((key) => !theirs.has(key));
}
