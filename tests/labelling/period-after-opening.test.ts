import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { periodAfterOpening } from "gelwright/labelling";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const month = (365.25 / 12) * 86_400;

test("the change that is at its limit first is named, with its whole months", () => {
  fc.assert(
    fc.property(between(1, 60), between(1, 60), (left, right) => {
      const at = (cause: string, months: number) => ({ cause, initial: 2, max: 10, rate: 8 / (months * month) });
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
        periodAfterOpening({ changes: [{ cause: "water", initial: 0, max: 2, rate: each }] }).first?.time ?? 0;
      expect(time(rate * faster)).toBeLessThanOrEqual(time(rate));
    }),
  );
});

test("a fall comes to a lower limit, and what moves away or stands still never does", () => {
  const change = (min: number, rate: number) =>
    periodAfterOpening({ changes: [{ cause: "strength", initial: 10, min, rate }] }).changes[0]?.status;
  expect(change(5, -1)).toBe("reached");
  expect(change(5, 1)).toBe("not-reached");
  expect(change(5, 0)).toBe("not-reached");
  expect(change(10, 0)).toBe("reached");
});

test("what is past its limit when the pack is opened is at its limit at once, however it moves", () => {
  for (const rate of [1e-9, -1e-9, 0, undefined]) {
    const change = { cause: "peroxides", initial: 12, max: 10, ...(rate !== undefined && { rate }) };
    expect(periodAfterOpening({ changes: [change] })).toMatchObject({
      changes: [{ status: "reached", time: 0 }],
      first: { cause: "peroxides", time: 0, months: 0 },
    });
  }
});

test("of two limits the one on its way is reached", () => {
  const time = (rate: number) =>
    periodAfterOpening({ changes: [{ cause: "pH", initial: 6, min: 5, max: 8, rate }] }).first?.time;
  expect([time(1e-7), time(-1e-7)]).toEqual([2e7, 1e7]);
});

test("a change without a limit, or with two the wrong way round, is refused", () => {
  const refused = (limits: { min?: number; max?: number }) => () =>
    periodAfterOpening({ changes: [{ cause: "pH", initial: 6, ...limits, rate: 1 }] });
  expect(refused({})).toThrow(/a min, a max or both/);
  expect(refused({ min: 7, max: 5 })).toThrow(/the min \(7\) or more/);
});

test("a rate that is taken away is reported, and no period stands in its place", () => {
  const { first, notKnown } = periodAfterOpening({ changes: [{ cause: "peroxides", initial: 2, max: 10 }] });
  expect(first).toBeUndefined();
  expect(notKnown).toEqual(["peroxides"]);
});

test("times that no double holds are refused", () => {
  const change = { cause: "water", initial: 0, max: 1e300, rate: 1e-300 };
  expect(() => periodAfterOpening({ changes: [change] })).toThrow(CalculationError);
  expect(() => periodAfterOpening({ changes: [] })).toThrow(CalculationError);
});
