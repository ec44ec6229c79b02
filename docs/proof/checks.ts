import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import * as gelwright from "gelwright";
import { type Check, compare, type Deviation } from "../../tests/support/check.js";
import { root } from "../../tests/support/rooms.js";

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

type Call = (...args: unknown[]) => unknown;

/** How far a compared number is off, as a share of what was expected. */
export function off({ actual, expected, holds }: Deviation): number {
  if (typeof actual !== "number" || typeof expected !== "number") return holds ? 0 : Number.POSITIVE_INFINITY;
  return expected === 0 ? Math.abs(actual) : Math.abs(actual / expected - 1);
}

function run(check: Check): RunCheck {
  const [room = "", name = ""] = check.call.split(".");
  const call = (gelwright as unknown as Record<string, Record<string, Call>>)[room]?.[name];
  if (!call) throw new Error(`${check.id} calls ${check.call}, which there is not`);
  const inputs = (Array.isArray(check.inputs) ? check.inputs : [check.inputs]) as unknown[];
  const deviations = compare(call(...inputs), check);
  const worst = deviations.reduce((max, one) => (off(one) > off(max) ? one : max));
  return { check, worst, compared: deviations.length, holds: deviations.every(({ holds }) => holds) };
}

/** Every check of `tests/checks`, run. */
export function runChecks(): readonly CheckFile[] {
  return readdirSync(`${root}tests/checks`)
    .filter((file) => file.endsWith(".json"))
    .map((file) => ({
      name: basename(file, ".json"),
      checks: (JSON.parse(readFileSync(`${root}tests/checks/${file}`, "utf8")) as Check[]).map(run),
    }));
}
