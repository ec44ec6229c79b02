import { readdirSync, readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import { describe, expect, test } from "vitest";
import { type Check, compare } from "./support/check.js";

const folder = new URL("./checks/", import.meta.url);
const kinds = ["published", "reference library", "worked by hand", "common practice", "from memory"];
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const all = files.flatMap((file) =>
  (JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Check[]).map((check) => ({ file, check })),
);

/** The public function that a check names: `heat.coolingTime` is `coolingTime` of the room `heat`. */
function find(call: string): (...args: unknown[]) => unknown {
  const [room = "", name = ""] = call.split(".");
  const found = (gelwright as unknown as Record<string, Record<string, unknown> | undefined>)[room]?.[name];
  if (typeof found !== "function") throw new Error(`no public function ${call}`);
  return found as (...args: unknown[]) => unknown;
}

describe.each(files)("%s", (file) => {
  test.each(all.filter((entry) => entry.file === file).map(({ check }) => [check.id, check] as const))(
    "%s",
    (_id, check) => {
      const inputs = Array.isArray(check.inputs) ? check.inputs : [check.inputs];
      const deviations = compare(find(check.call)(...inputs), check);
      expect(deviations.length).toBeGreaterThan(0);
      expect(deviations.filter((deviation) => !deviation.holds)).toEqual([]);
    },
  );
});

test("every check names its source, its kind and an id of its own", () => {
  expect(all.filter(({ check }) => !check.source || !kinds.includes(check.kind)).map(({ check }) => check.id)).toEqual(
    [],
  );
  expect(all.filter(({ check }) => check.kind === "published" && !check.read).map(({ check }) => check.id)).toEqual([]);
  expect(new Set(all.map(({ check }) => check.id)).size).toBe(all.length);
});

test("every room that computes has an outside check", () => {
  const outside = new Set(
    all
      .filter(({ check }) => check.kind === "published" || check.kind === "reference library")
      .map(({ check }) => check.call.split(".")[0]),
  );
  const documentsOnly = ["CalculationError", "plan", "sheet"];
  expect(Object.keys(gelwright).filter((room) => !documentsOnly.includes(room) && !outside.has(room))).toEqual([]);
});
