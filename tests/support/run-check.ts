import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { type Check, compare, type Deviation } from "./check.js";
import { lookUp, type Rooms, taken } from "./look-up.js";
import { root } from "./rooms.js";

/** Every check of `tests/checks`, by file. */
export function readChecks(): readonly { readonly file: string; readonly checks: readonly Check[] }[] {
  return readdirSync(`${root}tests/checks`)
    .filter((file) => file.endsWith(".json"))
    .map((file) => ({
      file: basename(file, ".json"),
      checks: JSON.parse(readFileSync(`${root}tests/checks/${file}`, "utf8")) as Check[],
    }));
}

/** Runs a check on a library: what it compares, number by number. */
export function runCheck(rooms: Rooms, check: Check): readonly Deviation[] {
  const called = lookUp(rooms, check.call);
  if (check.inputs === undefined) {
    if (typeof called === "function") throw new Error(`${check.id}: ${check.call} takes inputs`);
    return compare(called, check);
  }
  if (typeof called !== "function") throw new Error(`${check.id}: no public function ${check.call}`);
  const inputs = taken(rooms, check.inputs) as Check["inputs"];
  return compare((called as (...args: unknown[]) => unknown)(...(Array.isArray(inputs) ? inputs : [inputs])), check);
}
