import { readdirSync, readFileSync, statSync } from "node:fs";
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

test("what is published is our own code, once for `import` and once for `require`: dependencies stay packages", () => {
  const files = readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" });
  const codes = files.filter((name) => /\.c?js$/.test(name));
  for (const name of codes) expect(readFileSync(`${root}dist/${name}`, "utf8"), name).not.toContain("node_modules");
  expect(codes.filter((name) => name.endsWith(".cjs")).map((name) => name.replace(/\.cjs$/, ".js"))).toEqual(
    codes.filter((name) => name.endsWith(".js")),
  );
  const taken = codes.flatMap((name) => [
    ...readFileSync(`${root}dist/${name}`, "utf8").matchAll(/(?:\bfrom|\bimport|\brequire\()"([a-z@][\w@/-]*)"/g),
  ]);
  expect([...new Set(taken.map(([, name = ""]) => name.replace(/\/.*/, "")))].sort()).toEqual([
    "convert-units",
    "valibot",
  ]);
});

test("a package of at most 500 files and 3.5 MB, unpacked", () => {
  const manifest = JSON.parse(readFileSync(`${root}package.json`, "utf8")) as { files: string[] };
  const names = ["package.json", "README.md", "LICENSE", ...manifest.files].flatMap((name) =>
    statSync(root + name).isDirectory()
      ? readdirSync(root + name, { recursive: true, encoding: "utf8" }).map((file) => `${name}/${file}`)
      : [name],
  );
  const files = names.map((name) => statSync(root + name)).filter((file) => file.isFile());
  expect(files.length).toBeLessThanOrEqual(500);
  expect(files.reduce((sum, { size }) => sum + size, 0)).toBeLessThanOrEqual(3.5e6);
});
