import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { root } from "../support/rooms.js";

interface Locked {
  readonly license?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly optional?: boolean;
  readonly peer?: boolean;
}
const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, "utf8")) as {
  packages: Record<string, Locked>;
};
const locked = Object.entries(packages).filter(([path]) => path !== "");
const published = locked.filter(
  ([, { dev, devOptional, optional, peer }]) => !dev && !devOptional && !optional && !peer,
);

test("who installs the package gets two more, both under the MIT licence", () => {
  expect(published.map(([path, { license }]) => [path, license])).toEqual([
    ["node_modules/convert-units", "MIT"],
    ["node_modules/valibot", "MIT"],
  ]);
});

test("every tool that works on the package states a licence that lets everybody use it", () => {
  const known = [
    ...["MIT", "MIT OR Apache-2.0", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BlueOak-1.0.0"],
    ...["MPL-2.0", "LGPL-3.0-only", "CC-BY-4.0", "Python-2.0", "Unlicense"],
  ];
  expect(locked.filter(([, { license }]) => !license || !known.includes(license)).map(([path]) => path)).toEqual([]);
});

test("the bill of materials names what the package needs", () => {
  const bill = execFileSync(
    "npm",
    ["sbom", "--offline", "--omit=dev", "--legacy-peer-deps", "--sbom-format=cyclonedx"],
    { cwd: root, encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] },
  );
  const { components } = JSON.parse(bill) as { components: { name: string; licenses: unknown }[] };
  expect(components.map(({ name }) => name).sort()).toEqual(["convert-units", "valibot"]);
});

test("nothing is published by an argument that the script does not know", () => {
  const { status, stderr } = spawnSync(`${root}.ci/publish`, ["--now"], { encoding: "utf8" });
  expect([status, stderr]).toEqual([2, "use: .ci/publish [--publish]\n"]);
});

test("the changelog has a part for this version", () => {
  const { version } = JSON.parse(readFileSync(`${root}package.json`, "utf8")) as { version: string };
  expect(readFileSync(`${root}CHANGELOG.md`, "utf8")).toContain(`\n## [${version}] - `);
});
