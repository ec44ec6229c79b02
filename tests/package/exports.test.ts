import { readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import { expect, test } from "vitest";
import { expectedExports, nameOf, rooms, root } from "../support/rooms.js";

test("every room is a subpath of the package, and nothing else is (else: npm run exports)", () => {
  const manifest = JSON.parse(readFileSync(`${root}package.json`, "utf8")) as { exports: unknown };
  expect(manifest.exports).toEqual(expectedExports());
});

test("every room is a name of the front door, and nothing else is but the error", () => {
  expect(Object.keys(gelwright).sort()).toEqual(["CalculationError", ...rooms.map(nameOf)].sort());
});
