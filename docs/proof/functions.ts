import { readdirSync, readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import type { Check } from "../../tests/support/check.js";
import { nameOf, rooms, root } from "../../tests/support/rooms.js";
import { readChecks } from "../../tests/support/run-check.js";

/** What holds a public function: check values by themselves, or tests of what must be true of it. */
export interface Proof {
  readonly checks: readonly Check[];
  /** Files of tests that call it. */
  readonly tests: readonly string[];
}

/** The public functions of a room, by name. */
export function functionNames(room: string): readonly string[] {
  const members = (gelwright as unknown as Record<string, Record<string, unknown>>)[nameOf(room)] ?? {};
  const isOwn = (name: string) => /^[a-z]/.test(name) && typeof members[name] === "function";
  return Object.keys(members)
    .filter(isOwn)
    .sort((a, b) => a.localeCompare(b, "en"));
}

let proofs: ReadonlyMap<string, Proof> | undefined;

/** Checks and tests by function, as `room.name`; one that nothing names is left out. Read once: every page of proofs asks. */
export function functionProofs(): ReadonlyMap<string, Proof> {
  proofs ??= readProofs();
  return proofs;
}

function readProofs(): ReadonlyMap<string, Proof> {
  const checks = new Map<string, Check[]>();
  for (const check of readChecks().flatMap(({ checks: some }) => some)) {
    const name = check.call.split(".").slice(0, 2).join(".");
    const ofName = checks.get(name);
    if (ofName) ofName.push(check);
    else checks.set(name, [check]);
  }
  const files = readdirSync(`${root}tests`, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts") && !/^(generated|browser|docs|package|rename)\//.test(file))
    .map((file) => ({ file, words: new Set(readFileSync(`${root}tests/${file}`, "utf8").match(/\w+/g)) }));
  const found = new Map<string, Proof>();
  for (const room of rooms) {
    for (const name of functionNames(room)) {
      const called = checks.get(`${nameOf(room)}.${name}`) ?? [];
      const tests = files.filter(({ file, words }) => words.has(name) && !file.startsWith("architecture/"));
      const own = tests.filter(({ file }) => file.startsWith(`${room}/`));
      const named = (own.length > 0 ? own : tests).map(({ file }) => `tests/${file}`);
      if (called.length > 0 || named.length > 0) found.set(`${room}.${name}`, { checks: called, tests: named });
    }
  }
  return found;
}
