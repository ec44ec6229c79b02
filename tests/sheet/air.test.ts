import { type PlanAir, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { airSection } from "../../src/sheet/air.js";
import { exampleJob } from "../support/example.js";
import { sheetOf } from "./sheet-of.js";

const plan = runPlan(exampleJob());
const said = (air: Partial<PlanAir>) => airSection(sheetOf({ ...plan, air: { diameter: 2e-4, segments: [], ...air } }));

describe("what would clear the melt in time", () => {
  const inTime = { fromStep: 6, within: 600 };
  const start = "For the air to leave within 10 min after step 6, the melt has to be ";

  test.each([
    ["warmth alone", { temperature: 71.3 }, `${start}kept at 71.3 °C or warmer.`],
    ["a vacuum alone", { pressure: 20_000 }, `${start}under 200 mbar or less.`],
    [
      "either",
      { temperature: 71.3, pressure: 20_000 },
      `${start}kept at 71.3 °C or warmer, or under 200 mbar or less.`,
    ],
    ["warmth, where no vacuum is needed", { temperature: 71.3, pressure: 2e5 }, `${start}kept at 71.3 °C or warmer.`],
    [
      "no more than waiting",
      { pressure: 2e5 },
      "If the melt is kept as warm as it is after step 6, its air leaves within 10 min without a vacuum.",
    ],
    ["neither", {}, "Neither warmth nor a vacuum clears the melt within 10 min after step 6."],
  ])("is said to be %s", (_what, found, sentence) => {
    expect(said({ toClear: { ...inTime, ...found } })).toEqual([sentence]);
  });
});

test("of a vacuum the sheet says how high the foam stands, when the melt is clear, and what boils first", () => {
  const vacuum = { pressure: 5000, foam: 0.31, duration: 900, boiling: { material: "fragrance", pressure: 1200 } };
  expect(said({ vacuum })).toEqual([
    "Under 50 mbar the foam stands 310 mm high.",
    "Under the vacuum the melt is clear after 15 min.",
    "fragrance boils first, below 12 mbar.",
  ]);
  const lacking = said({ vacuum: { pressure: 5000, notKnown: { code: "not-read", field: "process-air" } } });
  expect(lacking).toHaveLength(1);
  expect(lacking[0]).toMatch(/^How high the foam stands under 50 mbar is not known: .+\.$/);
});
