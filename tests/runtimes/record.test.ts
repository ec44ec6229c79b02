import { expect, test } from "vitest";
import { neverRun, type Ran, withRuns } from "./record.js";

const ran = (name: string, version: string, date: string): Ran => ({
  ...{ name, version, date, node: "20.20.2", results: 10, differing: {} },
});

const stored = [
  ran("Node", "22.1.0", "2026-01-01"),
  ran("Bun", "1.4.5", "2026-01-01"),
  ran("Deno", "2.9.6", "2026-01-01"),
];

test("a runtime that is not installed keeps what was last found of it, with its day", () => {
  const today = [ran("Deno", "3.0.0", "2026-02-02")];
  expect(withRuns(stored, today)).toEqual([stored[0], stored[1], today[0]]);
  expect(withRuns(stored, [])).toEqual(stored);
});

test("each major version of Node has a line of its own", () => {
  const today = [ran("Node", "24.2.0", "2026-02-02"), ran("Node", "22.3.0", "2026-02-02")];
  expect(withRuns(stored, today).map(({ name, version }) => `${name} ${version}`)).toEqual([
    ...["Node 22.3.0", "Node 24.2.0", "Bun 1.4.5", "Deno 2.9.6"],
  ]);
});

test("what was never run is named", () => {
  expect(neverRun(stored)).toEqual(["Chromium"]);
  expect(neverRun(withRuns(stored, [ran("Chromium", "156.0.8078.108", "2026-02-02")]))).toEqual([]);
});
