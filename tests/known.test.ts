import { existsSync, readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import { CalculationError } from "gelwright/error";
import { describe, expect, test } from "vitest";
import { knownTables } from "./known/known.js";
import { root } from "./support/rooms.js";
import { validInputsOf } from "./support/valid-inputs.js";

type Call = (...args: never[]) => unknown;
type Arguments = Readonly<Record<string, unknown>>;

const rooms = Object.entries(gelwright).filter(([, members]) => typeof members === "object");

/** Functions that are handed something whole, of which they read a part. */
const whole = { measureNext: "a plan, for its answers", fingerprint: "a document of any sort" };

/** An object of named arguments, or a document: nothing that a class made. */
const isRecord = (value: unknown): value is Arguments =>
  typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** What a call with other arguments throws; it throws itself where it should have thrown. */
function refusal(call: Call, args: readonly unknown[]): CalculationError {
  try {
    call(...(args as never[]));
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error("an unknown argument was taken");
}

function goesThrough(call: Call, args: readonly unknown[]): boolean {
  try {
    call(...(args as never[]));
    return true;
  } catch {
    return false;
  }
}

/** Argument lists that have others in place of one object of named arguments, of each in turn; none where there are no others. */
function inPlaceOf(
  args: readonly unknown[],
  others: (given: Arguments) => readonly Arguments[],
): readonly (readonly (readonly unknown[])[])[] {
  return args.flatMap((given, at) => {
    const lists = isRecord(given) ? others(given).map((other) => args.map((was, i) => (i === at ? other : was))) : [];
    return lists.length > 0 ? [lists] : [];
  });
}

describe.each(rooms)("%s", async (room, members) => {
  const valid = await validInputsOf(room);
  const functions = Object.entries(members)
    .filter((entry): entry is [string, Call] => typeof entry[1] === "function")
    .filter(([name]) => !(name in whole) && (valid[name] ?? []).some((args) => args.some(isRecord)));

  test.each(functions)("%s refuses an argument that it does not know", (name, call) => {
    for (const args of valid[name] ?? [])
      for (const [other = []] of inPlaceOf(args, (given) => [{ ...given, wobble: 1 }]))
        expect(refusal(call, other).faults).toContainEqual(
          expect.objectContaining({ path: expect.stringMatching(/(^|\.)wobble$/), rule: "unknown-field" }),
        );
  });

  test.each(functions)("%s refuses a slip in the name of any argument", (name, call) => {
    for (const args of valid[name] ?? [])
      for (const key of new Set(args.filter(isRecord).flatMap((given) => Object.keys(given))))
        for (const [other = [], without = []] of inPlaceOf(args, ({ [key]: value, ...rest }) =>
          value === undefined ? [] : [{ ...rest, [`${key}z`]: value }, rest],
        )) {
          const { faults } = refusal(call, other);
          // One that it needs is missed as well. One that may be left out would have been passed over in silence.
          if (goesThrough(call, without)) expect(faults.map(({ parameters }) => parameters?.nearest)).toContain(key);
        }
  });
});

test("the tables of known arguments are those of the types (npm run known writes them)", () => {
  for (const [room, table] of Object.entries(knownTables())) {
    const file = `${root}src/${room}/known.ts`;
    const bare = (text: string): string => text.replaceAll(/[\s"]|,(?=\s*[\])}])/g, "");
    expect(bare(existsSync(file) ? readFileSync(file, "utf8") : ""), room).toBe(bare(table));
  }
});
