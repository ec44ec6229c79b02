import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import type { ValidInputs } from "./fuzz.js";

type Call = (...args: never[]) => unknown;

/** A value of another kind that compares or calculates as the one that is asked for: what a form or a file hands in. */
function othersOf(value: unknown): readonly unknown[] {
  if (typeof value === "number") return [String(value), [value], Number.NaN];
  if (typeof value === "string") return [[value]];
  return typeof value === "boolean" ? [Number(value), String(value)] : [];
}

/** A value with one number, text or boolean in it of another kind, for each in turn, with its place. */
function* changed(value: unknown, place: string): Generator<readonly [value: unknown, place: string]> {
  for (const other of othersOf(value)) yield [other, `${place}: ${JSON.stringify(other)}`];
  if (Array.isArray(value))
    for (const [at, inner] of value.entries())
      for (const [other, path] of changed(inner, `${place}[${at}]`))
        yield [value.map((member, i) => (i === at ? other : member)), path];
  else if (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
    for (const [key, inner] of Object.entries(value))
      for (const [other, path] of changed(inner, `${place}.${key}`)) yield [{ ...value, [key]: other }, path];
}

function isRefused(call: Call, args: readonly unknown[]): boolean {
  try {
    call(...(args as never[]));
    return false;
  } catch (error) {
    if (error instanceof CalculationError) return true;
    throw error;
  }
}

/**
 * A test for each function of a room: a number as a text or in a list, a text in a list and a boolean as a number or a text
 * are refused at every place of its valid inputs, except at places that match `unread`, which a function is handed and
 * does not read.
 */
export function refusesOtherKinds(
  members: object,
  valid: ValidInputs,
  unread: Readonly<Record<string, RegExp>> = {},
): void {
  const functions = Object.entries(members).filter(
    (entry): entry is [string, Call] => typeof entry[1] === "function" && (valid[entry[0]] ?? []).length > 0,
  );
  test.each(functions)("%s takes each argument as what it is and as nothing that looks like it", (name, call) => {
    const taken: string[] = [];
    for (const args of valid[name] ?? [])
      for (const [at, given] of args.entries())
        for (const [other, place] of changed(given, String(at)))
          if (
            !unread[name]?.test(place) &&
            !isRefused(
              call,
              args.map((one, i) => (i === at ? other : one)),
            )
          )
            taken.push(place);
    expect(taken).toEqual([]);
  });
}
