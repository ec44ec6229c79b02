import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { type Check, compare, type Deviation, isRefusal, refused } from "./check.js";
import { type Rooms, resultOf } from "./look-up.js";
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

/** Runs a check on a library: what it compares, number by number; a call that must be refused gives that word. */
export function runCheck(rooms: Rooms, check: Check): readonly Deviation[] {
  return compare(isRefusal(check) && refuses(rooms, check) ? refused : resultOf(rooms, check), check);
}

function refuses(rooms: Rooms, check: Check): boolean {
  try {
    resultOf(rooms, check);
    return false;
  } catch (error) {
    if (error instanceof Error && error.name === "CalculationError") return true;
    throw error;
  }
}
