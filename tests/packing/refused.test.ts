import { shareRejected, spreadOfFill, tolerableError, tolerableErrorsEec1976 } from "gelwright/packing";
import { expect, test } from "vitest";

const single = { sampleSize: 5, defectivesMax: 0, mean: { sampleSize: 5, factor: 0 }, noneBeyondTwo: true };
const pack = { nominal: 0.05, tolerableError: 0.0045, massFill: 0.0502, spread: 0.002 };

test.each([
  [
    "a sample of one pack has no standard deviation",
    () => shareRejected({ ...pack, test: { ...single, mean: { sampleSize: 1, factor: 2 } } }),
    "two packs at least",
  ],
  [
    "a row of a table states its error either way, and not both ways",
    () =>
      tolerableError({
        table: { ...tolerableErrorsEec1976, rows: [{ nominalMax: null, error: 1, errorRelative: 0.1 }] },
        nominal: 0.05,
        by: "mass",
      }),
    "errorRelative or error",
  ],
  [
    "full packs weigh more than empty ones",
    () => spreadOfFill({ gross: [0.02, 0.021, 0.019], tare: [0.02, 0.0205, 0.0215] }),
    "weigh more than empty ones",
  ],
] as const)("%s", (_, call, message) => {
  expect(call).toThrow(message);
});

test("the mean of one pack is that pack: it fails as often as the pack lies below the nominal quantity", () => {
  const one = { ...single, sampleSize: 1, mean: { sampleSize: 1, factor: 0 } };
  // Half of all packs, where the fill is the nominal quantity; none of them is short otherwise.
  expect(shareRejected({ ...pack, massFill: 0.05, spread: 0.001, test: one })).toBeCloseTo(0.5, 6);
});
