import { type JobDocument, prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { isHeated, massOfMaterial, momentsWith, untilFilled, warmestIn } from "../../../src/plan/parts/in-vessel.js";
import { timeOfPassing } from "../../../src/plan/parts/passing.js";
import { takenForGranted } from "../../../src/plan/parts/taken-for-granted.js";
import { runOf } from "../../../src/plan/prepared-run.js";
import type { Run } from "../../../src/plan/state.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const run = (job: JobDocument): Run => runOf(prepareJob(job));
const kettle = (change: (draft: Draft) => void = () => {}): Run => run(changed(exampleJob(), change));
const moment = ({ moments }: Run, number: number) => {
  const found = moments[number - 1];
  if (!found) throw new Error(`no step ${number}`);
  return found;
};

describe("the warmest that a material meets in a step", () => {
  test("is the hot melt that it is poured into, before it has cooled it", () => {
    const pouring = moment(kettle(), 6);
    expect(pouring.after.temperature()).toBeLessThan(79);
    expect(warmestIn(pouring)).toBe(80);
  });

  test("is where a step that heats ends, and not the room where the vessel was empty", () => {
    expect(warmestIn(moment(kettle(), 2))).toBe(85);
    const cool = moment(
      kettle(({ process }) => (process.steps[0].at = "10 °C")),
      1,
    );
    expect(warmestIn(cool)).toBe(cool.after.temperature());
    expect(warmestIn(cool)).toBeLessThan(21);
  });

  test("is the warmest of all additions of a schedule, and at least the room's in a pack", () => {
    const cold = run(coldJob());
    const adding = moment(cold, 3);
    const rows = adding.schedule?.().rows.map(({ temperature = Number.NaN }) => temperature) ?? [];
    expect(warmestIn(adding)).toBe(Math.max(...rows));
    const cool = kettle(({ process }) => {
      const charges = ["A", "B", "C"].map((phase) => ({ do: "charge", phase, at: "10 °C" }));
      process.steps = [...charges, { do: "fill" }];
    });
    const filling = moment(cool, 4);
    expect(filling.after.temperature()).toBeLessThan(18);
    expect(warmestIn(filling)).toBe(21);
  });
});

describe("what is in the vessel", () => {
  test("is what was charged, from its charge to the last pack", () => {
    const found = kettle();
    expect(momentsWith(found, "almond").map(({ number }) => number)).toEqual([6, 7, 8, 9, 10]);
    expect(untilFilled(found)).toHaveLength(10);
    expect(massOfMaterial(moment(found, 5), "almond")).toBe(0);
    const line = found.scaled.lot.lines.find(({ material }) => material === "almond");
    expect(massOfMaterial(moment(found, 6), "almond")).toBeCloseTo(line?.mass ?? Number.NaN, 9);
    expect([isHeated(found), isHeated(run(coldJob()))]).toEqual([true, false]);
  });
});

describe("when a melt passes a temperature", () => {
  test("is the time at which a step ends there, and later for a cooler one, in this run and beyond the addition", () => {
    const found = kettle();
    // Phase C goes in by step 8.
    const { before } = moment(found, 8);
    const [start, end] = [moment(found, 6).after, before];
    expect(timeOfPassing(end.temperature(), found, 7)).toBeCloseTo(end.time(), 3);
    expect(timeOfPassing(start.temperature(), found, 7)).toBe(start.time());
    const middle = timeOfPassing((start.temperature() + end.temperature()) / 2, found, 7);
    expect(middle).toBeGreaterThan(start.time());
    expect(middle).toBeLessThan((start.time() + end.time()) / 2);
    expect(timeOfPassing(end.temperature() - 2, found, 7)).toBeGreaterThan(end.time() + 60);
  });
});

describe("what is taken for granted in the temperature of a step", () => {
  test("is nothing where it was heated to what was asked for and held there", () => {
    const found = kettle();
    for (const number of [3, 4])
      expect(takenForGranted(found, moment(found, number))).toEqual({ assumptions: [], warmerMax: 0 });
  });

  test("is bounded by the motor where the heat of stirring is left out, and by nothing without one", () => {
    const stirring = { do: "stir", for: "10 min", speed: "40 rpm" };
    const stirred = kettle(({ process }) => process.steps.splice(4, 0, stirring));
    const { assumptions, warmerMax } = takenForGranted(stirred, moment(stirred, 5));
    expect(assumptions).toEqual(["heat-of-stirring-up-to-the-motor"]);
    // 0.8 of 180 W for 10 min, by an oil of 1.9 to 2.3 kJ/(kg·K).
    const { mass } = moment(stirred, 5).after.charge;
    expect(warmerMax).toBeGreaterThan((144 * 600) / (mass * 2300));
    expect(warmerMax).toBeLessThan((144 * 600) / (mass * 1900));
    const unbounded = kettle(({ process, vessel }) => {
      process.steps.splice(4, 0, stirring);
      delete vessel.stirrer.motor;
    });
    expect(takenForGranted(unbounded, moment(unbounded, 5))).toEqual({
      assumptions: ["heat-of-stirring-left-out"],
      warmerMax: 0,
    });
  });
});
