import fc from "fast-check";
import { yieldStressToSuspend } from "gelwright/particles";
import { expect, test } from "vitest";

const suspended = fc.record({
  diameter: fc.double({ min: 1e-6, max: 5e-3, noNaN: true }),
  densityParticle: fc.double({ min: 1, max: 8000, noNaN: true }),
  densityFluid: fc.double({ min: 700, max: 1300, noNaN: true }),
});

test("what was computed lies within the spread of what was measured", () => {
  fc.assert(
    fc.property(suspended, (input) => {
      const { min, value, max } = yieldStressToSuspend(input);
      expect(min).toBeLessThanOrEqual(value);
      expect(value).toBeLessThanOrEqual(max);
    }),
  );
});

test("a larger particle, or one that differs more from the gel, never needs less", () => {
  fc.assert(
    fc.property(suspended, fc.double({ min: 1, max: 10, noNaN: true }), (input, times) => {
      const needed = yieldStressToSuspend(input).max;
      expect(yieldStressToSuspend({ ...input, diameter: input.diameter * times }).max).toBeGreaterThanOrEqual(needed);
    }),
  );
});

test("a particle as dense as the gel needs nothing to hold it", () => {
  expect(yieldStressToSuspend({ diameter: 1e-3, densityParticle: 915, densityFluid: 915 })).toEqual({
    min: 0,
    value: 0,
    max: 0,
  });
});
