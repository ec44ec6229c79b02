import { expect, test } from "vitest";
import { normalBelow } from "../../src/numeric/normal.js";
import { fisherAbove, studentBeyond } from "../../src/numeric/tails.js";
import { keepsDigits, untested } from "../support/extremes.js";

keepsDigits("numeric", {
  normalBelow: ({ x }: { readonly x: number }) => normalBelow(x),
  studentBeyond: ({ t, degrees }: { readonly t: number; readonly degrees: number }) => studentBeyond(t, degrees),
  fisherAbove: (one: { readonly ratio: number; readonly above: number; readonly below: number }) =>
    fisherAbove(one.ratio, one.above, one.below),
});

test("every room of which there are such figures is held to them", () => {
  expect(untested).toEqual([]);
});
