import fc from "fast-check";
import { CalculationError, type Fault } from "gelwright/error";
import { type JobDocument, type Plan, type PlanStep, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { between } from "../support/between.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

/** The kettle of the example with its phase B charged in the parts given, one step after another, in place of step 6. */
function inParts(parts: readonly Draft[], change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(exampleJob(), (draft) => {
    const steps = parts.map((part) => ({ do: "charge", phase: "B", ...part }));
    draft.process.steps.splice(5, 1, ...steps);
    change(draft);
  });
}

function faultsOf(job: JobDocument): readonly Fault[] {
  try {
    runPlan(job);
  } catch (error) {
    if (error instanceof CalculationError) return error.faults;
    throw error;
  }
  throw new Error("no faults");
}

const sum = (masses: readonly number[]): number => masses.reduce((total, mass) => total + mass, 0);

describe("a phase that is charged in parts", () => {
  const whole = runPlan(exampleJob());
  const linesOfB = whole.weighing.lines.filter(({ phase }) => phase === "B");
  const massOfB = sum(linesOfB.map(({ mass }) => mass));

  it("is all in after the last of them, and each part is what it states", () => {
    const { timeline, weighing } = runPlan(inParts([{ share: "25 %" }, { mass: "2 kg" }, {}]));
    const charged = timeline.slice(5, 8).map(({ massCharged }) => known(massCharged));
    expect(charged[0]).toBeCloseTo(0.25 * massOfB, 2);
    expect(charged[1]).toBeCloseTo(2, 2);
    expect(sum(charged)).toBeCloseTo(massOfB, 9);
    expect(timeline[7]?.mass).toBeCloseTo(known(whole.timeline[5]).mass, 9);
    expect(timeline.slice(4, 9).map(({ part }) => part)).toEqual([
      undefined,
      { number: 1, count: 3 },
      { number: 2, count: 3 },
      { number: 3, count: 3 },
      undefined,
    ]);
    expect(weighing.parts.map(({ step, phase, number }) => [step, phase, number])).toEqual([
      [6, "B", 1],
      [7, "B", 2],
      [8, "B", 3],
    ]);
    expect(whole.weighing.parts).toEqual([]);
  });

  it("adds up to what is weighed of each line, to the last digit of its balance", () => {
    fc.assert(
      fc.property(fc.array(between(0.02, 0.3), { minLength: 1, maxLength: 3 }), (shares) => {
        const parts = shares.map((share) => ({ share: `${100 * share} %` }));
        const { weighing } = runPlan(inParts([...parts, {}]));
        for (const line of linesOfB) {
          const own = weighing.parts.flatMap(({ lines }) => lines.filter(({ material }) => material === line.material));
          expect(own).toHaveLength(shares.length + 1);
          const inSteps = own.map(({ mass }) => mass / line.increment);
          for (const steps of inSteps) expect(steps).toBeCloseTo(Math.round(steps), 6);
          expect(sum(inSteps.map(Math.round))).toBe(Math.round(line.mass / line.increment));
        }
      }),
      { numRuns: 8 },
    );
  });

  it("has its temperature, dose and setting right after each part", () => {
    const plan = runPlan(inParts([{ share: "50 %" }, {}]));
    const end = ({ timeline }: Plan, step: number) => known(timeline[step - 1]?.temperatureEnd);
    const dose = (of: Plan, step: number) => Number(answerOf(of, "above-setting", { step }).beside?.["dose"]);
    expect(end(plan, 6)).toBeGreaterThan(end(plan, 7));
    expect(end(plan, 6)).toBeLessThan(80);
    expect(dose(plan, 6)).toBeGreaterThan(dose(plan, 7));
    // At once or in two parts one after the other, it comes to the same.
    const atOnce = runPlan(inParts([{}]));
    expect(end(plan, 7)).toBeCloseTo(end(atOnce, 6), 6);
    expect(dose(plan, 7)).toBeCloseTo(dose(atOnce, 6), 9);
  });

  it("may go in warm first and cold later", () => {
    const warmFirst = inParts([{ share: "50 %", at: "60 °C" }, {}]);
    const cold = inParts([{ share: "50 %" }, {}]);
    const end = (job: JobDocument) => known(runPlan(job).timeline[6]?.temperatureEnd);
    expect(end(warmFirst)).toBeGreaterThan(end(cold) + 3);
  });

  it("keeps every verdict that does not hang on how it went in", () => {
    const verdicts = (job: JobDocument, id: "maximum-share" | "gel-former-ratio" | "delivered") =>
      answersOf(runPlan(job), id).map(({ verdict, figure }) => [verdict, figure.value]);
    for (const id of ["maximum-share", "gel-former-ratio", "delivered"] as const)
      expect(verdicts(inParts([{ share: "30 %" }, {}]), id)).toEqual(verdicts(exampleJob(), id));
  });

  it("draws the vacuum once the last of it is in", () => {
    const job = inParts([{ share: "50 %" }, { for: "2 min" }], ({ process }) => {
      process.air.vacuum = { afterPhase: "B", pressure: "60 mbar", air: "2 % v/v", rim: "600 mm" };
    });
    expect(answerOf(job, "vacuum-foam").at.step).toBe(7);
  });

  it("follows the lots: a stated mass is one of each lot", () => {
    const { timeline, lots } = runPlan(inParts([{ mass: "2 kg" }, {}], ({ batch }) => (batch.lots = 2)));
    expect(lots.count).toBe(2);
    expect(known(timeline[5]).massCharged).toBeCloseTo(2, 2);
    // Each lot needs its own allowances, so that it takes a little more than half of what one lot would.
    expect(known(timeline[6]).massCharged).toBeGreaterThan(massOfB / 2 - 2);
    expect(known(timeline[6]).massCharged).toBeLessThan(massOfB / 2 - 1.9);
  });
});

describe("oil that is stirred into gel former in parts", () => {
  /** The vessel of the cold route with its phase B added in two steps, the second faster. */
  const job = (first: Draft, second: Draft): JobDocument =>
    changed(coldJob(), ({ process }) => {
      const place = process.steps.findIndex(({ do: kind }: Draft) => kind === "add");
      const { pump, increment } = process.steps[place];
      const add = { do: "add", phase: "B", keeps: "revolutions", pump, increment };
      process.steps.splice(place, 1, { ...add, ...first }, { ...add, ...second });
    });

  it("goes on where the first part ended, and ends with the same gel", () => {
    const plan = runPlan(job({ share: "20 %", speed: "40 rpm" }, { speed: "60 rpm" }));
    const [one, other] = known(plan.emulsion).schedules;
    const schedules = [one, other].map((schedule) => {
      if (!schedule || "notKnown" in schedule) throw new Error("no schedule");
      return schedule;
    });
    expect(schedules).toHaveLength(2);
    const [first, second] = [known(schedules[0]), known(schedules[1])];
    expect(known(second.rows[0]).massOil - known(second.rows[0]).mass).toBeCloseTo(known(first.rows.at(-1)).massOil, 6);
    const whole = runPlan(coldJob());
    expect(plan.timeline.at(-1)?.volumeFractionOil).toBeCloseTo(known(whole.timeline.at(-1)?.volumeFractionOil), 6);
    expect(answerOf(plan, "additions-within-share", { phase: "B" }).verdict).toBe("met");
  });

  it("that is poured in as its second part is not met", () => {
    const poured = changed(job({ share: "20 %" }, {}), ({ process }) => {
      const second = process.steps.findLastIndex(({ phase }: Draft) => phase === "B");
      process.steps[second] = { do: "charge", phase: "B" };
    });
    expect(answerOf(poured, "additions-within-share", { phase: "B" }).verdict).toBe("not-met");
  });
});

describe("parts that do not add up", () => {
  test.each([
    ["short of the whole", [{ share: "40 %" }, { share: "50 %" }], "process.steps[6].share", /add up to 100 %/],
    ["beyond it", [{ share: "60 %" }, { share: "50 %" }], "process.steps[6].share", /add up to 100 %/],
    ["one alone", [{ share: "60 %" }], "process.steps[5].share", /add up to 100 %/],
    ["nothing left for the rest", [{ share: "60 %" }, { share: "40 %" }, {}], "process.steps[7].phase", /leave/],
    ["masses without a rest", [{ mass: "2 kg" }, { mass: "3 kg" }], "process.steps[6].mass", /takes the rest/],
    ["a share after a mass", [{ mass: "2 kg" }, { share: "50 %" }], "process.steps[6].share", /takes the rest/],
    ["all of it first", [{}, { share: "50 %" }], "process.steps[6].phase", /not charged before/],
    ["a share and a mass", [{ share: "50 %", mass: "2 kg" }, {}], "process.steps[5].mass", /only one of/],
    ["more than there is", [{ mass: "500 kg" }, {}], "process.steps[5].mass", /less than a lot holds of it/],
    ["a share and a mass beyond it", [{ share: "90 %" }, { mass: "9 kg" }, {}], "process.steps[6].mass", /less than/],
    ["no part", [{ share: "0 %" }, {}], "process.steps[5].share", /above/],
    ["more than all", [{ share: "101 %" }, {}], "process.steps[5].share", /100 %/],
  ])("are a fault of the document: %s", (_name, parts, path, expected) => {
    const faults = faultsOf(inParts(parts));
    expect(faults.map((fault) => fault.path)).toEqual([path]);
    expect(faults[0]?.expected).toMatch(expected);
  });

  test("are a fault of the change that makes them so", () => {
    const prepared = prepareJob(inParts([{ mass: "6 kg" }, {}]));
    expect(() => runPrepared({ prepared, changes: [{ change: "delivered", value: 20 }] })).toThrow(
      /changes\[0\]\.value.*process\.steps\[5\]\.mass/s,
    );
    const { timeline }: { readonly timeline: readonly PlanStep[] } = runPrepared({ prepared });
    expect(known(timeline[5]).massCharged).toBeCloseTo(6, 2);
  });

  test("thirds are shares that add up", () => {
    expect(runPlan(inParts([{ share: "33.3333333333 %" }, { share: "66.6666666667 %" }])).timeline).toHaveLength(12);
  });
});
