import { expect, test } from "vitest";
import { allOf, minShares, readCoverage, shareOf } from "./coverage/record.js";
import { folders } from "./support/rooms.js";

const coverage = readCoverage();

test("the record of coverage has every folder of src", () => {
  expect(
    Object.keys(coverage)
      .filter((name) => !name.endsWith(".ts"))
      .sort(),
  ).toEqual([...folders].sort());
});

test("the tests reach 99 % of all lines and 97 % of all branches", () => {
  const { lines, branches } = allOf(coverage);
  expect(shareOf(lines)).toBeGreaterThanOrEqual(minShares.lines);
  expect(shareOf(branches)).toBeGreaterThanOrEqual(minShares.branches);
});
