/** A check value, as it stands in `tests/checks/*.json`. */
export interface Check {
  /** Unique over all files: `room/what/case`. */
  readonly id: string;
  /** The public function, as `room.function`; or a value that ships, as `room.value` and the way into it. */
  readonly call: string;
  /** The constants that the check proves: `src/laws/air.ts#airDensity`, a table or a part of it. Moved by 1 %, each fails it. */
  readonly of?: string | readonly string[];
  /**
   * Its arguments: one object for a kernel, or a list where the function takes several. `{ "from": "laws.choiOkosFat.density" }`
   * stands for what the library ships. Left out where `call` is a value.
   */
  readonly inputs?: Readonly<Record<string, unknown>> | readonly unknown[];
  /** Where a function that the call gives is evaluated. */
  readonly at?: number;
  /**
   * The number expected, or the fields of the result that are compared (others are not looked at). The word "refused"
   * stands for a `CalculationError`: inputs just beyond the range of a law hold the end of that range.
   */
  readonly expected: unknown;
  /** How far off it may be. Absolute, relative, or both (then either may hold). */
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
  /** Where the value comes from, in words: author, title, edition, table or clause. */
  readonly source: string;
  /** The source's key in `docs/bibliography.json`, where it has one. */
  readonly bibliography?: string;
  /** How the value was had. */
  readonly kind: Kind;
  /** For `published`: read in the source itself, or in somebody's restatement of it. */
  readonly read?: "first-hand" | "second-hand";
  /** What sort of source was read; left out where the bibliography says it, or where nothing was read. */
  readonly quality?: Quality;
  /** Why the check shows less than its kind says; such a check is in no headline count. */
  readonly aside?: Aside;
  readonly note?: string;
}

/**
 * - `published`: a figure printed in a source that a reader could get.
 * - `reference library`: by a library that holds the equation or the data itself.
 * - `independent method`: worked by ourselves in another way than the code goes.
 * - `same formula`: the equation of the code evaluated a second time: shows arithmetic, not truth.
 */
export type Kind =
  | "published"
  | "reference library"
  | "independent method"
  | "same formula"
  | "common practice"
  | "from memory";

/** What sort of thing was read, the surest first. */
export type Quality = "standard" | "paper" | "handbook" | "library" | "supplier sheet" | "web page" | "memory";

/**
 * - `unit factor`: one conversion of many.
 * - `known function`: a root or a value of a function that has tables of its own.
 * - `other subject`: the formula is the same, the subject is not (the interest of a bank).
 * - `scraped answer`: printed on a page that collects answers, without a name that vouches for it.
 * - `fitted`: a line that its source fitted, read off at a point.
 * - `own output`: restates what the code gives.
 */
export type Aside = "unit factor" | "known function" | "other subject" | "scraped answer" | "fitted" | "own output";

/** One compared number: where it stands in the result, both values, and whether it holds. */
export interface Deviation {
  readonly path: string;
  readonly expected: unknown;
  readonly actual: unknown;
  readonly holds: boolean;
}

/** The kinds, the surest first; each has a word on how far it goes in `Kind`. */
export const kinds: readonly Kind[] = [
  "published",
  "reference library",
  "independent method",
  "same formula",
  "common practice",
  "from memory",
];

/** The sorts of source, the surest first. */
export const qualities: readonly Quality[] = [
  "standard",
  "paper",
  "handbook",
  "library",
  "supplier sheet",
  "web page",
  "memory",
];

/** What is expected of a call that the library must refuse. */
export const refused = "refused";

export const isRefusal = ({ expected }: Pick<Check, "expected">): boolean => expected === refused;

/** Whether a check comes from outside: a figure that somebody else printed or computed, of the thing itself. */
export function isOutside({ kind, aside }: Pick<Check, "kind" | "aside">): boolean {
  const elsewhere = aside !== undefined && aside !== "unit factor" && aside !== "known function";
  return (kind === "published" || kind === "reference library") && !elsewhere;
}

/** Where a check stands among those that prove the same: 0 from outside, 1 by another method, 2 by the same formula, 3 by word of mouth. */
export function rankOf(check: Pick<Check, "kind" | "aside">): 0 | 1 | 2 | 3 {
  if (isOutside(check)) return 0;
  if (check.kind === "independent method") return 1;
  return check.kind === "common practice" || check.kind === "from memory" ? 3 : 2;
}

/** Compares a result with what a check expects of it, number by number. */
export function compare(actual: unknown, check: Pick<Check, "expected" | "tolerance">): Deviation[] {
  return walk(actual, check.expected, check.tolerance, "result");
}

function walk(actual: unknown, expected: unknown, tolerance: Check["tolerance"], path: string): Deviation[] {
  if (typeof expected === "object" && expected !== null) {
    const entries = Object.entries(expected);
    // A list that has a row too many is another list.
    if (Array.isArray(expected) && Array.isArray(actual) && actual.length !== expected.length)
      return [{ path: `${path}.length`, expected: expected.length, actual: actual.length, holds: false }];
    return entries.flatMap(([key, value]) =>
      walk((actual as Record<string, unknown> | null | undefined)?.[key], value, tolerance, `${path}.${key}`),
    );
  }
  return [{ path, expected, actual, holds: holds(actual, expected, tolerance) }];
}

function holds(actual: unknown, expected: unknown, { relative = 0, absolute = 0 }: Check["tolerance"]): boolean {
  if (typeof expected !== "number") return actual === expected;
  if (typeof actual !== "number" || !Number.isFinite(actual)) return false;
  const off = Math.abs(actual - expected);
  return off <= absolute || off <= relative * Math.abs(expected);
}
