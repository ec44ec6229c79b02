import { prepareJob, remedies, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";

const standing = (temperatureMax: unknown) =>
  changed(exampleJob(), ({ pack }: Draft) => Object.assign(pack, { temperatureMax }));

test("the hottest product that a pack stands is a temperature", () => {
  expect(() => runPlan(standing("60 °C"))).not.toThrow();
  for (const [written, expected] of [
    ["60", /unit/],
    ["60 K/min", /pack\.temperatureMax/],
    [60, /pack\.temperatureMax/],
  ] as const)
    expect(() => runPlan(standing(written))).toThrow(expected);
});

describe("a pack that stands so much heat", () => {
  // The melt of the example has 58.10 °C as filling begins, 56.09 °C as it ends.
  it.each([
    ["58.2 °C", "met"],
    ["58.0 °C", "not-met"],
  ])("is asked of the first pack, the hottest: one that stands %s: %s", (temperatureMax, verdict) => {
    const found = answerOf(standing(temperatureMax), "pack-stands-the-heat");
    expect([found.verdict, found.at.place]).toEqual([verdict, "first-pack"]);
  });

  it("is asked of the last pack where a jacket warms the vessel meanwhile", () => {
    const warmed = changed(standing("60 °C"), ({ process, vessel }: Draft) => {
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
      Object.assign(
        process.steps.find(({ do: kind }: Draft) => kind === "fill"),
        { jacketAt: "80 °C" },
      );
    });
    const found = answerOf(warmed, "pack-stands-the-heat");
    expect([found.verdict, found.at.place]).toEqual(["not-met", "last-pack"]);
  });

  it("is not met for a melt of which nobody knows how warm it is", () => {
    const job = changed(standing("60 °C"), ({ vessel }: Draft) => delete vessel.coolingCurve);
    expect(answerOf(job, "pack-stands-the-heat").verdict).toBe("not-known");
  });

  it("is not asked of one that states nothing, and has a cooler melt for its remedy", () => {
    expect(answersOf(runPlan(exampleJob()), "pack-stands-the-heat")).toEqual([]);
    const hot = changed(standing("62 °C"), ({ process }: Draft) => {
      process.steps[6] = { do: "cool", to: "65 °C" };
    });
    const prepared = prepareJob(hot);
    const [remedy] = remedies({ prepared, answer: { id: "pack-stands-the-heat", of: {} } });
    expect(remedy?.lever).toBe("cooler-melt");
    const after = runPrepared({ prepared, changes: [known(remedy).change] });
    expect(answersOf(after, "pack-stands-the-heat")[0]?.verdict).toBe("met");
  });
});
