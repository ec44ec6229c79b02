import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { type Check, compare, type Deviation } from "./check.js";
import { root } from "./rooms.js";

/** The library by its front door: rooms, and in them functions and values. */
export type Rooms = Readonly<Record<string, unknown>>;

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

/** What stands at a place of the library: `mixing.impellerConstants["helical ribbon"].laminarPowerConstant`. */
function lookUp(rooms: Rooms, place: string): unknown {
  return [...place.matchAll(/(\w+)|\["([^"]+)"\]/g)].reduce<unknown>((at, [, word, quoted]) => {
    const found = (at as Rooms | undefined)?.[word ?? quoted ?? ""];
    if (found === undefined) throw new Error(`the library ships no ${place}`);
    return found;
  }, rooms);
}

/** The inputs, with what the library ships in its place. */
function taken(rooms: Rooms, value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((one) => taken(rooms, one));
  const entries = Object.entries(value);
  const [first] = entries;
  if (entries.length === 1 && first?.[0] === "from") return lookUp(rooms, String(first[1]));
  return Object.fromEntries(entries.map(([key, one]) => [key, taken(rooms, one)]));
}
