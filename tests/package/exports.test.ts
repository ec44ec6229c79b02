import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { decode } from "@jridgewell/sourcemap-codec";
import * as gelwright from "gelwright";
import { parseAst } from "rollup/parseAst";
import { describe, expect, test } from "vitest";
import { expectedExports, nameOf, rooms, root } from "../support/rooms.js";
import { pureTop } from "./pure-top.js";
import type { SourceMap } from "./source-map.js";

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
  const code = "var a=of({b:1}),c=new Map([[1,2]]),d={...a,e:a.f},g=()=>of(1),h=class{};";
  expect(pureTop({ code, map: { version: 3, sources: ["a.ts"], mappings: "AAAA" } }).code).toBe(
    "var a=/*@__PURE__*/of({b:1}),c=/*@__PURE__*/new Map([[1,2]]),d=/*@__PURE__*/(()=>({...a,e:a.f}))(),g=()=>of(1),h=class{};",
  );
  const statements = readBy("index").files.flatMap((file) => parseAst(readFileSync(file, "utf8")).body);
  const kinds = new Set(statements.map(({ type }) => type));
  expect([...kinds].filter((kind) => !/^(Import|Export|Variable|Function|Class)/.test(kind))).toEqual([]);
});

/** Whether a file does more than pass on names of others. */
function hasOwnCode(name: string): boolean {
  const { body } = parseAst(readFileSync(`${root}dist/${name.replace(/\.cjs$/, ".js")}`, "utf8"));
  return body.some(({ type }) => !/^(Import|Export)/.test(type));
}

describe("where the code of the package comes from", () => {
  const names = readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" });
  const own = names.filter((name) => /\.c?js$/.test(name) && hasOwnCode(name));

  test("is told of each file with code of its own", () => {
    expect(names.filter((name) => name.endsWith(".map")).sort()).toEqual(own.map((name) => `${name}.map`).sort());
  });

  test.each(own)("%s: each place of its map is a line of ours", (name) => {
    expect(readFileSync(`${root}dist/${name}`, "utf8")).toMatch(/\n\/\/# sourceMappingURL=[\w.-]+\.map\n$/);
    const { sources, mappings } = JSON.parse(readFileSync(`${root}dist/${name}.map`, "utf8")) as SourceMap;
    const lines = sources.map((source) => {
      const file = resolve(dirname(`${root}dist/${name}`), String(source));
      expect(file.startsWith(`${root}src/`), file).toBe(true);
      return readFileSync(file, "utf8").split("\n").length;
    });
    const places = decode(mappings).flat();
    for (const [, source = -1, line = Number.NaN] of places) expect(line).toBeLessThan(lines[source] ?? 0);
    expect(places.length).toBeGreaterThanOrEqual(sources.length);
  });

  test.each(["import { coolingTime } from 'gelwright/heat'", "const { coolingTime } = require('gelwright/heat')"])(
    "an error is told at its line of the source, with functions called by their names: %s",
    (load) => {
      const kind = load.startsWith("import") ? "module" : "commonjs";
      const code = `${load}; try { coolingTime({ heatCapacity: 0 }) } catch (error) { console.log(error.stack) }`;
      const [mapped = "", plain = ""] = [["--enable-source-maps"], []].map((options) =>
        execFileSync(process.execPath, [...options, `--input-type=${kind}`, "--eval", code], {
          cwd: root,
          encoding: "utf8",
        }),
      );
      const [, file = "", line = ""] =
        /coolingTime \((?:file:\/\/)?(.*src\/heat\/cooling\.ts):(\d+)/.exec(mapped) ?? [];
      expect(readFileSync(file, "utf8").split("\n")[Number(line) - 1]).toContain("positive(");
      expect(plain).toMatch(/at positive .*dist\/parts[\s\S]*coolingTime .*dist\/heat/);
    },
  );
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
