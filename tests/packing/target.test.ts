import fc from "fast-check";
import {
  acceptSample,
  type BatchTest,
  batchTestFor,
  batchTestsEec1976,
  batchTestsEec1976Destructive,
  batchTestsHandbook133,
  batchTestsNewZealand1999,
  batchTestsOimlR87,
  batchTestsUk2006,
  shareRejected,
  targetByRules,
  targetFill,
} from "gelwright/packing";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";
import { normals } from "./normals.js";

const pack = { nominal: 0.05, tolerableError: 0.0045 };
const strict: BatchTest = {
  sampleSize: 50,
  defectivesMax: 2,
  mean: { sampleSize: 50, factor: 0 },
  noneBeyondTwo: true,
};
const tests: readonly (readonly [string, BatchTest])[] = [
  ["European, two samples of 30", batchTestFor({ table: batchTestsEec1976, packs: 200 })],
  ["European, two samples of 80", batchTestFor({ table: batchTestsEec1976, packs: 5000 })],
  ["European, packs opened", batchTestFor({ table: batchTestsEec1976Destructive, packs: 5000 })],
  ["United Kingdom, 125 packs", batchTestFor({ table: batchTestsUk2006, packs: 5000 })],
  ["New Zealand, 12 packs", batchTestFor({ table: batchTestsNewZealand1999, packs: 20 })],
  ["international, 80 packs", batchTestFor({ table: batchTestsOimlR87, packs: 2000 })],
  ["handbook, 48 packs", batchTestFor({ table: batchTestsHandbook133, packs: 10_000 })],
  ["a buyer who allows the mean nothing", strict],
];

/** A batch as it is drawn: its mean and its spread [kg]. */
interface Filled {
  readonly mean: number;
  readonly spread: number;
}

/**
 * The shares of simulated batches that a measured sample rejects, for some fills of the same draws. The rules stand here a
 * second time, on bare numbers: they are asked of some ten million packs. One batch in fifty goes through `acceptSample`
 * too, which has to say the same.
 */
function simulated(test: BatchTest, fills: readonly Filled[], batches: number, seed: number): readonly number[] {
  const next = normals(seed);
  const draw = (packs: Float64Array) => {
    for (let i = 0; i < packs.length; i += 1) packs[i] = next();
  };
  const first = new Float64Array(test.sampleSize);
  const second = new Float64Array(test.second?.sampleSize ?? 0);
  const rejected = fills.map(() => 0);
  for (let batch = 0; batch < batches; batch += 1) {
    draw(first);
    draw(second);
    const sample = momentsOf(first.subarray(0, test.mean.sampleSize));
    for (const [i, { mean, spread }] of fills.entries()) {
      // How far short a pack may be, in standard deviations about the mean of the batch.
      const limit = (errors: number) => (pack.nominal - errors * pack.tolerableError - mean) / spread;
      const beyondTwo = (packs: Float64Array) => test.noneBeyondTwo && belowIn(packs, limit(2)) > 0;
      const short = belowIn(first, limit(1));
      const again = test.second && short > test.defectivesMax && short < test.second.rejectedFrom;
      const few = again || short <= test.defectivesMax;
      let fails = !few || beyondTwo(first) || sample.mean + test.mean.factor * sample.spread < limit(0);
      const asked = again && !fails;
      if (asked) fails = short + belowIn(second, limit(1)) > (test.second?.defectivesMax ?? 0) || beyondTwo(second);
      if (fails) (rejected[i] as number) += 1;
      if (batch % 50 !== 0) continue;
      const contents = (packs: Float64Array) => [...packs].map((z) => mean + spread * z);
      const measured = { contents: contents(first), ...(asked ? { contentsSecond: contents(second) } : {}) };
      expect(acceptSample({ ...pack, test, ...measured }).verdict).toBe(fails ? "rejected" : "accepted");
    }
  }
  return rejected.map((count) => count / batches);
}

/** How many packs are below a limit. */
function belowIn(packs: Float64Array, limit: number): number {
  let count = 0;
  for (let i = 0; i < packs.length; i += 1) if ((packs[i] as number) < limit) count += 1;
  return count;
}

function momentsOf(packs: Float64Array): Filled {
  let sum = 0;
  for (let i = 0; i < packs.length; i += 1) sum += packs[i] as number;
  const mean = sum / packs.length;
  let squares = 0;
  for (let i = 0; i < packs.length; i += 1) squares += ((packs[i] as number) - mean) ** 2;
  return { mean, spread: Math.sqrt(squares / (packs.length - 1)) };
}

describe.each(tests)("%s", (_, test_) => {
  test("of 10 000 simulated batches at the target the wanted share fails, whatever the spread", () => {
    const targets = [0.0006, 0.0018, 0.003].map((spread) => ({
      ...targetFill({ ...pack, test: test_, spread, shareRejectedMax: 0.05 }),
      spread,
    }));
    const fills = targets.map(({ mass, spread }) => ({ mean: mass, spread }));
    const shares = simulated(test_, fills, 10_000, 20261128);
    for (const [i, { shareRejected: expected, limitedBy }] of targets.entries()) {
      const error = Math.sqrt((expected * (1 - expected)) / 10_000);
      expect(Math.abs((shares[i] as number) - expected)).toBeLessThan(3.5 * error);
      expect(expected).toBeLessThanOrEqual(0.05 + 1e-9);
      if (limitedBy !== "nominal") expect(expected).toBeCloseTo(0.05, 8);
    }
  });

  test("a larger spread never lowers the target, and a smaller share that may fail never does", () => {
    const spread = fc.double({ min: 1e-4, max: 0.01, noNaN: true });
    const share = fc.double({ min: 1e-4, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(spread, spread, share, share, (one, other, p, q) => {
        const at = (own: number, of: number) =>
          targetFill({ ...pack, test: test_, spread: own, shareRejectedMax: of }).mass;
        const [narrow, lax] = [Math.min(one, other), Math.max(p, q)];
        const target = at(narrow, lax);
        expect(target).toBeGreaterThanOrEqual(pack.nominal);
        expect(at(Math.max(one, other), lax)).toBeGreaterThanOrEqual(target - 1e-9);
        expect(at(narrow, Math.min(p, q))).toBeGreaterThanOrEqual(target - 1e-9);
      }),
      { numRuns: 8 },
    );
  });

  test("a fuller mean never fails more often", () => {
    fc.assert(
      fc.property(between(0.048, 0.053), between(0.048, 0.053), between(1e-4, 0.005), (one, other, spread) => {
        const at = (mean: number) => shareRejected({ ...pack, test: test_, massFill: mean, spread });
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)) + 1e-4);
      }),
      { numRuns: 25 },
    );
  });
});

test("a target at the nominal quantity fails half of the batches where the mean is allowed nothing", () => {
  expect(shareRejected({ ...pack, test: strict, massFill: pack.nominal, spread: 0.0006 })).toBeCloseTo(0.5, 9);
  const [share] = simulated(strict, [{ mean: pack.nominal, spread: 0.0006 }], 10_000, 5);
  expect(share).toBeGreaterThan(0.485);
  expect(share).toBeLessThan(0.515);
});

test("a spread of nothing asks for the nominal quantity, and a mean below it then fails every time", () => {
  const exact = { mass: 0.05, overfill: 0, shareRejected: 0, limitedBy: "nominal" };
  expect(targetFill({ ...pack, test: strict, spread: 0, shareRejectedMax: 0.01 })).toEqual(exact);
  expect(shareRejected({ ...pack, test: strict, massFill: 0.0499, spread: 0 })).toBe(1);
  expect(shareRejected({ ...pack, test: strict, massFill: 0.05, spread: 0 })).toBe(0);
});

test("a share that the nominal quantity just keeps asks for no overfill", () => {
  const batch = { ...pack, test: tests[0]?.[1] as BatchTest, spread: 0.0025 };
  const shareRejectedMax = shareRejected({ ...batch, massFill: pack.nominal });
  expect(targetFill({ ...batch, shareRejectedMax })).toMatchObject({ overfill: 0, limitedBy: "nominal" });
  const less = targetFill({ ...batch, shareRejectedMax: 0.99 * shareRejectedMax });
  expect(less.overfill).toBeGreaterThan(0);
  expect(less.limitedBy).toBe("single packs");
});

test("kilograms or grams give the same share", () => {
  fc.assert(
    fc.property(between(0.049, 0.053), between(0.0002, 0.004), fc.constantFrom(...tests), (mean, spread, [, test_]) => {
      const inKilograms = shareRejected({ ...pack, test: test_, massFill: mean, spread });
      const inGrams = shareRejected({
        test: test_,
        nominal: 50,
        tolerableError: 4.5,
        massFill: 1000 * mean,
        spread: 1000 * spread,
      });
      expect(inGrams).toBeCloseTo(inKilograms, 8);
    }),
    { numRuns: 25 },
  );
});

test("the packers' rules hold for a batch at their target, and none of them for one below", () => {
  fc.assert(
    fc.property(between(1e-4, 0.01), between(1e-4, 0.01), (one, other) => {
      const shares = { shareBeyondOneMax: 0.025, shareBeyondTwoMax: 1e-4 };
      const at = (spread: number) => targetByRules({ ...pack, spread, ...shares });
      expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)));
      const z = (at(one) - pack.nominal + pack.tolerableError) / one;
      const z2 = (at(one) - pack.nominal + 2 * pack.tolerableError) / one;
      expect(z).toBeGreaterThanOrEqual(1.959963984 - 1e-6);
      expect(z2).toBeGreaterThanOrEqual(3.719016485 - 1e-6);
      expect(at(one) === pack.nominal || Math.min(z - 1.959963985, z2 - 3.719016486) < 1e-6).toBe(true);
    }),
  );
});

test("a first sample that no second one could save is as good as rejected", () => {
  const of = (rejectedFrom: number): BatchTest => ({
    sampleSize: 30,
    defectivesMax: 1,
    second: { rejectedFrom, sampleSize: 30, defectivesMax: 3 },
    mean: { sampleSize: 30, factor: 0.503 },
    noneBeyondTwo: true,
  });
  fc.assert(
    fc.property(between(0.048, 0.053), between(5e-4, 4e-3), (massFill, spread) => {
      const at = (test: BatchTest) => shareRejected({ ...pack, test, massFill, spread });
      // Four short packs of the first sample are more than both samples may have.
      expect(at(of(6))).toBe(at(of(4)));
      expect(at(of(2))).toBeGreaterThanOrEqual(at(of(4)) - 1e-12);
    }),
    { numRuns: 25 },
  );
});
