import { comparePlans, type Plan, runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";

const plans = [runPlan(exampleJob("beaker")), runPlan(exampleJob("kettle"))];
const [beaker, kettle] = comparePlans({ plans });
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
  expect(comparePlans({ plans: [slow] })[0]?.durationMargin).toBeLessThan(0);
});

test("what one plan does not know stays open in its column alone", () => {
  const cold = runPlan(changed(exampleJob(), (draft) => delete draft.vessel.coolingCurve));
  const [, unknown] = comparePlans({ plans: [plans[0] as (typeof plans)[0], cold] });
  expect(unknown).not.toHaveProperty("durationCooling");
  expect(unknown).toHaveProperty("surfaceToVolume");
  const { durationCooling: _, ...rest } = kettle;
  expect(Object.keys(rest)).toEqual(expect.arrayContaining(Object.keys(unknown ?? {})));
});

test("two plans of an emulsion are compared by their additions and their stirrers, and by no heat", () => {
  const [bench, plant] = [runPlan(coldJob("beaker")), runPlan(coldJob())] as const;
  const [small, large] = comparePlans({ plans: [bench, plant] });
  expect(small?.volumeFractionOil).toBeCloseTo(large?.volumeFractionOil ?? 0, 3);
  expect(large?.durationAdding).toBeGreaterThan(4 * (small?.durationAdding ?? Number.POSITIVE_INFINITY));
  const last = rowsOf(plant).at(-1);
  expect(large).toMatchObject({ additions: 20, power: last?.power, torque: last?.torque });
  expect(small).toMatchObject({ additions: 20 });
  for (const at of [small, large])
    for (const key of ["durationHeating", "durationCooling", "durationToSet", "durationMargin"])
      expect(at).not.toHaveProperty(key);
});

function rowsOf({ emulsion }: Plan) {
  const [schedule] = emulsion?.schedules ?? [];
  if (!schedule || "notKnown" in schedule) throw new Error("no schedule");
  return schedule.rows;
}
