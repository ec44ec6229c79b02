import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import * as gelwright from "gelwright";
import { parseAst } from "rollup/parseAst";
import { expect, test } from "vitest";
import { expectedExports, nameOf, rooms, root } from "../support/rooms.js";
import { pureTop } from "./pure-top.js";

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

/** The files that an import of a subpath reads, and the packages. */
function readBy(subpath: string): { readonly files: readonly string[]; readonly packages: readonly string[] } {
  const files = new Set<string>();
  const packages = new Set<string>();
  const read = (file: string): void => {
    if (files.has(file)) return;
    files.add(file);
    for (const name of importsOf(readFileSync(file, "utf8")))
      if (name.startsWith(".")) read(resolve(dirname(file), name));
      else packages.add(name);
  };
  read(`${root}dist/${subpath}.js`);
  return { files: [...files], packages: [...packages].sort() };
}

const importsOf = (code: string): string[] =>
  parseAst(code).body.flatMap((statement) =>
    "source" in statement && typeof statement.source?.value === "string" ? [statement.source.value] : [],
  );

test("an import reads few files, since Node takes longer to find a file than to run it", () => {
  expect(readBy("index").files.length).toBeLessThanOrEqual(30);
  for (const room of ["heat", "gel", "oils", "mixing", "particles", "packing", "stability", "laws", "transient"]) {
    const { files, packages } = readBy(`${room}/index`);
    expect([room, packages]).toEqual([room, []]);
    expect(files.length, room).toBeLessThanOrEqual(6);
  }
  for (const room of ["exposure", "labelling", "units", "sheet"])
    expect([room, readBy(`${room}/index`).packages]).toEqual([room, ["convert-units"]]);
});

test("a bundler may leave out each value that is made while a file loads", () => {
  expect(pureTop("var a=of({b:1}),c=new Map([[1,2]]),d={...a,e:a.f},g=()=>of(1),h=class{};")).toBe(
    "var a=/*@__PURE__*/of({b:1}),c=/*@__PURE__*/new Map([[1,2]]),d=/*@__PURE__*/(()=>({...a,e:a.f}))(),g=()=>of(1),h=class{};",
  );
  const statements = readBy("index").files.flatMap((file) => parseAst(readFileSync(file, "utf8")).body);
  const kinds = new Set(statements.map(({ type }) => type));
  expect([...kinds].filter((kind) => !/^(Import|Export|Variable|Function|Class)/.test(kind))).toEqual([]);
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
