import * as gelwright from "gelwright";
import { CalculationError } from "gelwright/error";
import { describe, expect, test } from "vitest";
import { validInputsOf } from "./support/valid-inputs.js";

type Call = (...args: never[]) => unknown;

/** Lists that a function is handed in something whole and does not read. */
const unread: Readonly<Record<string, readonly string[]>> = {
  scaleFormula: ["phases"],
  largestBatch: ["phases"],
  materialsToBuy: ["phases"],
  replaceMaterial: ["phases", "allergens"],
  bandAround: ["sources"],
  fittedStressAt: ["residuals"],
  fittedViscosityAt: ["parameters", "residuals"],
};

/** A value with a hole in one of its lists, for each of their members in turn; lists of some names are left whole. */
function* holed(value: unknown, whole: readonly string[] = []): Generator<unknown> {
  if (Array.isArray(value))
    for (const [at, inner] of value.entries()) {
      const list = [...value];
      delete list[at];
      yield list;
      for (const other of holed(inner, whole)) yield value.map((member, i) => (i === at ? other : member));
    }
  else if (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
    for (const [key, inner] of Object.entries(value))
      if (!whole.includes(key)) for (const other of holed(inner, whole)) yield { ...value, [key]: other };
}

/** What a call throws that is no error of ours; where it answers, that it did. */
function passed(call: Call, args: readonly unknown[]): unknown {
  try {
    return { answered: call(...(args as never[])) };
  } catch (error) {
    return error instanceof CalculationError ? undefined : error;
  }
}

// What plan and sheet are given are documents, of which the entries hold each member, and what they gave themselves.
const rooms = Object.entries(gelwright).filter(
  ([room, members]) => typeof members === "object" && !["plan", "sheet"].includes(room),
);

describe.each(rooms)("%s", async (room, members) => {
  const valid = await validInputsOf(room);
  const functions = Object.entries(members)
    .filter((entry): entry is [string, Call] => typeof entry[1] === "function")
    .filter(([name]) => (valid[name] ?? []).some((args) => !holed(args.map((one) => [one])).next().done));

  test.each(functions)("%s refuses a hole in any of its lists", (name, call) => {
    for (const args of valid[name] ?? [])
      for (const [at, given] of args.entries())
        for (const other of holed(given, unread[name]))
          expect(
            passed(
              call,
              args.map((one, i) => (i === at ? other : one)),
            ),
          ).toBeUndefined();
  });
});
