import { existsSync } from "node:fs";
import * as gelwright from "gelwright";
import { describe, expect, test } from "vitest";
import { brokenPromise, mutations, type ValidInputs } from "./support/fuzz.js";

type Call = (...args: never[]) => unknown;

const rooms = Object.entries(gelwright).filter(([, members]) => typeof members === "object");

/** The folder of a room: the front door says `naturalOrigin`, the folder is `natural-origin`. */
const folderOf = (room: string): string => room.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/**
 * How many damaged calls of a function are tried, spread evenly: a whole job has 20,000 places times wrong values, and all
 * of them took a third of the time that the tests take. `FUZZ=all` tries every one.
 */
const callsMax = 600;
const everyOne = process.env["FUZZ"] === "all";

async function validInputsOf(room: string): Promise<ValidInputs> {
  const file = new URL(`./${folderOf(room)}/valid-inputs.ts`, import.meta.url);
  return existsSync(file) ? ((await import(file.href)) as { validInputs: ValidInputs }).validInputs : {};
}

describe.each(rooms)("%s", async (room, members) => {
  const valid = await validInputsOf(room);
  const functions = Object.entries(members).filter((entry): entry is [string, Call] => typeof entry[1] === "function");

  test.each(functions)("%s has valid arguments in valid-inputs.ts, and takes them", (name, call) => {
    const cases = valid[name] ?? [];
    expect(cases.length).toBeGreaterThan(0);
    for (const args of cases) call(...(args as never[]));
  });

  test.each(functions)(
    "%s returns finite numbers or throws a CalculationError, whatever one argument is",
    (name, call) => {
      const calls = (valid[name] ?? [])
        .map(mutations)
        .flatMap(({ count, at }) => Array.from({ length: count }, (_, number) => () => at(number)));
      const step = everyOne ? 1 : Math.ceil(calls.length / callsMax);
      const broken: string[] = [];
      for (const args of calls.filter((_, i) => i % step === 0)) {
        const promise = brokenPromise(call, args());
        if (promise && broken.push(promise) >= 5) break;
      }
      expect(broken).toEqual([]);
    },
  );
});

test("there is a front door with rooms behind it", () => {
  expect(rooms.length).toBeGreaterThan(0);
});
