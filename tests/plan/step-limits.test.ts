import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, type Draft, exampleJob } from "../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("up to which temperature a step may charge", () => {
  /** The limits of the steps that charge phases B and C, of materials that stand so much. */
  const limits = (almond: string, fragrance: string) => {
    const { stepLimits } = runPlan(
      kettle(({ formula: { materials } }) => {
        for (const key of Object.keys(materials)) delete materials[key].limits?.temperatureMax;
        materials.almond.limits = { ...materials.almond.limits, temperatureMax: almond };
        materials.fragrance.limits = { ...materials.fragrance.limits, temperatureMax: fragrance };
      }),
    );
    return [6, 8].map((number) => stepLimits.find(({ step }) => step === number)?.temperatureMax ?? Number.NaN);
  };

  test("is what the materials of that step stand, whatever goes in later", () => {
    const [b, c] = limits("150 °C", "62 °C");
    expect(c).toBeLessThanOrEqual(62);
    const [coolerB, sameC] = limits("140 °C", "62 °C");
    expect((b as number) - (coolerB as number)).toBeCloseTo(10, 9);
    expect(sameC).toBe(c);
  });
});
