import { comparePlans, type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { scalesToMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";
import { keyOf } from "./jobs/plans.js";

const plans = [runPlan(exampleJob("beaker")), runPlan(exampleJob("kettle"))];
const [beaker, kettle] = comparePlans({ plans }).plans;
if (!beaker || !kettle) throw new Error("two plans were compared");

test("the kettle has less surface for its volume, and so more time", () => {
  expect(kettle.surfaceToVolume).toBeLessThan((beaker.surfaceToVolume ?? 0) / 3);
  expect(kettle.durationCooling).toBeGreaterThan(3 * (beaker.durationCooling ?? 0));
  expect(kettle.durationToSet).toBeGreaterThan(3 * (beaker.durationToSet ?? 0));
  expect(kettle.shareTaken).toBeLessThan(beaker.shareTaken);
});

test("the times are those of the timelines", () => {
  for (const [plan, at] of [
    [plans[0], beaker],
    [plans[1], kettle],
  ] as const) {
    const of = (number: number): number => {
      const step = plan?.timeline[number - 1];
      return (step?.timeEnd ?? Number.NaN) - (step?.timeStart ?? Number.NaN);
    };
    expect(at.durationHeating).toBeCloseTo(of(2), 9);
    expect(at.durationCooling).toBeCloseTo(of(5) + of(7), 9);
    // Stirring and filling take what lies between the time to set and the time to spare.
    expect((at.durationToSet ?? 0) - (at.durationMargin ?? 0)).toBeCloseTo(of(9) + of(10), 6);
  }
});

test("the rule of the cube root is told beside them, for all but the first", () => {
  expect(beaker.durationCoolingByRule).toBeUndefined();
  const volumes = (plans[1]?.lots.volume ?? 0) / (plans[0]?.lots.volume ?? 1);
  expect((kettle.durationCoolingByRule ?? 0) / (beaker.durationCooling ?? 1)).toBeCloseTo(Math.cbrt(volumes), 9);
});

test("filling that takes longer than there is leaves less than nothing", () => {
  const slow = runPlan(changed(exampleJob(), (draft) => Object.assign(draft.process.steps[9], { for: "2 h" })));
  expect(comparePlans({ plans: [slow] }).plans[0]?.durationMargin).toBeLessThan(0);
});

test("what one plan does not know stays open in its column alone", () => {
  const cold = runPlan(changed(exampleJob(), (draft) => delete draft.vessel.coolingCurve));
  const [, unknown] = comparePlans({ plans: [plans[0] as (typeof plans)[0], cold] }).plans;
  expect(unknown).not.toHaveProperty("durationCooling");
  expect(unknown).toHaveProperty("surfaceToVolume");
  const { durationCooling: _, ...rest } = kettle;
  expect(Object.keys(rest)).toEqual(expect.arrayContaining(Object.keys(unknown ?? {})));
});

test("two plans of an emulsion are compared by their additions and their stirrers, and by no heat", () => {
  const [bench, plant] = [runPlan(coldJob("beaker")), runPlan(coldJob())] as const;
  const [small, large] = comparePlans({ plans: [bench, plant] }).plans;
  expect(small?.volumeFractionOil).toBeCloseTo(large?.volumeFractionOil ?? 0, 3);
  expect(large?.durationAdding).toBeGreaterThan(4 * (small?.durationAdding ?? Number.POSITIVE_INFINITY));
  const last = rowsOf(plant).at(-1);
  expect(large).toMatchObject({ additions: 20, power: last?.power, torque: last?.torque });
  expect(small).toMatchObject({ additions: 20 });
  for (const at of [small, large])
    for (const key of ["durationHeating", "durationCooling", "durationToSet", "durationMargin"])
      expect(at).not.toHaveProperty(key);
});

describe("what is not the same in all plans", () => {
  const job = exampleJob();
  const strong = changed(job, (draft) => {
    draft.formula.phases[0].lines[1].amount = "10 %";
    draft.process.steps[9].for = "5 min";
    draft.bench.settlingAllowed = "2 mm";
  });
  const documents = [job, strong];
  const labels = ["as it was", "more gel former"];
  const found = comparePlans({ plans: documents.map(runPlan), labels, documents });

  test("stands under the caller's words, or the names of the vessels", () => {
    expect(found.plans.map(({ label }) => label)).toEqual(labels);
    expect(comparePlans({ plans }).plans.map(({ label }) => label)).toEqual(plans.map(({ names }) => names.vessel));
  });

  test("is the dose and the cost", () => {
    const [was, is] = found.plans.map(({ dose = Number.NaN }) => dose);
    const share = (of: JobDocument): number =>
      Object.values(runPlan(of).weighing.lines)
        .filter(({ function: purpose }) => purpose === "gel former")
        .reduce((sum, { massFraction }) => sum + massFraction, 0);
    expect(was).toBeCloseTo(share(job), 12);
    expect(is).toBeCloseTo(share(strong), 12);
    expect(is).toBeGreaterThan(was ?? 0);
    for (const [i, one] of documents.entries()) {
      const { cost } = runPlan(one);
      expect(found.plans[i]?.costPerKilogram).toBe("notKnown" in cost ? undefined : cost.perKilogram);
    }
  });

  test("is every verdict that is another, and no other", () => {
    const [one, other] = documents.map(
      (document) => new Map(runPlan(document).answers.map((answer) => [keyOf(answer), answer.verdict])),
    );
    const expected = [...(one ?? [])].flatMap(([key, verdict]) => (other?.get(key) === verdict ? [] : [key]));
    expect(found.answers.map(keyOf).sort()).toEqual(expected.sort());
    expect(expected).toContain("above-setting:C:8");
    for (const { id, of, verdicts } of found.answers)
      expect(verdicts).toEqual([one?.get(keyOf({ id, of })) ?? null, other?.get(keyOf({ id, of })) ?? null]);
  });

  test("is the window for adding", () => {
    const [pearl, ...others] = found.windows;
    expect([pearl?.material, others]).toEqual(["pearl", []]);
    for (const [i, one] of documents.entries()) {
      const { window } = runPlan(one).particles.find(({ material }) => material === "pearl") ?? {};
      expect(pearl?.windows[i]).toEqual({
        temperatureMax: window?.temperatureMax,
        temperatureMin: window?.temperatureMin,
      });
    }
    const unread = changed(job, (draft) => delete draft.bench.settlingAllowed);
    const { windows } = comparePlans({ plans: [runPlan(job), runPlan(unread)] });
    expect(windows).toMatchObject([{ material: "pearl", windows: [{ temperatureMax: expect.any(Number) }, null] }]);
  });

  test("is every field that the documents do not state alike", () => {
    expect(found.fields).toEqual([
      { path: "formula.phases[0].lines[1].amount", values: [job.formula.phases[0]?.lines[1]?.amount, "10 %"] },
      { path: "bench.settlingAllowed", values: [job.bench.settlingAllowed, "2 mm"] },
      { path: "process.steps[9].for", values: [(job.process.steps[9] as { for: string }).for, "5 min"] },
    ]);
  });

  test("is nothing for a plan beside itself", () => {
    const same = comparePlans({ plans: [plans[0], plans[0]] as Plan[], documents: [job, job] });
    expect(same).toMatchObject({ answers: [], windows: [], fields: [] });
  });

  test("takes a label and a document for each plan, or refuses them", () => {
    expect(() => comparePlans({ plans, labels: ["one"] })).toThrow(/^labels: /);
    expect(() => comparePlans({ plans, documents: [job] })).toThrow(/^documents: found 1, expected one for each/);
    expect(() => comparePlans({ plans, documents: [job, { n: Number.NaN }] })).toThrow(/^documents\[1\]\.n: /);
  });

  test("stands in the table of the sheet", () => {
    const text = scalesToMarkdown({ plans: documents.map(runPlan), labels, documents });
    expect(text.split("\n")[0]).toBe("|  | as it was | more gel former |");
    expect(text).toMatch(/\| gel former in the product \| [\d.]+ % \| [\d.]+ % \|/);
    expect(text).toMatch(
      /\| Does an addition leave the mix above its setting temperature\? \(phase C, step 8\) \| met \| not met \|/,
    );
    expect(text).toMatch(
      /\| when to add pearl pigment .* \| [\d.]+ °C down to [\d.]+ °C \| [\d.]+ °C down to [\d.]+ °C \|/,
    );
    expect(text).toContain("| stated: bench.settlingAllowed | 0.5 mm | 2 mm |");
  });
});

function rowsOf({ emulsion }: Plan) {
  const [schedule] = emulsion?.schedules ?? [];
  if (!schedule || "notKnown" in schedule) throw new Error("no schedule");
  return schedule.rows;
}
