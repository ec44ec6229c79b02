import { type JobDocument, planSeries, prepareJob, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { known } from "../support/answers.js";
import { changed, type Draft } from "../support/example.js";
import { plansByName } from "./jobs/plans.js";

describe.each(plansByName())("the series of %s", (_name, { job, plan }) => {
  const series = planSeries({ prepared: prepareJob(job) });
  const { times, temperatures, viscosities, masses, steps } = series;

  test("has columns of one length, of numbers or of what is not known", () => {
    expect(times.length).toBeGreaterThan(0);
    for (const column of [temperatures, viscosities, masses, steps]) expect(column).toHaveLength(times.length);
    for (const number of [...times, ...masses, ...steps]) expect(Number.isFinite(number)).toBe(true);
    for (const number of [...temperatures, ...viscosities])
      expect(number === null || Number.isFinite(number)).toBe(true);
    expect(JSON.parse(JSON.stringify(series))).toEqual(series);
  });

  test("goes forward in time and in steps", () => {
    for (const [i, time] of times.entries()) {
      expect(time).toBeGreaterThanOrEqual((times[i - 1] ?? 0) - 1e-6);
      expect(steps[i]).toBeGreaterThanOrEqual(steps[i - 1] ?? 1);
    }
  });

  test("ends every step where the timeline ends it", () => {
    for (const { number, timeEnd, temperatureEnd, inPacks } of plan.timeline) {
      const last = steps.lastIndexOf(number);
      if (last < 0 || inPacks || timeEnd === undefined) continue;
      expect(Math.abs((times[last] ?? Number.NaN) - timeEnd)).toBeLessThanOrEqual(1e-6 * Math.max(1, timeEnd));
      if (temperatureEnd !== undefined && temperatures[last] !== null)
        expect(temperatures[last]).toBeCloseTo(temperatureEnd, 6);
    }
  });
});

test("passes on its way through a step where a shorter step would end", () => {
  const thin = known(plansByName().find(([name]) => name === "thin-gel-for-a-spray"))[1].job;
  const coolTo = (to: string): JobDocument =>
    changed(thin, ({ process }: Draft) => {
      process.steps.find((step: Draft) => step.do === "cool").to = to;
    });
  const { times, temperatures, steps } = planSeries({ prepared: prepareJob(thin) });
  const cooling = known(runPlan(thin).timeline.find(({ step }) => step.do === "cool"));
  const inside = times.flatMap((time, i) => (steps[i] === cooling.number ? [[time, temperatures[i]] as const] : []));
  expect(inside.length).toBeGreaterThan(10);
  for (const [time, temperature] of [known(inside[5]), known(inside[10])]) {
    const shorter = known(runPlan(coolTo(`${temperature} °C`)).timeline[cooling.number - 1]);
    expect(temperature).toBeLessThan(85);
    expect(temperature).toBeGreaterThan(62);
    expect(shorter.timeEnd).toBeCloseTo(time, 6);
  }
});
