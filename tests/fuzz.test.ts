import { describe, expect, test } from "vitest";
import { fuzzed, targets } from "./fuzz/calls.js";
import { mistold, soundDocuments } from "./fuzz/documents.js";

// A small count of what `npm run fuzz` does a million times.
const seed = 20261128;

describe("two or three damages at once", async () => {
  test.each(await targets())("$name returns finite numbers or throws a CalculationError", (target) => {
    const isSlow = /^(plan|sheet)\./.test(target.name);
    expect(fuzzed(target, 0, isSlow ? 3 : 40, seed).broken).toEqual([]);
  });
});

test("all faults that are planted in a document are reported, each at its place, and no others", () => {
  const sound = soundDocuments();
  const count = 900;
  const found = Array.from({ length: count }, (_, i) => mistold(sound[i % sound.length] as never, seed, i));
  expect(found.filter((what) => what !== undefined)).toEqual([]);
});
