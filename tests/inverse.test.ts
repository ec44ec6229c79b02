import { existsSync, readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import { expect, test } from "vitest";
import { nameOf, rooms, root } from "./support/rooms.js";

/** Functions that are named for what they lead to, and undo no other function: each with what it does. */
const others: Readonly<Record<string, string>> = {
  batchTestFor: "looks up a row of a table",
  fewestAdditions: "a whole number of additions; each is a largest addition",
  largestBatch: "a whole number of packs; tests/batch/stock.test.ts holds it against scaling",
  largestDroplet: "the size at the critical capillary number, from one formula",
  roundToBalances: "whole steps of a balance",
  materialsToBuy: "what is short of a scaled formula; tests/batch/stock.test.ts buys it",
};

/** The rooms of single figures: a plan and a sheet are made for something in another sense. */
const calculating = rooms.filter((room) => !["plan", "sheet"].includes(room));

const textOf = (path: string): string =>
  existsSync(`${root}tests/${path}`) ? readFileSync(`${root}tests/${path}`, "utf8") : "";

test("every function that is named for what it leads to undoes another one in the tests, or has a reason", () => {
  const contents: Readonly<Record<string, unknown>> = gelwright;
  const named = calculating.flatMap((room) =>
    Object.entries(contents[nameOf(room)] as Readonly<Record<string, unknown>>)
      .filter(([, value]) => typeof value === "function")
      .map(([name]) => ({ room, name }))
      .filter(({ name }) => /[a-z](For|To)[A-Z]|For$|^(largest|smallest|thickest|fewest)/.test(name)),
  );
  expect(named.length).toBeGreaterThan(30);
  const missing = named.filter(
    ({ room, name }) => !textOf(`${room}/inverse.test.ts`).includes(`"${name}",`) && others[name] === undefined,
  );
  expect(missing).toEqual([]);
  expect(Object.keys(others).filter((name) => !named.some((one) => one.name === name))).toEqual([]);
});
