import { prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import {
  densityOf,
  expansionLeftOut,
  massOf,
  portionOf,
  usualExpansionMax,
  volumeOf,
} from "../../src/plan/contents.js";
import { runOf } from "../../src/plan/prepared-run.js";
import { coldJob, exampleJob } from "../support/example.js";

const weighed = (job: Parameters<typeof prepareJob>[0]) => runOf(prepareJob(job)).weighed;

describe("glycerin and water in an outer phase", () => {
  const outer = weighed(coldJob()).filter(({ phase }) => phase === "A");

  test("contract as their table has it from 0 to 60 °C, at both ends too, and add up their volumes beyond", () => {
    for (const [end, outwards] of [
      [0, -1e-6],
      [60, 1e-6],
    ] as const) {
      const [within, at, beyond] = [end - outwards, end, end + outwards].map((one) => densityOf(outer, one));
      expect(at).toBeCloseTo(within as number, 3);
      expect((at as number) - (beyond as number)).toBeGreaterThan(1);
    }
  });

  test("have no density where nothing is in the vessel", () => {
    expect(() => densityOf([], 20)).toThrow();
  });
});

describe("some contents", () => {
  const oil = weighed(exampleJob());

  test("in a portion are mixed as they are, and nothing of them has no mass", () => {
    const some = portionOf(oil, 2);
    expect(massOf(some)).toBeCloseTo(2, 12);
    for (const [i, { mass }] of some.entries()) expect(mass / 2).toBeCloseTo((oil[i]?.mass ?? 0) / massOf(oil), 12);
    expect(portionOf(oil, 0)).toEqual([]);
  });

  test("that state no expansion may grow by the most that is usual where it is warmer, and shrink where it is cooler", () => {
    const former = oil.filter(({ material }) => material.key === "gelFormer");
    const [one] = former;
    if (!one) throw new Error("a gel former");
    expect(expansionLeftOut(one, 70)).toBeCloseTo(50 * usualExpansionMax, 12);
    expect(expansionLeftOut(one, 10)).toBeCloseTo(-10 * usualExpansionMax, 12);
    const volume = massOf(former) / 960;
    expect(volumeOf(former, 70).min / volume).toBeCloseTo(1, 12);
    expect(volumeOf(former, 70).max / volume).toBeCloseTo(1 + 50 * usualExpansionMax, 12);
    expect(volumeOf(former, 10).min / volume).toBeCloseTo(1 - 10 * usualExpansionMax, 12);
    expect(volumeOf(former, 10).max / volume).toBeCloseTo(1, 12);
    const stated = oil.find(({ material }) => material.key === "triglyceride");
    expect(stated && expansionLeftOut(stated, 70)).toBe(0);
  });
});
