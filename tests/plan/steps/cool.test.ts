import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import type { Moment } from "../../../src/plan/state.js";
import { otherwise, type Reason } from "../../../src/plan/unknown.js";
import { stepOf } from "../../support/asked.js";
import { changed, type Draft, exampleJob } from "../../support/example.js";

/** A figure, or why it is not known. */
const or = <T>(find: () => T): T | Reason => otherwise<T, Reason>(find, (reason) => reason);

/** The kettle with its fifth step, off the heat at 85 °C, replaced. */
const fifth = (step: Draft, change: (draft: Draft) => void = () => {}): JobDocument =>
  changed(exampleJob(), (draft) => {
    draft.process.steps[4] = step;
    change(draft);
  });

const jacket = (fields: Draft = {}) => ({ coolant: "15 °C", conductance: "30 W/K", ...fields });

describe("a melt that cools", () => {
  const cooled = (to: string, change?: (draft: Draft) => void): Moment => stepOf(fifth({ do: "cool", to }, change), 5);

  test("to what it has, or to more, stays as it is in no time, and rests on nothing", () => {
    for (const to of ["85 °C", "86 °C"]) {
      const step = cooled(to);
      expect([step.duration(), step.after.temperature(), step.segments()]).toEqual([0, 85, []]);
      expect([step.basis?.(), step.assumptions?.(), step.reaches?.reached()]).toEqual([[], [], 85]);
    }
  });

  test("to a little less takes a little time", () => {
    const step = cooled("84.9 °C");
    expect(step.duration()).toBeGreaterThan(1);
    expect(step.duration()).toBeLessThan(120);
    expect([step.after.temperature(), step.reaches?.reached(), step.reaches?.asked()]).toEqual([84.9, 84.9, 84.9]);
    expect(step.reaches?.direction).toBe("cooling");
    expect(step.segments()).toHaveLength(1);
    expect(step.basis?.().map(({ key }) => key)).toEqual(["vessel-heat-loss"]);
    // How thick phase A is on the way down was not read.
    expect(step.assumptions?.()).toEqual(["heat-of-stirring-left-out"]);
    const [segment] = step.segments();
    expect(segment).toMatchObject({ kind: "vessel", breakpoints: expect.not.arrayContaining([expect.any(String)]) });
  });

  test("to less than the room gets as cool as the room at best, and how cool it is then is not known", () => {
    const step = cooled("15 °C");
    expect(or(() => step.reaches?.reached())).toBe(21);
    expect(or(step.after.temperature)).toHaveProperty("code");
  });

  test("by a loss that is not known takes a time that is not known, and gets there", () => {
    const step = cooled("80 °C", ({ vessel }) => delete vessel.coolingCurve);
    expect(or(step.duration)).toMatchObject({ field: "vessel-heat-loss" });
    expect(step.after.temperature()).toBe(80);
  });

  test("by itself has no ends of its time, and needs no jacket", () => {
    expect(cooled("80 °C").durationEnds).toBeUndefined();
  });
});

describe("a melt that is cooled through its jacket", () => {
  const cooled = (to: string, fields?: Draft, change: (draft: Draft) => void = () => {}): Moment =>
    stepOf(
      fifth({ do: "cool", to, with: "jacket" }, (draft) => {
        draft.vessel.jacket = jacket(fields);
        change(draft);
      }),
      5,
    );

  test("cools faster than by itself, and rests on the jacket too", () => {
    const alone = stepOf(fifth({ do: "cool", to: "80 °C" }), 5);
    const step = cooled("80 °C");
    expect(step.duration()).toBeLessThan(alone.duration() / 2);
    expect(step.basis?.().map(({ key }) => key)).toContain("jacket");
    expect(step.durationEnds?.().min).toBeLessThanOrEqual(step.duration());
    expect(cooled("85 °C").durationEnds?.()).toEqual({ min: 0, max: 0 });
  });

  test("takes its coolant as it enters, unless its flow is stated", () => {
    expect(cooled("80 °C").assumptions?.()).toContain("coolant-as-at-its-inlet");
    const flowing = cooled("80 °C", { capacityFlow: "350 W/K" });
    expect(flowing.assumptions?.()).not.toContain("coolant-as-at-its-inlet");
    expect(flowing.duration()).toBeGreaterThan(cooled("80 °C").duration());
  });

  test("leaves out a loss to the room that is not known, which helps it", () => {
    const step = cooled("80 °C", {}, ({ vessel }) => delete vessel.coolingCurve);
    expect(step.assumptions?.()).toContain("heat-loss-left-out");
    expect(step.basis?.().map(({ key }) => key)).toEqual(["jacket", "vessel-jacket-conductance"]);
    expect(step.duration()).toBeGreaterThan(cooled("80 °C").duration());
    expect(cooled("80 °C").assumptions?.()).not.toContain("heat-loss-left-out");
  });

  test("to less than its coolant gets as cool as the cooler of coolant and room at best", () => {
    expect(or(() => cooled("10 °C").reaches?.reached())).toBe(15);
    expect(or(() => cooled("10 °C", { coolant: "25 °C" }).reaches?.reached())).toBe(21);
  });
});

describe("a melt that cools to a viscosity", () => {
  test("cools to the temperature at which its readings have it", () => {
    // Of phases A and B: 2.6 Pa·s at 59 °C and 0.7 Pa·s at 61 °C.
    const step = stepOf(exampleJob(), 7);
    const to = step.after.temperature();
    expect(to).toBeGreaterThan(57);
    expect(to).toBeLessThan(59);
    expect(step.reaches?.asked()).toBe(to);
    const read = changed(exampleJob(), ({ process }) => (process.steps[6].toViscosity = "2.6 Pa·s"));
    expect(stepOf(read, 7).after.temperature()).toBeCloseTo(59, 6);
    // What stirring gives has a knee at each reading on the way.
    const [segment] = stepOf(read, 7).segments();
    expect(segment).toMatchObject({ breakpoints: expect.arrayContaining([70, 64, 61]) });
  });

  test("is not known without readings, for want of them", () => {
    const unread = changed(exampleJob(), ({ bench }) => delete bench.viscosities);
    expect(or(stepOf(unread, 7).after.temperature)).toMatchObject({ field: "bench-viscosities" });
  });
});
