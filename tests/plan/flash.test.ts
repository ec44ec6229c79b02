import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

const hot = exampleJob();
const cold = coldJob();

describe("a flash point is asked of everything but water and particles", () => {
  test.each<[string, JobDocument, readonly string[]]>([
    ["hot", hot, ["charge", "heated-wall"]],
    ["cold", cold, ["charge"]],
  ])("on the %s route, at every place where the material is", (_route, document, places) => {
    const { materials } = document.formula;
    const asked = answersOf(runPlan(document), "flash-point");
    const can = Object.entries(materials)
      .filter(([, one]) => !one.particle && one.function !== "water" && one.propertiesOf !== "water")
      .map(([key]) => key);
    expect(new Set(asked.map(({ of }) => of.material))).toEqual(new Set(can));
    expect(new Set(asked.map(({ of }) => of.place))).toEqual(new Set(places));
  });

  test("and one that is not stated leaves it not known, whatever the material does", () => {
    for (const document of [hot, cold])
      for (const key of new Set(answersOf(runPlan(document), "flash-point").map(({ of }) => known(of.material)))) {
        const without = changed(document, (draft) => delete draft.formula.materials[key].limits?.flashPoint);
        const asked = answersOf(runPlan(without), "flash-point", { material: key });
        expect(asked.length).toBeGreaterThan(0);
        for (const { verdict, notKnown } of asked) {
          expect(verdict).toBe("not-known");
          expect(notKnown).toContainEqual({ code: "not-stated", field: "material-flash-point", of: key });
        }
      }
  });
});

test("if no flash point is stated, the figure is the warmest that the material gets", () => {
  // What is to be looked up is one that is 30 K above that, and not above the room at which it was charged.
  const without = changed(hot, (draft) => delete draft.formula.materials.triglyceride.limits);
  const { figure, at } = answerOf(without, "flash-point", { material: "triglyceride", place: "charge" });
  expect(figure.value).toBe(85);
  expect(at.step).toBe(2);
});

describe("how far a place is beyond what is allowed", () => {
  const withFlash = (flash: number, change: (draft: Draft) => void = () => {}) =>
    changed(hot, (draft) => {
      draft.formula.materials.triglyceride.limits = { flashPoint: `${flash} °C` };
      change(draft);
    });
  const wallOf = (document: JobDocument) =>
    answerOf(document, "flash-point", { material: "triglyceride", place: "heated-wall" });
  const chargeOf = (flash: number) =>
    answerOf(withFlash(flash), "flash-point", { material: "triglyceride", place: "charge" });

  test("is part of the answer just above the limit, and not there just below it", () => {
    // 85 °C and the 30 K that are to be kept.
    const warmest = figureOf(chargeOf(200));
    expect(chargeOf(warmest + 30.001)).toMatchObject({ verdict: "met" });
    expect(chargeOf(warmest + 30.001).beside).not.toHaveProperty("beyond");
    const above = chargeOf(warmest + 29.999);
    expect(above).toMatchObject({ verdict: "not-met", side: "above" });
    expect(above.beside?.["beyond"]).toBeCloseTo(0.001, 6);
  });

  test("is bounded by the heater's highest where nobody knows the wall", () => {
    const bounded = (flash: number) =>
      wallOf(
        withFlash(flash, (draft) => {
          draft.vessel.heater.temperatureMax = "140 °C";
          // No kind of stirrer with a correlation for the wall.
          draft.vessel.stirrer.kind = "other";
          draft.vessel.heater.power = "1.2 kW";
          draft.vessel.heatedWall = { area: "0.4 m²" };
        }),
      );
    expect(bounded(170.001)).toMatchObject({ verdict: "met", figure: { max: 140 } });
    const beyond = bounded(169.999);
    expect(beyond).toMatchObject({ verdict: "not-known", figure: { max: 140 }, beside: { code: "no-correlation" } });
    expect(beyond.beside?.["beyond"]).toBeCloseTo(0.001, 6);
  });
});

describe("a maximum temperature is a wish: it is asked of what states one, and of nothing else", () => {
  const limited = (
    document: JobDocument,
    key: string,
    temperatureMax?: number,
    change: (draft: Draft) => void = () => {},
  ) =>
    answersOf(
      runPlan(
        changed(document, (draft) => {
          const { limits = {} } = draft.formula.materials[key];
          delete limits.temperatureMax;
          if (temperatureMax !== undefined) limits.temperatureMax = `${temperatureMax} °C`;
          draft.formula.materials[key].limits = limits;
          change(draft);
        }),
      ),
      "maximum-temperature",
      { material: key },
    );

  test.each<[string, JobDocument, string]>([
    ["hot", hot, "almond"],
    ["cold", cold, "sunflower"],
  ])("on the %s route, just above and just below the warmest that it gets", (_route, document, key) => {
    expect(limited(document, key)).toEqual([]);
    const [found] = limited(document, key, 200);
    const warmest = known(found?.figure.max);
    expect(limited(document, key, warmest + 1e-6)).toMatchObject([{ verdict: "met" }]);
    const [above] = limited(document, key, warmest - 1e-6);
    expect(above).toMatchObject({ verdict: "not-met", side: "above" });
    expect(above?.beside?.["beyond"]).toBeCloseTo(1e-6, 8);
  });
});

describe("what boils under a vacuum", () => {
  /** The cold job, de-aerated at a pressure. */
  const drawn = (pressure: number) =>
    changed(cold, (draft) => {
      const step = draft.process.steps.find((one: Draft) => one.do === "de-aerate");
      step.pressure = `${pressure} Pa`;
      draft.bench.emulsion.waterActivity = 0.6;
    });
  const waterOf = (pressure: number) => answerOf(drawn(pressure), "vacuum-boils", { material: "water", step: 7 });

  test("is asked of the water in a gel of the cold route too, by its activity", () => {
    const boils = known(waterOf(5000).limit.min?.value ?? waterOf(5000).limit.min?.max);
    // Water at 21 °C has 2.49 kPa; the gel is a little warmer by stirring, and its activity is 0.6.
    expect(boils / 0.6).toBeGreaterThan(2480);
    expect(boils / 0.6).toBeLessThan(2750);
    expect(waterOf(boils * 1.001).verdict).toBe("met");
    const below = waterOf(boils * 0.999);
    expect(below).toMatchObject({ verdict: "not-met", side: "below" });
    expect(below.beside?.["beyond"]).toBeCloseTo(0.001 * boils, 3);
  });

  test("and of what is volatile in a melt, after the phase that it is drawn upon", () => {
    const over = (pressure: number) =>
      answerOf(
        changed(hot, ({ process }) => {
          process.air.vacuum = { afterPhase: "C", pressure: `${pressure} Pa`, air: "3 % v/v", rim: "450 mm" };
        }),
        "vacuum-boils",
        { material: "fragrance" },
      );
    const boils = known(over(5000).limit.min?.value);
    expect(over(boils * 1.001)).toMatchObject({ verdict: "met" });
    expect(over(boils * 1.001).beside).not.toHaveProperty("beyond");
    const below = over(boils * 0.999);
    expect(below).toMatchObject({ verdict: "not-met", side: "below" });
    expect(below.beside?.["beyond"]).toBeCloseTo(0.001 * boils, 6);
  });

  test("and of nothing where the step draws none", () => {
    const open = changed(
      cold,
      (draft) => delete draft.process.steps.find((one: Draft) => one.do === "de-aerate").pressure,
    );
    expect(answersOf(runPlan(open), "vacuum-boils")).toEqual([]);
  });
});
