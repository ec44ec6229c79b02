import { line, text } from "@observablehq/plot";
import {
  type BatchTest,
  batchTestFor,
  batchTestsEec1976Destructive,
  batchTestsUk2006,
  targetFill,
} from "gelwright/packing";
import type { Figure } from "./figure.js";

const strict: BatchTest = {
  sampleSize: 50,
  defectivesMax: 2,
  mean: { sampleSize: 50, factor: 0 },
  noneBeyondTwo: true,
};
const tests = [
  { name: "125 packs, single sample", dashes: "none", test: batchTestFor({ table: batchTestsUk2006, packs: 5000 }) },
  {
    name: "20 packs, opened",
    dashes: "7 4",
    test: batchTestFor({ table: batchTestsEec1976Destructive, packs: 5000 }),
  },
  { name: "50 packs, mean as it is", dashes: "1 4", test: strict },
] as const;
const nominal = 50;

/** What a target lies above nominal, for packs of 50 g and one batch in a hundred that may fail [g]. */
const overfill = (test: BatchTest, spread: number): number =>
  targetFill({ test, nominal, tolerableError: 4.5, spread, shareRejectedMax: 0.01 }).overfill;

/** How much more has to go into a pack, by the spread of the filler and the test that its batches face. */
export function targetFills(): Figure {
  const spreads = Array.from({ length: 36 }, (_, step) => 0.1 * (step + 1));
  const curves = tests.map(({ name, dashes, test }) => ({
    name,
    dashes,
    curve: spreads.map((spread) => ({ spread, overfill: overfill(test, spread) })),
  }));
  const at = (spread: number) =>
    tests.map(({ name, test }) => `${name}: ${overfill(test, spread).toFixed(2)} g`).join("; ");
  return {
    name: "target-fills",
    title: "Overfill of 50 g packs for one batch in a hundred that may fail, by the spread of the filler",
    description: `Above nominal, for a spread of 1 g: ${at(1)}. For a spread of 2.5 g: ${at(2.5)}. The tolerable error is 4.5 g, and up to a third of it a test that allows the mean its doubt asks for no overfill.`,
    options: {
      marginRight: 190,
      x: { label: "standard deviation of the content [g] →", domain: [0, 3.6] },
      y: { label: "↑ overfill [g]" },
      marks: [
        ...curves.map(({ curve, dashes }) =>
          line(curve, { x: "spread", y: "overfill", strokeDasharray: dashes, strokeWidth: 2 }),
        ),
        ...curves.map(({ name, curve }, i) =>
          text(curve.slice(-1), {
            x: "spread",
            y: "overfill",
            text: () => name,
            dx: 8,
            // Two of the curves end side by side.
            dy: i === 1 ? 10 : i === 2 ? -6 : 0,
            textAnchor: "start",
          }),
        ),
      ],
    },
  };
}
