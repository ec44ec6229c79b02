import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { otherwise, type Reason } from "../../../src/plan/unknown.js";
import { stepOf, stepsOf } from "../../support/asked.js";
import { changed, type Draft, exampleJob } from "../../support/example.js";

/** A figure, or why it is not known. */
const or = <T>(find: () => T): T | Reason => otherwise<T, Reason>(find, (reason) => reason);

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("a melt that is held off the heat", () => {
  const held = (at: string, change: (draft: Draft) => void = () => {}) =>
    stepOf(
      kettle((draft) => {
        draft.process.steps[4] = { do: "hold", for: "10 min", at };
        change(draft);
      }),
      5,
    );

  test("at what it has or more stays as it is for the time, and nothing warms it", () => {
    for (const at of ["85 °C", "90 °C"]) {
      const step = held(at);
      expect([step.duration(), step.after.temperature(), step.reaches?.reached()]).toEqual([600, 85, 85]);
      expect(step.basis?.()).toEqual([{ kind: "law", key: "held-as-stated" }]);
      expect([step.assumptions?.(), step.segments().length]).toEqual([[], 1]);
    }
    expect(held("90 °C").reaches?.direction).toBe("heating");
    expect(held("80 °C").reaches?.direction).toBe("cooling");
  });

  test("at less cools to it by itself first", () => {
    const step = held("84.9 °C");
    expect(step.duration()).toBeGreaterThan(600);
    expect(step.duration()).toBeLessThan(720);
    expect([step.after.temperature(), step.reaches?.reached()]).toEqual([84.9, 84.9]);
    expect([step.segments().length, (step.basis?.().length ?? 0) > 1]).toEqual([2, true]);
  });

  test("at less than the room comes to the room's at best", () => {
    const step = held("15 °C");
    expect(or(() => step.reaches?.reached())).toBe(21);
    expect(or(step.after.temperature)).toHaveProperty("code");
  });

  test("needs a known loss to cool to it", () => {
    const step = held("80 °C", ({ vessel: own }) => delete own.coolingCurve);
    expect(or(() => step.reaches?.reached())).toMatchObject({ field: "vessel-heat-loss" });
  });

  test("counts as one that cools where nobody knows how warm the melt was", () => {
    const step = stepOf(
      kettle(({ process, formula }) => {
        delete formula.materials.gelFormer.specificHeat;
        process.steps.splice(6, 0, { do: "hold", for: "10 min", at: "70 °C" });
      }),
      7,
    );
    expect(or(step.before.temperature)).toMatchObject({ field: "material-specific-heat" });
    expect(step.reaches?.direction).toBe("cooling");
    expect(step.reaches?.asked()).toBe(70);
  });

  test("on a warm jacket goes towards its temperature, and names it", () => {
    const warmed = stepOf(
      kettle(({ process, vessel: own }) => {
        own.jacket = { coolant: "15 °C", conductance: "30 W/K" };
        process.steps[4] = { do: "hold", for: "1 h", jacketAt: "90 °C" };
      }),
      5,
    );
    const left = stepOf(
      kettle(({ process }) => (process.steps[4] = { do: "rest", for: "1 h" })),
      5,
    );
    expect([warmed.warmedBy, left.warmedBy, warmed.duration()]).toEqual([90, undefined, 3600]);
    expect(warmed.after.temperature()).toBeGreaterThan(left.after.temperature() + 1);
    expect(warmed.after.temperature()).toBeLessThan(90);
    expect(stepOf(exampleJob(), 3).warmedBy).toBeUndefined();
    expect(stepOf(exampleJob(), 3).after.temperature()).toBe(85);
  });

  test("is to state a temperature or a jacket off the heat, and neither of them on it", () => {
    const steps = (change: (steps: Draft[]) => void) => () =>
      stepsOf(
        kettle(({ process, vessel: own }) => {
          own.jacket = { coolant: "15 °C", conductance: "30 W/K" };
          change(process.steps);
        }),
      );
    const off = { do: "hold", for: "10 min" };
    expect(steps((all) => all.splice(4, 0, off))).toThrow(/heat/);
    expect(steps((all) => all.splice(2, 0, { ...off, at: "80 °C" }))).toThrow(/heat/);
    expect(steps((all) => all.splice(2, 0, { ...off, jacketAt: "80 °C" }))).toThrow(/heat/);
    expect(steps((all) => all.splice(4, 0, { ...off, at: "80 °C" }))).not.toThrow();
    expect(steps((all) => all.splice(4, 0, { ...off, jacketAt: "80 °C" }))).not.toThrow();
    const bare = kettle(({ process }) => process.steps.splice(4, 0, { ...off, jacketAt: "80 °C" }));
    expect(() => stepsOf(bare)).toThrow(/jacket/);
  });
});

describe("what takes no time of its own", () => {
  test.each(["take off the heat", "match clarity"])(
    "%s leaves the melt as it is, which goes through nothing",
    (kind) => {
      const step = stepOf(
        kettle(({ process }) => process.steps.splice(3, kind === "match clarity" ? 0 : 1, { do: kind })),
        4,
      );
      expect([step.duration(), step.after.temperature(), step.segments()]).toEqual([0, 85, []]);
      expect(step.after.onHeat).toBe(kind === "match clarity");
    },
  );
});
