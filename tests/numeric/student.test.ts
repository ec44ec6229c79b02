import { expect, test } from "vitest";
import { studentT } from "../../src/numeric/student.js";
import reference from "./student.json" with { type: "json" };

test.each(reference.values)("t for $confidence and $degrees degrees is scipy's", ({ confidence, degrees, value }) => {
  expect(Math.abs(studentT(confidence, degrees) / value - 1)).toBeLessThan(1e-11);
});

test("the table of every textbook, to its three decimals", () => {
  const table: readonly (readonly [number, number])[] = [
    [1, 12.706],
    [2, 4.303],
    [5, 2.571],
    [10, 2.228],
    [30, 2.042],
    [120, 1.98],
  ];
  for (const [degrees, t] of table) expect(studentT(0.95, degrees)).toBeCloseTo(t, 3);
});
