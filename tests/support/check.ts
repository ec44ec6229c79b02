/** A published check value, as it stands in `tests/checks/*.json`. */
export interface Check {
  /** Unique over all files: `room/what/case`. */
  readonly id: string;
  /** The public function, as `room.function`. */
  readonly call: string;
  /** Its arguments: one object for a kernel, or a list where the function takes several. */
  readonly inputs: Readonly<Record<string, unknown>> | readonly unknown[];
  /** The number expected, or the fields of the result that are compared (others are not looked at). */
  readonly expected: unknown;
  /** How far off it may be. Absolute, relative, or both (then either may hold). */
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
  /** Where the value comes from, in words: author, title, edition, table or clause. */
  readonly source: string;
  /** The source's key in `docs/bibliography.json`, where it has one. */
  readonly bibliography?: string;
  /** How far the value can be trusted. Only the first two count as outside checks. */
  readonly kind: "published" | "reference library" | "worked by hand" | "common practice" | "from memory";
  /** For `published`: read in the source itself, or in somebody's restatement of it. */
  readonly read?: "first-hand" | "second-hand";
  readonly note?: string;
}

/** One compared number: where it stands in the result, both values, and whether it holds. */
export interface Deviation {
  readonly path: string;
  readonly expected: unknown;
  readonly actual: unknown;
  readonly holds: boolean;
}

/** Compares a result with what a check expects of it, number by number. */
export function compare(actual: unknown, check: Pick<Check, "expected" | "tolerance">): Deviation[] {
  return walk(actual, check.expected, check.tolerance, "result");
}

function walk(actual: unknown, expected: unknown, tolerance: Check["tolerance"], path: string): Deviation[] {
  if (typeof expected === "object" && expected !== null) {
    const entries = Object.entries(expected);
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
