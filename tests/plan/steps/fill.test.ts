import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { stepOf, stepsOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("filling", () => {
  const filled = (step: Draft, change: (draft: Draft) => void = () => {}) =>
    stepOf(
      kettle((draft) => {
        draft.vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
        draft.process.steps[9] = { do: "fill", ...step };
        change(draft);
      }),
      10,
    );

  test("in no time changes no temperature, and leaves none cooler behind", () => {
    const step = filled({});
    expect([step.duration(), step.after.temperature()]).toEqual([0, step.before.temperature()]);
    expect(step.coolest?.()).toBe(step.after.temperature());
    expect(step.assumptions?.()).not.toContain("vessel-full-while-filling");
    expect(step.turns).toBeUndefined();
    expect([step.after.inPacks, step.before.inPacks, step.warmedBy]).toEqual([true, false, undefined]);
  });

  test("over a while cools it, and what is left the more", () => {
    const step = filled({ for: "20 min" });
    expect(step.after.temperature()).toBeLessThan(step.before.temperature());
    expect(step.coolest?.()).toBeLessThan(step.after.temperature());
    expect(step.assumptions?.()).toContain("vessel-full-while-filling");
  });

  test("leaves something behind that may be as cool as it likes where nobody knows how much is left", () => {
    const fill = stepsOf(allJobsByName()["jacket-by-conductance"] as JobDocument).find(
      ({ step }) => step.do === "fill",
    );
    expect(fill?.coolest?.()).toBeNull();
    const atOnce = changed(allJobsByName()["jacket-by-conductance"] as JobDocument, ({ process }) => {
      for (const key of ["for", "packsPerMinute"])
        delete process.steps.find(({ do: kind }: Draft) => kind === "fill")[key];
    });
    const last = stepsOf(atOnce).find(({ step }) => step.do === "fill");
    expect(last?.coolest?.()).toBe(last?.after.temperature());
  });

  test("at a rate takes the packs over it", () => {
    expect(filled({ packsPerMinute: 60 }).duration()).toBeCloseTo(1200, 9);
    expect(filled({ for: "7 min" }).duration()).toBe(420);
  });

  test("with a warm jacket goes towards its temperature, and names it", () => {
    const step = filled({ for: "20 min", jacketAt: "80 °C" });
    expect(step.warmedBy).toBe(80);
    expect(step.after.temperature()).toBeGreaterThan(filled({ for: "20 min" }).after.temperature());
  });

  test("may get warmer than it is only where a jacket or stirring warms it, and not in no time", () => {
    expect(filled({ for: "20 min" }).warmest).toBeUndefined();
    const jacketed = filled({ for: "20 min", jacketAt: "80 °C" });
    expect(jacketed.warmest?.()).toBe(80);
    const atOnce = filled({ jacketAt: "80 °C" });
    expect(atOnce.warmest?.()).toBe(atOnce.after.temperature());
    const cooler = filled({ for: "20 min", jacketAt: "30 °C" });
    expect(cooler.warmest?.()).toBe(cooler.after.temperature());
  });

  test("is warmed by all that the motor gives where nobody knows how thick it is: once more where a jacket holds it anyway", () => {
    const unread = ({ bench, process }: Draft): void => {
      delete bench.viscosities;
      process.steps[6] = { do: "cool", to: "64 °C" };
    };
    const speed = "40 rpm";
    const alone = filled({ for: "20 min", speed }, unread);
    const warmed = filled({ for: "20 min", speed, jacketAt: "80 °C" }, unread);
    const [byStirring, beyondJacket] = [alone.warmest?.() ?? Number.NaN, warmed.warmest?.() ?? Number.NaN];
    const part = (byStirring - alone.after.temperature()) / (beyondJacket - 80);
    // What is left is warmed for so much longer than a full vessel, which was warmed as it was run.
    expect(part).toBeGreaterThan(0.7);
    expect(part).toBeLessThan(0.95);
    // Between the two lies what a full vessel takes up: 0.8 of 180 W for 20 min, by an oil of 1.9 to 2.3 kJ/(kg·K).
    const full = beyondJacket - 80 - (byStirring - alone.after.temperature());
    const { mass } = alone.before.charge;
    expect(full).toBeGreaterThan((0.8 * 180 * 1200) / (mass * 2300));
    expect(full).toBeLessThan((0.8 * 180 * 1200) / (mass * 1900));
  });

  test("is stirred in its first state and its last where it says so", () => {
    const turns = filled({ for: "20 min", speed: "10 rpm" }).turns?.() ?? [];
    const step = filled({ for: "20 min", speed: "10 rpm" });
    expect(turns.map(({ state }) => state.temperature())).toEqual([
      step.before.temperature(),
      step.after.temperature(),
    ]);
  });

  test("is off the heat unless it is held there, and not in need of a jacket without one", () => {
    const onHeat = kettle(({ process }) => {
      process.steps = process.steps.filter(({ do: kind }: Draft) => kind !== "take off the heat" && kind !== "cool");
    });
    expect(() => stepsOf(onHeat)).toThrow(/heat/);
    const held = changed(
      onHeat,
      ({ process }) => (process.steps.find(({ do: kind }: Draft) => kind === "fill").held = "on the heat"),
    );
    const fill = stepsOf(held).find(({ step }) => step.do === "fill");
    expect(fill?.coolest?.()).toBe(fill?.before.temperature());
    expect(() => stepsOf(kettle(({ process }) => (process.steps[9].held = "on the heat")))).toThrow(/heat/);
    expect(() => stepsOf(kettle(({ process }) => (process.steps[9].jacketAt = "70 °C")))).toThrow(/jacket/);
  });
});

describe("packs at rest", () => {
  test("cool towards the room, by how the pack loses heat", () => {
    const step = stepOf(exampleJob(), 11);
    expect(step.after.temperature()).toBeLessThan(step.before.temperature());
    expect(step.after.temperature()).toBeGreaterThan(20.9);
    expect(step.basis?.()).toHaveLength(1);
    expect(step.duration()).toBe(12 * 3600);
  });

  test("that are as cool as the room stay so, and need nothing known of the pack", () => {
    const cold = vessel(({ process, vessel: own }) => {
      process.steps.push({ do: "rest", for: "12 h" });
      delete own.stirrer;
    });
    const step = stepsOf(cold).at(-1);
    expect([step?.after.temperature(), step?.basis?.(), step?.assumptions?.()]).toEqual([21, [], []]);
  });

  test("or a charge that stands in the vessel take their time", () => {
    const standing = kettle(({ process }) => process.steps.splice(4, 0, { do: "rest", for: "10 min" }));
    const step = stepOf(standing, 5);
    expect(step.duration()).toBe(600);
    expect(step.after.temperature()).toBeLessThan(85);
    expect(step.after.temperature()).toBeGreaterThan(80);
  });
});
