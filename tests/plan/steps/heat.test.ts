import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import type { Moment } from "../../../src/plan/state.js";
import { otherwise, type Reason } from "../../../src/plan/unknown.js";
import { stepOf } from "../../support/asked.js";
import { changed, type Draft, exampleJob } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const bath = (change: (draft: Draft) => void = () => {}): JobDocument =>
  changed(allJobsByName()["heater-held-by-its-bath"] as JobDocument, change);

/** A figure, or why it is not known. */
const or = <T>(find: () => T): T | Reason => otherwise<T, Reason>(find, (reason) => reason);

describe("a charge that is to be heated", () => {
  /** The kettle heated twice, the second time to a temperature. */
  const again = (to: string): Moment =>
    stepOf(
      kettle(({ process }) => process.steps.splice(2, 0, { do: "heat", to })),
      3,
    );

  test("to what it has, or to less, stays as it is in no time, and rests on nothing", () => {
    for (const to of ["85 °C", "84 °C"]) {
      const step = again(to);
      expect([step.duration(), step.after.temperature(), step.segments()]).toEqual([0, 85, []]);
      expect([step.basis?.(), step.assumptions?.(), step.reaches?.reached()]).toEqual([[], [], 85]);
    }
  });

  test("to a little more takes a little time, by the heater and what it loses", () => {
    const step = again("85.1 °C");
    expect(step.duration()).toBeGreaterThan(0);
    expect(step.duration()).toBeLessThan(60);
    expect([step.after.temperature(), step.reaches?.reached()]).toEqual([85.1, 85.1]);
    expect(step.segments()).toHaveLength(1);
    expect(step.basis?.().map(({ key }) => key)).toContain("heater-power");
    expect(step.reaches?.direction).toBe("heating");
  });

  test("counts as heated and on the heat from then on", () => {
    const { before, after } = stepOf(exampleJob(), 2);
    expect([before.onHeat, after.onHeat, before.charge.heated, after.charge.heated]).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect(stepOf(exampleJob(), 4).after.onHeat).toBe(false);
  });

  test("by a power alone has no ends of its time; where a wall decides it has two", () => {
    expect(stepOf(exampleJob(), 2).durationEnds).toBeUndefined();
    const { min, max } =
      stepOf(
        bath(({ process }) => (process.steps[1].to = "85 °C")),
        2,
      ).durationEnds?.() ?? {};
    expect(min).toBeGreaterThan(0);
    expect(max === null || Number(max) > Number(min)).toBe(true);
    const there = bath(({ process }) => {
      process.steps[1].to = "80 °C";
      process.steps.splice(2, 0, { do: "heat", to: "80 °C" });
    });
    expect(stepOf(there, 3).durationEnds?.()).toEqual({ min: 0, max: 0 });
    // A wall without a limit of the heater passes all that it gives.
    const unlimited = bath(({ vessel }) => delete vessel.heater.temperatureMax);
    expect(stepOf(unlimited, 2).durationEnds).toBeUndefined();
  });

  test("without a known loss gets as warm as asked for all the same, in a time that is not known", () => {
    const step = stepOf(
      kettle(({ vessel }) => delete vessel.coolingCurve),
      2,
    );
    expect(or(step.duration)).toMatchObject({ field: "vessel-heat-loss" });
    expect(step.after.temperature()).toBe(85);
  });

  test("beyond what its bath has is not known, and comes no nearer than the bath", () => {
    const step = stepOf(bath(), 2);
    expect(or(step.after.temperature)).toMatchObject({ law: "heat-balance" });
    expect(or(() => step.reaches?.reached())).toBeLessThan(88);
    expect(step.reaches?.asked()).toBe(92);
  });

  test("to the very temperature of a bath that is not known to get it there is not known; to less it is", () => {
    const unread = (to: string) =>
      stepOf(
        bath(({ process, bench }) => {
          delete bench.viscosities;
          process.steps[1].to = to;
        }),
        2,
      ).after.temperature;
    expect(or(unread("88 °C"))).toHaveProperty("code");
    expect(or(unread("87.9 °C"))).toBe(87.9);
  });

  test("says what it leaves out: the heat of melting where that is not stated, and readings that end", () => {
    const plain = stepOf(exampleJob(), 2).assumptions?.() ?? [];
    expect(plain).not.toContain("heat-of-melting-left-out");
    const unstated = kettle(({ formula }) => delete formula.materials.gelFormer.melting);
    expect(stepOf(unstated, 2).assumptions?.()).toContain("heat-of-melting-left-out");
  });
});

describe("a charge that a bath of 88 °C heats through its wall", () => {
  const code = "wall-as-thick-as-read";
  /** Heated to 70 °C and then to 85 °C, its readings going from one temperature to another. */
  const second = (from: string, to: string, change: (draft: Draft) => void = () => {}): Moment =>
    stepOf(
      bath((draft) => {
        const [heating] = draft.bench.viscosities;
        heating.readings = [
          { at: from, viscosity: "36 mPa·s" },
          { at: "80 °C", viscosity: "25 mPa·s" },
          { at: to, viscosity: "18 mPa·s" },
        ];
        draft.process.steps.splice(1, 1, { do: "heat", to: "70 °C" }, { do: "heat", to: "85 °C" });
        change(draft);
      }),
      3,
    );

  test("is read as far as it goes from the charge at its coolest to the bath, and no assumption is made", () => {
    const step = second("70 °C", "88 °C");
    expect(step.assumptions?.()).not.toContain(code);
    const { min, max } = step.durationEnds?.() ?? {};
    expect(min).toBeLessThan(step.duration());
    expect(max).toBeGreaterThan(step.duration());
  });

  test("may take up all that the heater gives where the bath is hotter than was read", () => {
    const step = second("70 °C", "87.9 °C");
    expect(step.assumptions?.()).toContain(code);
    const atPower = second("70 °C", "87.9 °C", ({ vessel }) => delete vessel.heater.temperatureMax);
    expect(step.durationEnds?.().min).toBeCloseTo(atPower.duration(), 6);
    expect(second("70 °C", "88 °C").durationEnds?.().min).toBeGreaterThan(1.01 * atPower.duration());
  });

  test("may take any time where the charge is colder than was read", () => {
    const step = second("70.1 °C", "88 °C");
    expect(step.assumptions?.()).toContain(code);
    expect(step.durationEnds?.().max).toBeNull();
    expect(step.durationEnds?.().min).toBeLessThan(step.duration());
  });

  test("goes by a coefficient that is stated, whatever was read", () => {
    const step = second("70.1 °C", "87.9 °C", ({ vessel }) =>
      Object.assign(vessel.heatedWall, { coefficient: "300 W/(m²·K)", source: "invented" }),
    );
    expect(step.assumptions?.()).not.toContain(code);
    // 0.22 m² pass 66 W for each kelvin below the bath.
    expect(step.duration()).toBeGreaterThan(0);
    const twice = second("70.1 °C", "87.9 °C", ({ vessel }) =>
      Object.assign(vessel.heatedWall, { coefficient: "600 W/(m²·K)", source: "invented" }),
    );
    expect(twice.duration()).toBeLessThan(step.duration());
  });
});

describe("a step in a vessel that is not stated to have a heater", () => {
  test("gets there in a time that is not known for want of it", () => {
    const step = stepOf(
      kettle(({ vessel }) => delete vessel.heater),
      2,
    );
    expect(or(step.duration)).toMatchObject({ field: "vessel-heater" });
    expect(step.after.temperature()).toBe(85);
  });
});
