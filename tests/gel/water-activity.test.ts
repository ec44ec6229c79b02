import fc from "fast-check";
import { checkWaterActivity, glycerinAtHumidity, waterActivity, waterTakenUp } from "gelwright/gel";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const share = fc.double({ min: 1e-6, max: 1, noNaN: true });
const temperature = between(0, 100);

test("water alone has an activity of 1, glycerin alone 0, and more glycerin never more", () => {
  const at = (massFractionGlycerin: number) => waterActivity({ massFractionGlycerin, temperature: 25 });
  expect(at(0)).toEqual({ norrish: 1, wilson: 1 });
  expect(at(1)).toEqual({ norrish: 0, wilson: 0 });
  for (let w = 0; w < 1; w += 0.01) {
    expect(at(Math.min(1, w + 0.01)).norrish).toBeLessThan(at(w).norrish);
    expect(at(Math.min(1, w + 0.01)).wilson).toBeLessThan(at(w).wilson);
  }
});

test("the two laws agree where both were made, and part above 70 %", () => {
  const apart = (massFractionGlycerin: number) => {
    const { norrish, wilson } = waterActivity({ massFractionGlycerin, temperature: 25 });
    return Math.abs(norrish - wilson);
  };
  for (let w = 0; w <= 0.6; w += 0.02) expect(apart(w)).toBeLessThan(0.012);
  expect(apart(0.8)).toBeGreaterThan(0.04);
});

test("a gel at rest with the room is at rest with it", () => {
  fc.assert(
    fc.property(share, temperature, (relativeHumidity, temperature) => {
      const { norrish, wilson } = glycerinAtHumidity({ relativeHumidity, temperature });
      expect(waterActivity({ massFractionGlycerin: norrish, temperature }).norrish).toBeCloseTo(relativeHumidity, 9);
      expect(waterActivity({ massFractionGlycerin: wilson, temperature }).wilson).toBeCloseTo(relativeHumidity, 9);
    }),
  );
});

test("a dry gel former takes up water, a wet one gives it off, and twice the gel twice as much", () => {
  const room = { relativeHumidity: 0.5, temperature: 25 };
  expect(waterTakenUp({ massGlycerin: 9, massWater: 0.5, ...room }).wilson).toBeGreaterThan(0);
  expect(waterTakenUp({ massGlycerin: 5, massWater: 5, ...room }).wilson).toBeLessThan(0);
  const once = waterTakenUp({ massGlycerin: 9, massWater: 1, ...room });
  expect(waterTakenUp({ massGlycerin: 18, massWater: 2, ...room }).norrish).toBeCloseTo(2 * once.norrish, 12);
  expect(() => waterTakenUp({ massGlycerin: 9, massWater: 1, ...room, relativeHumidity: 1 })).toThrow("saturated air");
});

test("the water activity has to lie below its limit with both ends, and on the limit it does not", () => {
  for (const [min, max, verdict, side] of [
    [0.4, 0.5, "met", "none"],
    [0.74, 0.76, "not-known", "none"],
    [0.75, 0.75, "not-met", "above"],
  ] as const)
    expect(checkWaterActivity({ min, max })).toEqual({
      id: "water-activity",
      verdict,
      side,
      figure: { min, max },
      limit: { max: 0.75 },
    });
  // A smallest value alone says nothing of the largest.
  expect(() => checkWaterActivity({ min: 0.74 } as never)).toThrow(/max/);
});
