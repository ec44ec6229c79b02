import * as gelwright from "gelwright";
import type { Check, Deviation } from "../../tests/support/check.js";
import { readChecks, runCheck } from "../../tests/support/run-check.js";

/** A check as it came out when this page was built. */
export interface RunCheck {
  readonly check: Check;
  /** The number that is furthest off. */
  readonly worst: Deviation;
  /** How many numbers were compared. */
  readonly compared: number;
  readonly holds: boolean;
}

/** The checks of one file. */
export interface CheckFile {
  readonly name: string;
  readonly checks: readonly RunCheck[];
}

/** How far a compared number is off, as a share of what was expected. */
export function off({ actual, expected, holds }: Deviation): number {
  if (typeof actual !== "number" || typeof expected !== "number") return holds ? 0 : Number.POSITIVE_INFINITY;
  return expected === 0 ? Math.abs(actual) : Math.abs(actual / expected - 1);
}

function run(check: Check): RunCheck {
  const deviations = runCheck(gelwright, check);
  const worst = deviations.reduce((max, one) => (off(one) > off(max) ? one : max));
  return { check, worst, compared: deviations.length, holds: deviations.every(({ holds }) => holds) };
}

/** Every check of `tests/checks`, run. */
export function runChecks(): readonly CheckFile[] {
  return readChecks().map(({ file, checks }) => ({ name: file, checks: checks.map(run) }));
}
