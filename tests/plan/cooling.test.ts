import { type JobDocument, type PlanStep, runPlan } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";

describe("cooling to a viscosity", () => {
  const place = 7;
  const cooled = (fields: Draft, change: (draft: Draft) => void = () => {}): JobDocument =>
    changed(exampleJob(), (draft) => {
      draft.process.steps[place - 1] = { do: "cool", toViscosity: "3 Pa·s", ...fields };
      draft.vessel.jacket = { coolant: "15 °C", conductance: "30 W/K", capacityFlow: "1000000000 W/K" };
      change(draft);
    });
  const stepOf = (job: JobDocument) => known(runPlan(job).timeline[place - 1]);

  it("comes to the same temperature through the jacket, sooner", () => {
    const [alone, jacketed] = [stepOf(cooled({})), stepOf(cooled({ with: "jacket" }))];
    expect(jacketed.temperatureEnd).toBe(alone.temperatureEnd);
    const took = ({ timeStart, timeEnd }: PlanStep) => known(timeEnd) - known(timeStart);
    expect(took(jacketed)).toBeLessThan(0.3 * took(alone));
    const { temperatureEnd } = alone;
    const to = stepOf(
      changed(cooled({}), ({ process }) => {
        process.steps[place - 1] = { do: "cool", to: `${temperatureEnd} °C`, with: "jacket" };
      }),
    );
    expect(took(jacketed)).toBeCloseTo(took(to), 6);
  });

  it.each([
    ["6.2 min", "met"],
    ["6.1 min", "not-met"],
  ])("within %s through the jacket: %s", (within, verdict) => {
    const job = cooled({ with: "jacket", within });
    expect(answerOf(job, "done-in-time", { step: place }).verdict).toBe(verdict);
  });

  it("asks about the skin on the jacket's wall", () => {
    expect(answersOf(runPlan(cooled({ with: "jacket" })), "skin-on-the-wall", { step: place })).toHaveLength(1);
    expect(answersOf(runPlan(cooled({})), "skin-on-the-wall", { step: place })).toHaveLength(0);
  });

  // Phases A and B were read from 34 Pa·s at 54 °C to 22 mPa·s at 80 °C.
  it.each([
    ["33.99 Pa·s", "met"],
    ["34.01 Pa·s", "not-known"],
    ["22.1 mPa·s", "met"],
    ["21.9 mPa·s", "not-known"],
  ])(
    "can be done up to either end of the readings, and is not known beyond: at %s it is %s",
    (toViscosity, verdict) => {
      expect(answerOf(cooled({ toViscosity }), "step-can-be-done", { step: place }).verdict).toBe(verdict);
    },
  );

  it.each(["1000 Pa·s", "0.0001 Pa·s"])("is not known beyond the readings, at %s", (toViscosity) => {
    const job = cooled({ toViscosity, with: "jacket", within: "1 h" });
    expect(stepOf(job).notKnown).toMatchObject({ code: "outside-range", field: "bench-viscosities" });
    for (const id of ["step-can-be-done", "done-in-time"] as const)
      expect(answerOf(job, id, { step: place }).verdict).toBe("not-known");
    expect(answerOf(job, "filled-before-it-sets").verdict).not.toBe("met");
  });

  test("needs a jacket for that, and is asked for a temperature or a viscosity", () => {
    expect(() => runPlan(cooled({ with: "jacket" }, ({ vessel }) => delete vessel.jacket))).toThrow(/a jacket/);
    expect(() => runPlan(cooled({ to: "60 °C" }))).toThrow(/toViscosity|no such field/);
  });
});
