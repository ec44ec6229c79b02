import fc from "fast-check";
import { acceptSample, type BatchTest } from "gelwright/packing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const pack = { nominal: 0.05, tolerableError: 0.0045 };
const plan = fc
  .record({
    sampleSize: fc.integer({ min: 2, max: 30 }),
    defectivesMax: fc.integer({ min: 0, max: 2 }),
    factor: between(0, 1),
    noneBeyondTwo: fc.boolean(),
  })
  .map(
    ({ sampleSize, defectivesMax, factor, noneBeyondTwo }): BatchTest => ({
      sampleSize,
      defectivesMax: Math.min(defectivesMax, sampleSize),
      mean: { sampleSize, factor },
      noneBeyondTwo,
    }),
  );
const sampled = plan.chain((own) =>
  fc.record({
    test: fc.constant(own),
    contents: fc.array(between(0.042, 0.056), { minLength: own.sampleSize, maxLength: own.sampleSize }),
  }),
);

test("an accepted sample keeps every rule, and a rejected one breaks one of them", () => {
  let accepted = 0;
  fc.assert(
    fc.property(sampled, ({ test: own, contents }) => {
      const { verdict } = acceptSample({ ...pack, test: own, contents });
      const mean = contents.reduce((sum, x) => sum + x, 0) / contents.length;
      const spread = Math.sqrt(contents.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (contents.length - 1));
      const broken = [
        mean < 0.05 - own.mean.factor * spread - 1e-12,
        contents.filter((x) => x < 0.0455 - 1e-12).length > own.defectivesMax,
        own.noneBeyondTwo && contents.some((x) => x < 0.041 - 1e-12),
      ];
      expect(verdict).toBe(broken.includes(true) ? "rejected" : "accepted");
      if (verdict === "accepted") accepted += 1;
    }),
    { numRuns: 1000 },
  );
  expect(accepted).toBeGreaterThan(20);
});

test("a pack that stands exactly at the limit is not short, however the limit was reckoned", () => {
  const test_ = { sampleSize: 2, defectivesMax: 0, mean: { sampleSize: 2, factor: 0 }, noneBeyondTwo: true };
  const at = (content: number) => acceptSample({ ...pack, test: test_, contents: [content, 0.06] });
  expect(at(0.05 - 0.0045).verdict).toBe("accepted");
  expect(at(0.0455).verdict).toBe("accepted");
  // In grams the last bits are larger by a thousand.
  const inGrams = (content: number) =>
    acceptSample({ nominal: 50, tolerableError: 4.5, test: test_, contents: [content, 60] }).verdict;
  expect([45.5, 45.5 - 2e-11, 45.5 - 1e-9].map(inGrams)).toEqual(["accepted", "accepted", "rejected"]);
  expect(at(0.04549).defectives).toEqual({ count: 1, max: 0, holds: false });
});

const double: BatchTest = {
  sampleSize: 4,
  defectivesMax: 0,
  second: { rejectedFrom: 2, sampleSize: 4, defectivesMax: 1 },
  mean: { sampleSize: 4, factor: 1 },
  noneBeyondTwo: true,
};
const good = [0.0502, 0.0503, 0.0501, 0.0502];

test("a first sample between its two limits asks for a second one, which decides by both together", () => {
  const first = [0.045, 0.0512, 0.0511, 0.0513];
  expect(acceptSample({ ...pack, test: double, contents: good }).verdict).toBe("accepted");
  expect(acceptSample({ ...pack, test: double, contents: first }).verdict).toBe("second sample needed");
  const then = (contentsSecond: readonly number[]) =>
    acceptSample({ ...pack, test: double, contents: first, contentsSecond }).verdict;
  expect(then(good)).toBe("accepted");
  expect(then([0.045, 0.0502, 0.0503, 0.0501])).toBe("rejected");
  expect(acceptSample({ ...pack, test: double, contents: [0.045, 0.045, 0.06, 0.06] }).verdict).toBe("rejected");
});

test("no second sample rescues a mean that is too low or a pack beyond two errors, and none is asked for", () => {
  expect(acceptSample({ ...pack, test: double, contents: [0.04, 0.052, 0.055, 0.056] }).verdict).toBe("rejected");
  expect(acceptSample({ ...pack, test: double, contents: [0.0454, 0.0456, 0.0456, 0.0456] }).verdict).toBe("rejected");
  expect(() => acceptSample({ ...pack, test: double, contents: good, contentsSecond: good })).toThrow(
    "the first one decides",
  );
});

test("a sample of another size than the test asks for is refused", () => {
  expect(() => acceptSample({ ...pack, test: double, contents: good.slice(1) })).toThrow("found 3 packs, expected 4");
});
