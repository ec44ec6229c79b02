import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);
const foaming = (change: (draft: Draft) => void): JobDocument =>
  changed(allJobsByName()["vacuum-foams-over"] as JobDocument, change);

describe("whether air leaves a melt", () => {
  const id = "air-leaves";

  test("is asked where the process names its bubbles, and of a melt alone", () => {
    expect(asked(exampleJob(), id)).toHaveLength(1);
    expect(
      asked(
        kettle(({ process }) => delete process.air),
        id,
      ),
    ).toEqual([]);
    expect(
      asked(
        vessel(({ process }) => (process.air = { bubbleDiameter: "0.2 mm" })),
        id,
      ),
    ).toEqual([]);
  });

  test("is not known of a melt that stands in no step", () => {
    const never = kettle(({ process }) => {
      const kept = ["charge", "heat", "take off the heat", "stir", "fill"];
      process.steps = process.steps.filter(({ do: kind }: Draft) => kept.includes(kind));
      process.steps.find(({ do: kind }: Draft) => kind === "fill").speed = "10 rpm";
    });
    const { verdict, notKnown, at, beside } = answered(never, id);
    expect([verdict, at, notKnown.map(({ code }) => code)]).toEqual(["not-known", {}, ["not-done"]]);
    expect(beside?.["fromStep"]).toBeUndefined();
    expect(beside?.["diameter"]).toBeCloseTo(2e-4, 12);
  });

  test("names what the set gel holds where its yield stress is known, and one end where only that is", () => {
    const held = (job: JobDocument) => answered(job, id).beside ?? {};
    expect(Number(held(exampleJob())["suspendedMax"])).toBeGreaterThan(Number(held(exampleJob())["suspendedMin"]));
    const unread = kettle(({ bench }) => {
      for (const key of ["yieldStress", "strengthTrials", "flowCurve"]) delete bench[key];
    });
    expect(Object.keys(held(unread))).not.toContain("suspendedMin");
    expect(Object.keys(held(unread))).not.toContain("suspendedMax");
  });
});

describe("air that is drawn from a gel in a step", () => {
  test("says how wide the stirrer moves it if it is stirred, and nothing of that if it is not", () => {
    const beside = (job: JobDocument) => answered(job, "air-is-released").beside;
    expect(beside(coldJob())).toEqual({ cavern: 0.52, vesselDiameter: 0.52 });
    const still = vessel(({ process }) => {
      delete process.steps.find(({ do: kind }: Draft) => kind === "de-aerate").speed;
    });
    expect(beside(still)).toEqual({ vesselDiameter: 0.52 });
  });

  test("has the time of its step, which can be up to a hundred times as long", () => {
    expect(answered(coldJob(), "air-has-time").limit.max?.value).toBe(7200);
    expect(leversOf(coldJob(), "air-has-time")).toEqual([
      ["longer-de-aeration", 7200, 720_000, { step: 7, field: "for" }],
    ]);
  });
});

describe("what boils under a vacuum", () => {
  const id = "vacuum-boils";

  test("is named with its step, or without one under the vacuum of the process", () => {
    expect(asked(coldJob(), id).map(({ of, at }) => [of, at])).toEqual([
      [
        { material: "water", step: 7 },
        { step: 7, place: "vessel" },
      ],
    ]);
    expect(
      asked(
        foaming(() => {}),
        id,
      ).map(({ of, at }) => [of, at]),
    ).toEqual([
      [{ material: "fragrance" }, {}],
      [{ material: "alcohol" }, {}],
    ]);
  });

  test("is water in an oil by its share of the moles, as of an ideal solution", () => {
    const wet = kettle(({ formula, process }) => {
      formula.materials.water = coldJob().formula?.materials?.["water"];
      formula.phases[0].lines.push({ material: "water", amount: "0.3 %" });
      process.steps.splice(5, 0, { do: "de-aerate", for: "5 min", pressure: "200 mbar" });
    });
    const { limit, beside } = answered(wet, id, { material: "water", step: 6 });
    expect(beside?.["temperature"]).toBe(80);
    // Of 74.9 % in the vessel; 18.015 g/mol beside 880 g/mol of a triglyceride. Water boils at 80 °C under 47.41 kPa (IAPWS-95).
    const [water, oil] = [0.3 / 18.015, 74.6 / 880];
    const boils = (47_414 * water) / (water + oil);
    expect((limit.min?.min ?? Number.NaN) / boils).toBeCloseTo(1, 2);
  });

  test("is not known of what is dissolved in an outer phase and is no water: that is no ideal solution in oil", () => {
    const { alcohol } = allJobsByName()["vacuum-foams-over"]?.formula?.materials ?? {};
    const scented = vessel(({ formula }) => (formula.materials.preservative.volatile = (alcohol as Draft).volatile));
    const { verdict, notKnown } = answered(scented, id, { material: "preservative", step: 7 });
    expect([verdict, notKnown]).toEqual([
      "not-known",
      [expect.objectContaining({ code: "no-method", law: "boiling", of: "preservative" })],
    ]);
  });

  test("is said to be beyond its boiling pressure by what it lies below that, and by nothing at that pressure or above", () => {
    const at = (pressure: number) =>
      answered(
        foaming(({ process }) => (process.air.vacuum.pressure = `${pressure} Pa`)),
        id,
        { material: "alcohol" },
      );
    const boils = at(5000).limit.min?.max ?? Number.NaN;
    expect(at(boils - 1).beside?.["beyond"]).toBeCloseTo(1, 6);
    expect(at(boils).beside).not.toHaveProperty("beyond");
    expect(at(boils + 1).beside).not.toHaveProperty("beyond");
    expect([boils - 1, boils + 1].map((pressure) => at(pressure).verdict)).toEqual(["not-met", "met"]);
  });
});

describe("a foam under a vacuum", () => {
  test("is asked about where the process draws one, after the phase that it names", () => {
    const found = asked(
      foaming(() => {}),
      "vacuum-foam",
    );
    expect(found.map(({ of }) => of)).toEqual([{ phase: expect.any(String) }]);
    expect(found[0]?.at.place).toBe("vessel");
    expect(asked(exampleJob(), "vacuum-foam")).toEqual([]);
  });
});
