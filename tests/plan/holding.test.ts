import fc from "fast-check";
import { type JobDocument, type PlanStep, prepareJob, remedies, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { between } from "../support/between.js";
import { changed, type Draft, exampleJob } from "../support/example.js";

/** The kettle of the example with a hold off the heat as its step 7, after the oils are in at 66.3 °C. */
const number = 7;
function holding(fields: Draft, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(exampleJob(), (draft) => {
    draft.process.steps.splice(number - 1, 0, { do: "hold", for: "30 min", ...fields });
    draft.vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
    change(draft);
  });
}

function held(job: JobDocument): PlanStep & { readonly duration: number } {
  const step = known(runPlan(job).timeline[number - 1]);
  return { ...step, duration: known(step.timeEnd) - known(step.timeStart) };
}

describe("a hold off the heat", () => {
  it("keeps the charge where it is asked to, once it has cooled to that", () => {
    const { duration, temperatureStart, temperatureEnd, basis } = held(holding({ at: "65 °C" }));
    expect(temperatureStart).toBeCloseTo(66.32, 2);
    expect(temperatureEnd).toBe(65);
    expect(duration).toBeGreaterThan(30 * 60);
    expect(basis.map(({ key }) => key)).toContain("held-as-stated");
    // The same as cooling to there first and holding then.
    const inTwo = holding({ at: "65 °C" }, ({ process }) =>
      process.steps.splice(number - 1, 0, { do: "cool", to: "65 °C" }),
    );
    const { timeline } = runPlan(inTwo);
    const hold = known(timeline[number]);
    expect(known(hold.timeEnd) - known(hold.timeStart)).toBeCloseTo(30 * 60, 9);
    expect(hold.temperatureEnd).toBe(65);
    const cooling = known(timeline[number - 1]);
    // Cooling is stirred, a hold is not: it cools a little faster.
    expect(known(cooling.timeEnd) - known(cooling.timeStart)).toBeGreaterThan(duration - 30 * 60 - 1e-6);
  });

  it.each([
    ["65 °C", "met", "none"],
    ["66.3 °C", "met", "none"],
    ["66.4 °C", "not-met", "below"],
    ["80 °C", "not-met", "below"],
    ["20 °C", "not-met", "above"],
  ])("at %s can be done: %s", (at, verdict, side) => {
    const found = answerOf(holding({ at }), "step-can-be-done", { step: number });
    expect([found.verdict, found.side]).toEqual([verdict, side]);
  });

  it("is not warmed by being held: what is cooler stays so", () => {
    expect(held(holding({ at: "80 °C" })).temperatureEnd).toBeCloseTo(66.32, 2);
    expect(held(holding({ at: "80 °C" })).duration).toBeCloseTo(30 * 60, 9);
  });

  it("asks for a warmer melt, and with that it can be done", () => {
    const prepared = prepareJob(holding({ at: "68 °C" }));
    const [remedy] = remedies({ prepared, answer: { id: "step-can-be-done", of: { step: number } } });
    expect(remedy?.lever).toBe("hotter-melt");
    const after = runPrepared({ prepared, changes: [known(remedy).change] });
    expect(answersOf(after, "step-can-be-done", { step: number })[0]?.verdict).toBe("met");
  });

  it("on a warm jacket comes to where the jacket gives what it loses", () => {
    const job = holding({ for: "50 h", jacketAt: "62 °C" }, ({ vessel }) => {
      vessel.heatLoss = "3 W/K";
      delete vessel.coolingCurve;
    });
    expect(held(job).temperatureEnd).toBeCloseTo((30 * 62 + 3 * 21) / 33, 3);
  });

  it("lets particles settle that are in already, the longer the further", () => {
    const late = (minutes: number) =>
      changed(exampleJob(), ({ process }) =>
        process.steps.splice(9, 0, { do: "hold", for: `${minutes} min`, at: "58 °C" }),
      );
    const settled = (minutes: number) => known(answerOf(late(minutes), "particles-settle").figure.value);
    const [short, long] = [settled(20), settled(40)];
    expect(long).toBeGreaterThan(short);
    expect(settled(60) - long).toBeCloseTo(long - short, 9);
  });

  it("lets air rise: a longer hold lets no less of it out", () => {
    const rise = (minutes: number) =>
      known(
        runPlan(holding({ for: `${minutes} min`, at: "64 °C" })).air?.segments.find(({ toStep }) => toStep >= number),
      );
    expect(known(rise(120).distance)).toBeGreaterThan(known(rise(10).distance));
  });

  it("takes as long as its hold at the least, and ends no warmer than it began", () => {
    const prepared = prepareJob(holding({ at: "60 °C" }));
    fc.assert(
      fc.property(between(30, 90), between(60, 7200), (at, duration) => {
        const changes = [
          { change: "step", step: number, field: "at", value: at },
          { change: "step", step: number, field: "for", value: duration },
        ] as const;
        const step = known(runPrepared({ prepared, changes }).timeline[number - 1]);
        expect(known(step.timeEnd) - known(step.timeStart)).toBeGreaterThanOrEqual(duration - 1e-6);
        expect(known(step.temperatureEnd)).toBe(Math.min(at, known(step.temperatureStart)));
      }),
      { numRuns: 15 },
    );
  });

  it("has no time where nobody knows the loss by which it cools to there", () => {
    const job = holding({ at: "60 °C" }, ({ vessel }) => delete vessel.coolingCurve);
    expect(runPlan(job).timeline[number - 1]?.notKnown?.field).toBe("vessel-heat-loss");
    expect(answerOf(job, "step-can-be-done", { step: number }).verdict).toBe("not-known");
  });

  test.each([
    ["at a temperature on the heat", 3, { at: "85 °C" }, /take off the heat/],
    ["by the heater off the heat", number, {}, /a "heat" before it/],
    ["at a temperature and on a jacket", number, { at: "60 °C", jacketAt: "62 °C" }, /only one of at and jacketAt/],
    ["at no temperature", number, { at: "warm" }, /temperature|number/],
  ])("cannot be %s", (_name, place, fields, expected) => {
    const job = changed(exampleJob(), ({ process, vessel }) => {
      process.steps.splice(place - 1, 0, { do: "hold", for: "30 min", ...fields });
      vessel.jacket = { coolant: "15 °C", conductance: "30 W/K" };
    });
    expect(() => runPlan(job)).toThrow(expected);
  });
});
