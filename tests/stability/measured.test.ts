import fc from "fast-check";
import {
  centrifugeSpeed,
  colourDifference1976,
  colourDifference2000,
  gravityTime,
  oilBleed,
  relativeCentrifugalForce,
  trend,
  viscosityDrift,
  welchTest,
} from "gelwright/stability";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

test("the speed for a force gives that force, and twice the speed four times the force", () => {
  const radius = fc.double({ min: 0.01, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), radius, (force, r) => {
      const speed = centrifugeSpeed({ relativeCentrifugalForce: force, radius: r });
      expect(relativeCentrifugalForce({ speed, radius: r }) / force).toBeCloseTo(1, 12);
      expect(relativeCentrifugalForce({ speed: 2 * speed, radius: r }) / force).toBeCloseTo(4, 12);
    }),
  );
});

const run = { speed: 50, radiusMin: 0.08, radiusMax: 0.1, duration: 1800 };
const thinOil = { yieldStress: 0, volumeFractionDispersed: 0.01, newtonian: true };

test("half an hour at a thousand g is three weeks of gravity, not years", () => {
  const answer = gravityTime({ ...run, ...thinOil });
  expect(answer.known && answer.duration.max / 86400).toBeCloseTo(20.97, 2);
});

test("with a yield stress, packed drops or shear thinning it is not known, and leaving the reading out helps nobody", () => {
  const codes = (gel: Parameters<typeof gravityTime>[0]) => {
    const answer = gravityTime(gel);
    return answer.known ? [] : answer.codes;
  };
  expect(codes({ ...run, ...thinOil })).toEqual([]);
  expect(codes({ ...run, ...thinOil, yieldStress: 0.1 })).toEqual(["yield-stress"]);
  expect(codes({ ...run, ...thinOil, volumeFractionDispersed: 0.64 })).toEqual(["packed"]);
  expect(codes({ ...run, ...thinOil, newtonian: false })).toEqual(["not-newtonian"]);
  expect(codes(run)).toEqual(["yield-stress-not-stated", "volume-fraction-not-stated", "newtonian-not-stated"]);
});

test("bleed and its uncertainty do not hang on the weight of vessel and collector", () => {
  fc.assert(
    fc.property(between(0, 0.5), between(0, 0.1), between(0, 0.3), (vessel, collector, share) => {
      const weighings = (empty: number, clean: number) =>
        oilBleed({
          massVessel: empty,
          massFilled: empty + 0.02,
          massCollectorBefore: clean,
          massCollectorAfter: clean + 0.02 * share,
          uncertaintyWeighing: 1e-5,
        });
      const [one, other] = [weighings(vessel, collector), weighings(0, 0)];
      expect(one.massFraction).toBeCloseTo(share, 9);
      expect(one.standardUncertainty).toBeCloseTo(other.standardUncertainty, 9);
      expect(one.found).toBe(one.massFraction > 2 * one.standardUncertainty);
    }),
  );
});

const readings = fc.array(fc.record({ time: between(0, 1e7), value: between(-5, 5) }), { minLength: 4, maxLength: 12 });

test("a trend keeps its slope when the clock or the value is shifted, and turns with the sign", () => {
  fc.assert(
    fc.property(readings, between(-1e6, 1e6), (own, shift) => {
      fc.pre(Math.max(...own.map(({ time }) => time)) - Math.min(...own.map(({ time }) => time)) > 1e5);
      const plain = trend({ readings: own });
      const moved = trend({ readings: own.map(({ time, value }) => ({ time: time + shift, value: value + 3 })) });
      const turned = trend({ readings: own.map(({ time, value }) => ({ time, value: -value })) });
      const width = plain.slope.max - plain.slope.min + 1e-12;
      expect(Math.abs(moved.slope.value - plain.slope.value)).toBeLessThan(1e-6 * width);
      expect(Math.abs(turned.slope.max + plain.slope.min)).toBeLessThan(1e-6 * width);
      expect(plain.slope.min).toBeLessThanOrEqual(plain.slope.value);
      expect(plain.slope.value).toBeLessThanOrEqual(plain.slope.max);
    }),
  );
});

test("readings on a line show it with no doubt, and readings that stand still show no direction", () => {
  const on = (slope: number) =>
    trend({ readings: [0, 1, 2, 3].map((day) => ({ time: 86400 * day, value: 2 + slope * day })) });
  expect(on(0.5).direction).toBe("rises");
  expect(on(-0.5).direction).toBe("falls");
  expect(on(0).direction).toBe("not known");
  expect(on(0.5).slope.max - on(0.5).slope.min).toBeLessThan(1e-12);
});

test("two formulas change places with the sign alone, and one shift of both changes nothing", () => {
  const set = fc.array(between(0, 10), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(set, set, between(-20, 20), (first, second, shift) => {
      fc.pre(Math.max(...first) - Math.min(...first) + Math.max(...second) - Math.min(...second) > 1e-3);
      const test = welchTest({ first, second });
      const swapped = welchTest({ first: second, second: first });
      expect(swapped.probability).toBeCloseTo(test.probability, 10);
      expect(swapped.difference.max).toBeCloseTo(-test.difference.min, 6);
      const moved = welchTest({ first: first.map((x) => x + shift), second: second.map((x) => x + shift) });
      expect(moved.probability).toBeCloseTo(test.probability, 6);
      expect(test.differs).toBe(test.difference.min > 0 || test.difference.max < 0);
    }),
  );
});

test("a viscosity that grows by the same share each week grows by that share to the power of the weeks", () => {
  const week = 604800;
  const drifting = [0, 1, 2, 3].map((weeks) => ({ time: weeks * week, viscosity: 20 * 1.01 ** weeks }));
  const { factor, direction, extrapolated } = viscosityDrift({ readings: drifting, duration: 10 * week });
  expect(factor.value).toBeCloseTo(1.01 ** 10, 10);
  expect([direction, extrapolated]).toEqual(["rises", true]);
});

const colour = fc.record({ lightness: between(0, 100), a: between(-80, 80), b: between(-80, 80) });

test("a colour differs from itself by nothing, and from another by as much as that from it", () => {
  fc.assert(
    fc.property(colour, colour, (first, second) => {
      for (const difference of [colourDifference1976, colourDifference2000]) {
        expect(difference({ first, second: first })).toBe(0);
        expect(difference({ first: second, second: first })).toBeCloseTo(difference({ first, second }), 9);
        expect(difference({ first, second })).toBeGreaterThanOrEqual(0);
      }
    }),
  );
});

test("a weight of two on lightness halves a difference in lightness", () => {
  const [first, second] = [
    { lightness: 50, a: 0, b: 0 },
    { lightness: 60, a: 0, b: 0 },
  ];
  const whole = colourDifference2000({ first, second });
  expect(colourDifference2000({ first, second, weights: { lightness: 2 } })).toBeCloseTo(whole / 2, 12);
});
