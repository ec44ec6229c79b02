import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { plansByName } from "./jobs/plans.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("a gel former at a larger dose than any on the bench", () => {
  const heatedTo = (to: string) =>
    answerOf(
      kettle(({ bench, process }) => {
        bench.doses = [bench.doses[0]];
        process.steps[1].to = to;
      }),
      "gel-former-dissolves",
    );

  test("has not dissolved below the temperature at which the largest of those did; at that temperature it is not known", () => {
    expect(heatedTo("71.9 °C")).toMatchObject({ verdict: "not-met", limit: { min: { min: 72, max: null } } });
    const at = heatedTo("72 °C");
    expect([at.verdict, at.limit.min?.min]).toEqual(["not-known", null]);
  });
});

describe("a transition of a product that is stored at 25 °C in use", () => {
  const stored = (from: string, to: string) =>
    answerOf(
      vessel(({ stability }) => (stability.transitions = [{ name: "clouds", from, to }])),
      "stored-below-transition",
    ).limit;

  test("that ends at 25 °C is a limit from above, where it begins", () => {
    expect(stored("20 °C", "25 °C")).toMatchObject({ max: { value: 20 } });
    expect(stored("20 °C", "25 °C").min).toBeUndefined();
  });

  test("that ends just below 25 °C is a limit from below, where it ends", () => {
    expect(stored("20 °C", "24.9 °C")).toMatchObject({ min: { value: 24.9 } });
    expect(stored("20 °C", "24.9 °C").max).toBeUndefined();
  });
});

test("a stability test without a stated temperature is not asked about transitions", () => {
  const cycled = vessel(
    ({ stability }) => (stability.conditions = [{ name: "window", pullDays: [84], samplesPerPull: 1 }]),
  );
  expect(answersOf(runPlan(cycled), "stored-below-transition")).toEqual([]);
});

test("an outer phase without water is not asked about its water activity", () => {
  const dry = vessel(({ formula }) => {
    const [outer] = formula.phases;
    outer.lines = outer.lines.filter(({ material }: Draft) => material !== "water");
    outer.lines[0].amount = "18.7 %";
  });
  expect(answersOf(runPlan(coldJob()), "water-activity")).toHaveLength(1);
  expect(answersOf(runPlan(dry), "water-activity")).toEqual([]);
});

describe("a material whose density is stated without its fall per kelvin", () => {
  const surface = (job: JobDocument) => answersOf(runPlan(job), "gel-moves-at-surface")[0]?.limit.min;

  test("counts as expanding up to the usual, and the limit at the surface of the gel says so", () => {
    expect(surface(coldJob())?.assumptions).toEqual(["expansion-up-to-the-usual"]);
    const stated = vessel(({ formula }) => {
      for (const material of Object.values<Draft>(formula.materials))
        if (material.density?.at) material.density.fallPerKelvin = "0.6 kg/m³";
    });
    expect(surface(stated)?.assumptions).toBeUndefined();
  });
});

describe("the plans of all jobs", () => {
  const plans = plansByName().map(([name, { plan }]) => ({ name, plan }));

  test("leave out the assumptions of a figure that has none, rather than list nothing", () => {
    for (const { name, plan } of plans)
      expect([name, /"assumptions":\[\]/.test(JSON.stringify(plan.answers))]).toEqual([name, false]);
  });

  test("say of each step with a time limit whether it heats or cools", () => {
    const said = plans.flatMap(({ plan }) =>
      answersOf(plan, "done-in-time").map(({ of, beside }) => [plan.timeline[(of.step ?? 0) - 1]?.step.do, beside]),
    );
    expect(new Set(said.map(([kind]) => kind))).toEqual(new Set(["heat", "cool"]));
    for (const [kind, beside] of said) expect(beside).toEqual({ direction: kind === "heat" ? "heating" : "cooling" });
  });

  test("give one depth of charge above which air leaves if the shape of the vessel is known, else its two ends", () => {
    const depths = plans.flatMap(({ plan }) => answersOf(plan, "air-leaves").flatMap(({ limit }) => limit.min ?? []));
    const known = depths.filter(({ min, max }) => min !== null && max !== null);
    expect(known.filter(({ min, max }) => min === max).length).toBeGreaterThan(0);
    expect(known.filter(({ min, max }) => min !== max).length).toBeGreaterThan(0);
    for (const { min, max, value } of known) expect(value).toBe(min === max ? min : undefined);
  });
});
