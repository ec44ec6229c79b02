import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("a material that heat harms", () => {
  const id = "heat-sensitive-off-the-heat";

  test("is to be off the heat in every step in which it is in the vessel or a pack", () => {
    const found = asked(exampleJob(), id);
    expect(found.map(({ of, verdict, states }) => [of.material, verdict, states.met])).toEqual([
      ["almond", "met", 6],
      ["fragrance", "met", 4],
    ]);
  });

  test("is not met in the steps on the heat if it goes in before, and counts none before it goes in", () => {
    const early = kettle(({ formula }) => {
      const [{ lines }, later] = formula.phases;
      lines.push(...later.lines.splice(0, 1, { material: "triglyceride", amount: "1 %" }));
    });
    // Heated in step 2 and held in step 3.
    expect(answered(early, id, { material: "almond" })).toMatchObject({
      verdict: "not-met",
      at: { step: 2 },
      states: { notMet: 2, met: 9, notKnown: 0 },
    });
  });

  test("is not asked of an antioxidant, which has to go in before the heat, nor where nothing is heated", () => {
    const sensitive = kettle(({ formula }) => (formula.materials.tocopherols.heatSensitive = true));
    expect(asked(sensitive, id).map(({ of }) => of.material)).toEqual(["almond", "fragrance"]);
    const cold = changed(coldJob(), ({ formula }) => (formula.materials.sunflower.heatSensitive = true));
    expect(asked(cold, id)).toEqual([]);
  });
});

describe("a highest temperature of a material", () => {
  const id = "maximum-temperature";

  test("is asked about where one is stated", () => {
    expect(asked(exampleJob(), id).map(({ of }) => of.material)).toEqual(["gelFormer", "fragrance"]);
  });

  test("is met by heating less in the step that decides, or in the last one before it that heats", () => {
    // The gel former is hottest in step 2; the fragrance goes in as step 8.
    const lever = ["less-heat", 85, 21, { step: 2, field: "to" }];
    expect(leversOf(exampleJob(), id, { material: "gelFormer" })).toEqual([lever]);
    expect(leversOf(exampleJob(), id, { material: "fragrance" })).toEqual([lever]);
    const again = kettle(({ process }) => process.steps.splice(2, 0, { do: "heat", to: "88 °C" }));
    expect(leversOf(again, id, { material: "gelFormer" })).toEqual([["less-heat", 88, 21, { step: 3, field: "to" }]]);
    const late = kettle(({ process }) =>
      process.steps.splice(8, 0, { do: "heat", to: "62 °C" }, { do: "take off the heat" }),
    );
    expect(leversOf(late, id, { material: "fragrance" })).toEqual([["less-heat", 62, 21, { step: 9, field: "to" }]]);
  });

  test("that is passed is said by how much, and by nothing where it is kept", () => {
    const at = (temperatureMax: string) =>
      answered(
        kettle(({ formula }) => (formula.materials.gelFormer.limits.temperatureMax = temperatureMax)),
        id,
        { material: "gelFormer" },
      ).beside?.["beyond"];
    expect(at("60 °C")).toBeGreaterThan(25);
    expect(at("200 °C")).toBeUndefined();
  });
});

describe("a flash point", () => {
  const id = "flash-point";
  const places = (job: JobDocument, material: string) =>
    asked(job, id)
      .filter(({ of }) => of.material === material)
      .map(({ of }) => of.place);

  test("is asked about in the charge, and at the heated wall of what is in the vessel on the heat", () => {
    expect(places(exampleJob(), "triglyceride")).toEqual(["charge", "heated-wall"]);
    expect(places(exampleJob(), "almond")).toEqual(["charge"]);
    expect(places(coldJob(), "sunflower")).toEqual(["charge"]);
  });

  test("is not asked about of water or of particles", () => {
    expect(places(coldJob(), "water")).toEqual([]);
    expect(places(coldJob(), "grains")).toEqual([]);
    expect(places(exampleJob(), "pearl")).toEqual([]);
  });

  test("less its margin is passed by so much", () => {
    const at = (flashPoint: string) =>
      answered(
        kettle(({ formula }) => (formula.materials.almond.limits.flashPoint = flashPoint)),
        id,
        { material: "almond", place: "charge" },
      );
    const { figure } = at("215 °C");
    const warmest = figure.max ?? Number.NaN;
    // 30 K below its flash point are kept.
    expect(Number(at(`${warmest + 20} °C`).beside?.["beyond"])).toBeCloseTo(10, 6);
    expect(at(`${warmest + 31} °C`).beside).not.toHaveProperty("beyond");
    const unstated = kettle(({ formula }) => delete formula.materials.almond.limits.flashPoint);
    expect(answered(unstated, id, { material: "almond", place: "charge" }).beside).not.toHaveProperty("beyond");
  });
});

describe("a step with a time limit", () => {
  const id = "done-in-time";
  const timed = kettle(({ process, vessel }) => {
    vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
    process.steps[6] = { do: "cool", to: "64 °C", within: "2 h" };
    process.steps[4] = { do: "cool", to: "75 °C", with: "jacket", within: "20 min" };
    process.steps[1].within = "1 h";
  });

  test("is asked about in the order of the steps, by the time that is stated", () => {
    expect(asked(timed, id).map(({ of, limit, beside }) => [of.step, limit.max?.value, beside?.["direction"]])).toEqual(
      [
        [2, 3600, "heating"],
        [5, 1200, "cooling"],
        [7, 7200, "cooling"],
      ],
    );
    expect(asked(exampleJob(), id)).toEqual([]);
  });

  test("can have a stronger heater or a colder coolant, and nothing where the vessel cools by itself", () => {
    expect(leversOf(timed, id, { step: 2 })).toEqual([["stronger-heater", 1200, 24_000, {}]]);
    expect(leversOf(timed, id, { step: 5 })).toEqual([["colder-coolant", 15, -20, {}]]);
    expect(leversOf(timed, id, { step: 7 })).toEqual([]);
    const brine = changed(timed, ({ vessel }) => (vessel.jacket.coolant = "-30 °C"));
    expect(leversOf(brine, id, { step: 5 })).toEqual([["colder-coolant", -30, -30, {}]]);
  });
});
