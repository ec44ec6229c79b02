import { readFileSync } from "node:fs";
import * as gelwright from "gelwright";
import { describe, expect, test } from "vitest";
import { isOutside, kinds } from "./support/check.js";
import { root } from "./support/rooms.js";
import { readChecks, runCheck } from "./support/run-check.js";

const files = readChecks();
const all = files.flatMap(({ checks }) => checks);
const ids = (checks: typeof all) => checks.map(({ id }) => id);

describe.each(files)("$file", ({ checks }) => {
  test.each(checks.map((check) => [check.id, check] as const))("%s", (_id, check) => {
    const deviations = runCheck(gelwright, check);
    expect(deviations.length).toBeGreaterThan(0);
    expect(deviations.filter((deviation) => !deviation.holds)).toEqual([]);
  });
});

test("every check names its source, its kind and an id of its own", () => {
  expect(ids(all.filter(({ source, kind }) => !source || !kinds.includes(kind)))).toEqual([]);
  expect(ids(all.filter(({ kind, read }) => kind === "published" && !read))).toEqual([]);
  expect(new Set(ids(all)).size).toBe(all.length);
});

test("every check from outside says what sort of source was read, itself or by the bibliography", () => {
  const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8")) as Record<
    string,
    { readonly quality?: string } | undefined
  >;
  const quality = (check: (typeof all)[number]) => check.quality ?? bibliography[check.bibliography ?? ""]?.quality;
  expect(ids(all.filter((check) => isOutside(check) && quality(check) === undefined))).toEqual([]);
});

test("every room that computes has an outside check", () => {
  const outside = new Set(all.filter(isOutside).map(({ call }) => call.split(".")[0]));
  const documentsOnly = ["CalculationError", "plan", "sheet"];
  expect(Object.keys(gelwright).filter((room) => !documentsOnly.includes(room) && !outside.has(room))).toEqual([]);
});
