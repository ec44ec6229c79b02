import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { type LabelParticle, microplasticFlag } from "gelwright/labelling";
import { expect, test } from "vitest";

const table = {
  jurisdiction: "EU",
  date: "2026-11-28",
  rows: [
    { productType: "rinse-off", from: "2027-10-17", amountMin: "0.01 %" },
    { productType: "leave-on", from: "2029-10-17", amountMin: "0.01 %" },
  ],
};
const flag = (particles: readonly LabelParticle[], date = "2030-01-01", productType = "leave-on") =>
  microplasticFlag({ particles, productType, date, table });
const plastic = (amount: string): LabelParticle => ({ name: "glitter", amount, nature: "synthetic polymer" });

test("the share at which the restriction begins is restricted, also as a sum", () => {
  expect(flag([plastic("0.003 %"), plastic("0.007 %")]).status).toBe("restricted");
  expect(flag([plastic("0.0099999999999999999999 %")]).status).toBe("below-share");
});

test("the first day counts, and the day before does not", () => {
  expect(flag([plastic("1 %")], "2027-10-17", "rinse-off").status).toBe("restricted");
  expect(flag([plastic("1 %")], "2027-10-16", "rinse-off").status).toBe("restricted-later");
  expect(flag([plastic("1 %")], "2027-10-17").from).toBe("2029-10-17");
});

test("particles that add up to more than the product are refused", () => {
  expect(flag([plastic("60 %"), plastic("40 %")]).share).toEqual({ min: 1, max: 1 });
  expect(() => flag([plastic("60 %"), plastic("40.1 %")])).toThrow(/100 % or less/);
});

test("particles of another nature are outside the restriction", () => {
  const others = (["natural polymer", "degradable polymer", "soluble polymer", "inorganic"] as const).map((nature) => ({
    name: nature,
    amount: "5 %",
    nature,
  }));
  expect(flag(others).status).toBe("below-share");
  expect(flag([]).status).toBe("below-share");
});

test("taking away what a particle is made of never makes the status better", () => {
  const rank = ["restricted", "restricted-later", "not-known", "below-share"];
  const particle = fc.record({
    name: fc.constantFrom("glitter", "scrub"),
    amount: fc.constantFrom("0.002 %", "0.008 %", "0.01 %", "2 %"),
    nature: fc.constantFrom("synthetic polymer" as const, "inorganic" as const),
  });
  fc.assert(
    fc.property(fc.array(particle, { minLength: 1, maxLength: 5 }), fc.nat(), (particles, pick) => {
      const less = particles.map(({ name, amount, nature }, i) =>
        i === pick % particles.length ? { name, amount } : { name, amount, nature },
      );
      const [full, silent] = [flag(particles), flag(less)];
      if (full.status !== "restricted")
        expect(rank.indexOf(silent.status)).toBeLessThanOrEqual(rank.indexOf(full.status));
      expect(silent.status === "below-share" && full.status !== "below-share").toBe(false);
      expect(silent.notStated).toHaveLength(1);
      expect(silent.share.min).toBeLessThanOrEqual(full.share.min);
      expect(silent.share.max).toBeGreaterThanOrEqual(full.share.max);
    }),
  );
});

test("a type of product that the table does not name is not known", () => {
  const answer = flag([plastic("1 %")], "2030-01-01", "lip product");
  expect(answer.status).toBe("not-known");
  expect(answer.from).toBeUndefined();
});

test("days that are none, natures that are none and rows for one type twice are refused", () => {
  for (const date of ["2027-13-01", "2027-02-29", "2027-04-31", "17.10.2027", "2100-02-29", "2027-00-10", "2027-01-00"])
    expect(() => flag([], date)).toThrow(CalculationError);
  expect(flag([], "2028-02-29").status).toBe("below-share");
  expect(flag([], "2000-02-29").status).toBe("below-share");
  expect(() => flag([{ name: "x", amount: "1 %", nature: "plastic" as never }])).toThrow(CalculationError);
  const rows = [...table.rows, ...table.rows];
  expect(() =>
    microplasticFlag({ particles: [], productType: "leave-on", date: "2027-01-01", table: { ...table, rows } }),
  ).toThrow(/one row/);
});
