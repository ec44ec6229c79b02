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

/** Objects that callers hand in whole, though a function reads a part of each, and those whose names are the caller's own. */
const handedIn: Readonly<Record<string, string>> = {
  vessel: "the room mixing asks different things of one vessel",
  oil: "an oil of a table or of the caller, with all that is known of it",
  by: "an oil",
  fit: "what a fit gave",
  formula: "what readFormula gave",
  lines: "the lines of a label, of which several questions are asked",
  impeller: "a ribbon by its sizes, or as the whole impeller that it is",
  rates: "names of the caller's own",
  fattyAcids: "names of acids",
};

/** As `handedIn`, but only in these; elsewhere an object of this name has no other fields than its type. */
const only: Readonly<Record<string, RegExp>> = { lines: /^labelling/, impeller: /ribbonPowerConstant$/ };

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

/** A value with a slip in the name of one field of an object within it, for each in turn; those handed in whole are passed over. */
function* slips(value: unknown, of: string, top = true): Generator<unknown> {
  if (Array.isArray(value))
    for (const [at, inner] of value.entries())
      for (const other of slips(inner, of, false)) yield value.map((member, i) => (i === at ? other : member));
  else if (isRecord(value))
    for (const [key, inner] of Object.entries(value)) {
      const { [key]: own, ...rest } = value;
      if (!top && own !== undefined) yield { ...rest, [`${key}z`]: own };
      if (!(key in handedIn && (only[key]?.test(of) ?? true)))
        for (const other of slips(inner, of, false)) yield { ...value, [key]: other };
    }
}

/** What a call comes to, as text; undefined where it is refused. */
function answer(call: Call, args: readonly unknown[]): string | undefined {
  try {
    return JSON.stringify(call(...(args as never[])), (_key, value) =>
      typeof value === "function" ? String(value) : value,
    );
  } catch {
    return undefined;
  }
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

  // Plan and sheet are given documents, of which the entries refuse an unknown field, and what they gave themselves.
  const kernels = ["plan", "sheet"].includes(room) ? [] : functions;
  test.skipIf(kernels.length === 0).each(kernels)(
    "%s gives no other answer for a slip in the name of a field within an argument",
    (name, call) => {
      for (const args of valid[name] ?? [])
        for (const [at, given] of args.entries())
          for (const other of slips(given, `${room}.${name}`)) {
            const slipped = args.map((one, i) => (i === at ? other : one));
            expect([undefined, answer(call, args)], JSON.stringify(other)).toContain(answer(call, slipped));
          }
    },
  );
});

test("the tables of known arguments are those of the types (npm run known writes them)", () => {
  for (const [room, table] of Object.entries(knownTables())) {
    const file = `${root}src/${room}/known.ts`;
    const bare = (text: string): string => text.replaceAll(/[\s"]|,(?=\s*[\])}])/g, "");
    expect(bare(existsSync(file) ? readFileSync(file, "utf8") : ""), room).toBe(bare(table));
  }
});
