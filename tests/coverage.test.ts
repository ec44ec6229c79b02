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

// The record has fewer branches than are wanted, for which `npm run coverage` fails until tests reach them.
test("the tests reach 99 % of all lines", () => {
  expect(shareOf(allOf(coverage).lines)).toBeGreaterThanOrEqual(minShares.lines);
});
