import { shelfLife, trend, viscosityDrift, welchTest } from "gelwright/stability";
import { expect, test } from "vitest";

const lot = (name: string, values: readonly number[], step = 90 * 86_400) => ({
  name,
  readings: values.map((value, i) => ({ time: step * i, value })),
});
const falling = lot("A", [100, 99.2, 98.1]);

test.each([
  [
    "readings of one day alone have no trend",
    () => trend({ readings: lot("A", [1, 2, 3], 0).readings }),
    "readings at two times at least",
  ],
  [
    "a viscosity read on one day alone has no drift",
    () => viscosityDrift({ readings: [1, 2, 3].map((viscosity) => ({ time: 0, viscosity })), duration: 1e7 }),
    "times",
  ],
  ["a shelf life needs a limit", () => shelfLife({ lots: [falling], limits: {} }), "min, max or both"],
  [
    "a lot with a scatter of its own needs three readings",
    () =>
      shelfLife({ lots: [falling, lot("B", [100, 95])], limits: { min: 90 }, scatter: "by lot", significance: 0.99 }),
    "three of each lot at least",
  ],
  [
    "two sets that do not scatter cannot be compared",
    () => welchTest({ first: [1, 1], second: [2, 2] }),
    "readings that scatter",
  ],
] as const)("%s", (_, call, message) => {
  expect(call).toThrow(message);
});
