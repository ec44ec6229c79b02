import fc from "fast-check";
import { type Plan, type PlanSchedule, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { roundTicks, svgOf, timeTicks } from "../../src/sheet/chart.js";
import { courseFigures } from "../../src/sheet/figures.js";
import { between } from "../support/between.js";
import { coldJob, exampleJob } from "../support/example.js";
import { sheetOf } from "./sheet-of.js";

test("round numbers lie on the axis, an equal step apart, and some ten of them at most", () => {
  fc.assert(
    fc.property(between(-1e3, 1e3), between(1e-3, 1e6), (min, width) => {
      for (const ticks of [roundTicks(min, min + width), timeTicks(min, min + width)]) {
        const steps = ticks.slice(1).map((tick, i) => tick - (ticks[i] as number));
        expect(ticks.length).toBeLessThanOrEqual(10);
        for (const tick of ticks) {
          expect(tick).toBeGreaterThanOrEqual(min - 1e-9 * width);
          expect(tick).toBeLessThanOrEqual(min + width * (1 + 1e-9));
        }
        for (const step of steps) expect(step).toBeCloseTo(steps[0] as number, 6);
      }
    }),
  );
  expect(roundTicks(0, 7)).toEqual([0, 2, 4, 6]);
  expect(timeTicks(0, 3600)).toEqual([0, 600, 1200, 1800, 2400, 3000, 3600]);
  // Beyond eight days a mark a day would be too many.
  expect(timeTicks(0, 16 * 86_400)).toHaveLength(9);
});

test("an axis without a width has one mark, in the middle of the drawing", () => {
  expect(roundTicks(5, 5)).toEqual([5]);
  expect(timeTicks(60, 60)).toEqual([60]);
  const axis = { label: "time", min: 5, max: 5, ticks: [5], write: String };
  const svg = svgOf({ title: "one moment", x: axis, y: axis, lines: [{ points: [[5, 5]] }] });
  expect(svg).not.toContain("NaN");
  expect(svg).toContain('points="384,116"');
});

describe("the course of an emulsion", () => {
  const cold = runPlan(coldJob());
  const [schedule] = cold.emulsion?.schedules ?? [];
  const whole = schedule as PlanSchedule;
  const drawn = (change: Partial<PlanSchedule>, plan: Plan = cold) =>
    courseFigures(
      sheetOf({ ...plan, emulsion: { ...plan.emulsion, schedules: [{ ...whole, ...change }] } } as Plan),
    ).map((block) => (block.kind === "figure" ? block : undefined));

  test("is drawn as oil and torque, and as no more than oil where no torque is known", () => {
    expect(drawn({})).toHaveLength(2);
    expect(drawn({ rows: whole.rows.map(({ torque: _, ...row }) => row) })).toHaveLength(1);
    expect(drawn({ rows: whole.rows.slice(0, 1) })).toEqual([]);
  });

  test("has no band around a torque that is known by its value alone", () => {
    const bare = drawn({ rows: whole.rows.map(({ torqueMin: _min, torqueMax: _max, ...row }) => row) });
    expect(drawn({})[1]?.svg).toContain("<polygon");
    expect(bare[1]?.svg).not.toContain("<polygon");
  });

  test("counts additions where their times are not known", () => {
    const { timeStart: _, ...step } = cold.timeline[whole.step - 1] as Plan["timeline"][number];
    const timeline = cold.timeline.map((one) => (one.number === whole.step ? step : one));
    const [oil] = drawn({}, { ...cold, timeline: timeline as Plan["timeline"] });
    expect(oil?.svg).toContain(`points="62,`);
    expect(oil?.svg).not.toContain("min<");
  });

  test("of nothing going in has an axis all the same", () => {
    const [oil] = drawn({ rows: whole.rows.map((row) => ({ ...row, mass: 0, massOil: 2 })) });
    expect(oil?.svg).not.toMatch(/NaN|Infinity/);
  });
});

describe("the course of temperature", () => {
  const hot = runPlan(exampleJob());
  const figures = (plan: Plan, temperatures: readonly (number | null)[]) =>
    courseFigures({
      ...sheetOf(plan),
      series: { times: temperatures.map((_, i) => 600 * i), temperatures } as never,
    }).map((block) => (block.kind === "figure" ? block : undefined));

  test("leaves out moments at which it is not known, and is not drawn from a single one", () => {
    const [all] = figures(hot, [20, 60, null, 85, 60]);
    expect(/polyline points="([^"]*)"/.exec(all?.svg ?? "")?.[1]?.split(" ")).toHaveLength(4);
    expect(figures(hot, [20, null, null])).toEqual([]);
  });

  test("shows a window whose times are not known over the whole of it", () => {
    const untimed = hot.particles.map(({ window, ...particle }) => {
      const { timeMin: _min, timeMax: _max, ...open } = window as { timeMin?: number; timeMax?: number };
      return { ...particle, window: open };
    });
    const corners = (plan: Plan): readonly number[] => {
      const [drawing] = figures(plan, [20, 60, 85, 70, 60, 55]);
      const points = /<polygon points="([^"]*)"/.exec(drawing?.svg ?? "")?.[1] ?? "";
      return points.split(" ").map((point) => Number(point.split(",")[0]));
    };
    const wide = corners({ ...hot, particles: untimed as never });
    expect([Math.min(...wide), Math.max(...wide)]).toEqual([62, 706]);
    expect(Math.min(...corners(hot))).toBeGreaterThan(62);
  });
});
