import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { stepOf } from "../../support/asked.js";
import { changed, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("a phase that is charged", () => {
  test("into the empty vessel brings its own temperature, and the room's where none is stated", () => {
    expect(stepOf(exampleJob(), 1).after.temperature()).toBe(21);
    const warm = kettle(({ process }) => (process.steps[0].at = "60 °C"));
    expect(stepOf(warm, 1).after.temperature()).toBeGreaterThan(40);
    expect(stepOf(warm, 1).after.temperature()).toBeLessThanOrEqual(60);
    expect(stepOf(warm, 1).after.charge.heated).toBe(true);
    expect(stepOf(exampleJob(), 1).after.charge.heated).toBe(false);
  });

  test("at the temperature of the charge changes nothing, and a cooler one cools it", () => {
    const at = (temperature: string) =>
      stepOf(
        kettle(({ process }) => (process.steps[5].at = temperature)),
        6,
      );
    expect(stepOf(exampleJob(), 5).after.temperature()).toBe(80);
    const alike = kettle(({ process }) => Object.assign(process.steps[5], { at: "80 °C", for: undefined }));
    delete (alike.process.steps[5] as Draft).for;
    expect(stepOf(alike, 6).after.temperature()).toBe(80);
    expect(at("21 °C").after.temperature()).toBeLessThan(at("40 °C").after.temperature());
    expect(at("40 °C").after.temperature()).toBeLessThan(80);
  });

  test("on the heat is held there once it is in, and loses nothing", () => {
    const early = kettle(({ process }) => process.steps.splice(3, 0, ...process.steps.splice(5, 1)));
    const step = stepOf(early, 4);
    expect(step.before.onHeat).toBe(true);
    expect(step.assumptions?.()).toEqual(["no-loss-while-charging"]);
    expect(step.basis?.().map(({ key }) => key)).toEqual(["mixing-temperature", "held-by-the-heater"]);
    expect(step.duration()).toBe(300);
  });

  test("leaves the wall out where none is stated and something was in the vessel", () => {
    const open = kettle(({ vessel: own }) => delete own.wall);
    expect(stepOf(open, 1).assumptions?.()).not.toContain("vessel-wall-left-out");
    expect(stepOf(open, 6).assumptions?.()).toContain("vessel-wall-left-out");
    const once = kettle(({ process }) => delete process.steps[5].for);
    expect(stepOf(once, 6).assumptions?.()).toEqual(["no-loss-while-charging"]);
  });
});
