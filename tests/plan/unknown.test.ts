import { CalculationError } from "gelwright/error";
import { describe, expect, test } from "vitest";
import { by, cell, either, known, otherwise, stated, Unknown, unknown, where } from "../../src/plan/unknown.js";

/** The reason for which a figure is not known; fails if it is known. */
function reasonOf(find: () => unknown): unknown {
  return otherwise(
    () => expect.unreachable(`known: ${find()}`),
    (reason) => reason,
  );
}

describe("what is not known", () => {
  test("ends an evaluation, with its reason", () => {
    expect(reasonOf(() => unknown("nothing-there"))).toEqual({ code: "nothing-there" });
    expect(() => unknown("nothing-there")).toThrow(Unknown);
    expect(reasonOf(() => stated(undefined, "vessel-heater", { of: "pot" }))).toEqual({
      code: "not-stated",
      field: "vessel-heater",
      of: "pot",
    });
  });

  test("is nothing that is stated, a zero among it", () => {
    expect(stated(0, "vessel-heater")).toBe(0);
    expect(stated("", "vessel-heater")).toBe("");
  });

  test("is found once, and remembered", () => {
    let looks = 0;
    const lost = cell(() => {
      looks += 1;
      return unknown("not-done");
    });
    expect([reasonOf(lost), reasonOf(lost)]).toEqual([{ code: "not-done" }, { code: "not-done" }]);
    expect(looks).toBe(1);
    const found = cell(() => {
      looks += 1;
      return undefined;
    });
    expect([found(), found(), looks]).toEqual([undefined, undefined, 2]);
    expect(known(3)()).toBe(3);
  });

  test("is left out of a result", () => {
    expect(where("power", () => unknown("not-done"))).toEqual({});
    expect(where("power", () => 5)).toEqual({ power: 5 });
  });

  test("is looked for a second way, and the last reason stands", () => {
    const lost = (code: "not-done" | "not-read") => (): number => unknown(code);
    expect(either(lost("not-done"), () => 2)).toBe(2);
    expect(either(() => 1, lost("not-read"))).toBe(1);
    expect(reasonOf(() => either(lost("not-done"), lost("not-read")))).toEqual({ code: "not-read" });
  });
});

describe("what a kernel refuses", () => {
  const refusal = new CalculationError("range", [
    { path: "points[0].massToAdd", found: "5", expected: "less", parameters: { value: 5, max: 4 } },
  ]);
  const throws = (error: unknown) => (): never => {
    throw error;
  };

  test("is not known, with the law and the quantity", () => {
    expect(reasonOf(() => by("addition-schedule", throws(refusal)))).toEqual({
      code: "outside-range",
      law: "addition-schedule",
      quantity: "mass-to-add",
      value: 5,
      max: 4,
    });
  });

  test("is a field to state where the kernel lacks a constant", () => {
    const lacks = new CalculationError("unreachable", [{ path: "impeller", found: "none", expected: "one" }]);
    expect(reasonOf(() => by("power-number", throws(lacks), { field: "stirrer-power" }))).toMatchObject({
      code: "not-stated",
      field: "stirrer-power",
    });
  });

  test("and no other error: a fault of the program stays one", () => {
    const broken = new TypeError("broken");
    expect(() => by("viscosity", throws(broken))).toThrow(broken);
    expect(() => otherwise(throws(broken), () => 1)).toThrow(broken);
    expect(() => cell(throws(broken))()).toThrow(broken);
    expect(() => where("power", throws(broken))).toThrow(broken);
  });
});
