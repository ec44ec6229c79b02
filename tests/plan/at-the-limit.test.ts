import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { allJobsByName } from "./jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("a dose above all that were on the bench", () => {
  const heatedTo = (to: string) =>
    answerOf(
      kettle(({ bench, process }) => {
        bench.doses = [bench.doses[0]];
        process.steps[1].to = to;
      }),
      "gel-former-dissolves",
    );

  test("has not dissolved below the temperature of the largest of these, and at that temperature nobody knows", () => {
    expect(heatedTo("71.9 °C")).toMatchObject({ verdict: "not-met", limit: { min: { min: 72, max: null } } });
    const at = heatedTo("72 °C");
    expect([at.verdict, at.limit.min?.min]).toEqual(["not-known", null]);
  });
});

describe("what a product changes at the very temperature of its use", () => {
  const stored = (from: string, to: string) =>
    answerOf(
      vessel(({ stability }) => (stability.transitions = [{ name: "clouds", from, to }])),
      "stored-below-transition",
    ).limit;

  test("lies above it: it may be stored up to where the change begins", () => {
    expect(stored("20 °C", "25 °C")).toMatchObject({ max: { value: 20 } });
    expect(stored("20 °C", "25 °C").min).toBeUndefined();
  });

  test("and a change that ends cooler than that lies below it", () => {
    expect(stored("20 °C", "24.9 °C")).toMatchObject({ min: { value: 24.9 } });
    expect(stored("20 °C", "24.9 °C").max).toBeUndefined();
  });
});

test("a test without storage at a stated temperature asks nothing about it", () => {
  const cycled = vessel(
    ({ stability }) => (stability.conditions = [{ name: "window", pullDays: [84], samplesPerPull: 1 }]),
  );
  expect(answersOf(runPlan(cycled), "stored-below-transition")).toEqual([]);
});

test("an outer phase without water has no water activity to be asked about", () => {
  const dry = vessel(({ formula }) => {
    const [outer] = formula.phases;
    outer.lines = outer.lines.filter(({ material }: Draft) => material !== "water");
    outer.lines[0].amount = "18.7 %";
  });
  expect(answersOf(runPlan(coldJob()), "water-activity")).toHaveLength(1);
  expect(answersOf(runPlan(dry), "water-activity")).toEqual([]);
});

describe("what may expand, since nobody stated that it does not", () => {
  const surface = (job: JobDocument) => answersOf(runPlan(job), "gel-moves-at-surface")[0]?.limit.min;

  test("is said where the surface may stand higher for it, and only there", () => {
    expect(surface(coldJob())?.assumptions).toEqual(["expansion-up-to-the-usual"]);
    const stated = vessel(({ formula }) => {
      for (const material of Object.values<Draft>(formula.materials))
        if (material.density?.at) material.density.fallPerKelvin = "0.6 kg/m³";
    });
    expect(surface(stated)?.assumptions).toBeUndefined();
  });
});

describe("the plans of all jobs", () => {
  const plans = Object.entries(allJobsByName()).map(([name, job]) => ({ name, plan: runPlan(job) }));

  test("say of no figure that nothing was taken for granted: they leave it out", () => {
    for (const { name, plan } of plans)
      expect([name, /"assumptions":\[\]/.test(JSON.stringify(plan.answers))]).toEqual([name, false]);
  });

  test("say of each step that has to be done in time whether it heats or cools", () => {
    const said = plans.flatMap(({ plan }) =>
      answersOf(plan, "done-in-time").map(({ of, beside }) => [plan.timeline[(of.step ?? 0) - 1]?.step.do, beside]),
    );
    expect(new Set(said.map(([kind]) => kind))).toEqual(new Set(["heat", "cool"]));
    for (const [kind, beside] of said) expect(beside).toEqual({ direction: kind === "heat" ? "heating" : "cooling" });
  });

  test("give the depth that air has to leave one value in a vessel of known shape, and two ends in another", () => {
    const depths = plans.flatMap(({ plan }) => answersOf(plan, "air-leaves").flatMap(({ limit }) => limit.min ?? []));
    const known = depths.filter(({ min, max }) => min !== null && max !== null);
    expect(known.filter(({ min, max }) => min === max).length).toBeGreaterThan(0);
    expect(known.filter(({ min, max }) => min !== max).length).toBeGreaterThan(0);
    for (const { min, max, value } of known) expect(value).toBe(min === max ? min : undefined);
  });
});
