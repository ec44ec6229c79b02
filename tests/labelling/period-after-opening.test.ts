import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { periodAfterOpening } from "gelwright/labelling";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const month = (365.25 / 12) * 86_400;

test("the change that is at its limit first is named, with its whole months", () => {
  fc.assert(
    fc.property(between(1, 60), between(1, 60), (left, right) => {
      const at = (cause: string, months: number) => ({ cause, initial: 2, limit: 10, rate: 8 / (months * month) });
      const { first, changes } = periodAfterOpening({ changes: [at("water", left), at("peroxides", right)] });
      expect(first?.time).toBe(Math.min(changes[0]?.time ?? 0, changes[1]?.time ?? 0));
      expect(Math.abs((first?.time ?? 0) / month - Math.min(left, right))).toBeLessThan(1e-9);
      expect(Math.abs((first?.months ?? 0) + 0.5 - Math.min(left, right))).toBeLessThanOrEqual(0.5 + 1e-9);
    }),
  );
});

test("a faster change never comes later to its limit", () => {
  fc.assert(
    fc.property(between(1e-9, 1e-6), between(1, 10), (rate, faster) => {
      const time = (each: number) =>
        periodAfterOpening({ changes: [{ cause: "water", initial: 0, limit: 2, rate: each }] }).first?.time ?? 0;
      expect(time(rate * faster)).toBeLessThanOrEqual(time(rate));
    }),
  );
});

test("a fall comes to a lower limit, and what moves away or stands still never does", () => {
  const change = (limit: number, rate: number) =>
    periodAfterOpening({ changes: [{ cause: "strength", initial: 10, limit, rate }] }).changes[0]?.status;
  expect(change(5, -1)).toBe("reached");
  expect(change(5, 1)).toBe("not reached");
  expect(change(5, 0)).toBe("not reached");
  expect(change(10, 0)).toBe("reached");
});

test("a rate that is taken away is reported, and no period stands in its place", () => {
  const { first, notKnown } = periodAfterOpening({ changes: [{ cause: "peroxides", initial: 2, limit: 10 }] });
  expect(first).toBeUndefined();
  expect(notKnown).toEqual(["peroxides"]);
});

test("times that no double holds are refused", () => {
  const change = { cause: "water", initial: 0, limit: 1e300, rate: 1e-300 };
  expect(() => periodAfterOpening({ changes: [change] })).toThrow(CalculationError);
  expect(() => periodAfterOpening({ changes: [] })).toThrow(CalculationError);
});
