import { readdirSync, readFileSync } from "node:fs";
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

test("what Node loads of a subpath is one file, with the licence of each package that it took code from", () => {
  const home = `${root}dist/node/`;
  const codes = readdirSync(home).map((name) => readFileSync(home + name, "utf8"));
  expect(codes).toHaveLength(2 * (rooms.length + 2));
  for (const code of codes) {
    expect(code).not.toMatch(/^import |\brequire\(/m);
    const taken = new Set([...code.matchAll(/^\/\/ node_modules\/([^/]+)/gm)].map(([, name]) => name));
    for (const name of taken) {
      const files = readdirSync(`${root}node_modules/${name}`);
      const licence = files.find((file) => file.startsWith("LICENSE"));
      const [copyright] = /Copyright .+/.exec(readFileSync(`${root}node_modules/${name}/${licence}`, "utf8")) ?? [];
      expect(code).toContain(copyright);
      expect(code).toContain("Permission is hereby granted");
    }
  }
  expect(codes.filter((code) => code.includes("// node_modules/")).length).toBeGreaterThan(0);
});
