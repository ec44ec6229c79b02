import { CalculationError } from "gelwright/error";
import { type Answer, type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { stabilityToMarkdown } from "gelwright/sheet";
import { equivalentStorage } from "gelwright/stability";
import { describe, expect, it, test } from "vitest";
import { dayAfter } from "../../src/plan/parts/calendar.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

const kettle = exampleJob();
const vessel = coldJob();
const day = 86_400;

function answer(id: Answer["id"], job: JobDocument, change: (draft: Draft) => void = () => {}): Answer {
  const found = runPlan(changed(job, change)).answers.find((one) => one.id === id);
  if (!found) throw new Error(`no answer to ${id}`);
  return found;
}

function testOf(job: JobDocument, change: (draft: Draft) => void = () => {}): NonNullable<Plan["stability"]> {
  const { stability } = runPlan(changed(job, change));
  if (!stability) throw new Error("no test");
  return stability;
}

describe("the stability test of a job", () => {
  it("lists every pull by day, with its date from the start", () => {
    const { pulls, samples, mass } = testOf(kettle);
    expect(pulls).toHaveLength(6);
    expect(pulls[0]).toEqual({ day: 0, date: { year: 2027, month: 3, day: 1 }, condition: "25 °C", samples: 1 });
    expect(pulls.at(-1)).toEqual({
      day: 84,
      date: { year: 2027, month: 5, day: 24 },
      condition: "refrigerator",
      samples: 1,
    });
    // Three pulls with one in reserve, two pulls, one, and one for the cycles.
    expect([samples, mass]).toEqual([8, 8 * 0.015]);
  });

  it("says what a storage stands for, as the kernel does", () => {
    const { storages } = testOf(kettle);
    const kinetics = { law: "q10", q10: { min: 2, value: 2.5, max: 3 } } as const;
    const alone = equivalentStorage({ temperature: 40, duration: 84 * day, temperatureReference: 25, kinetics });
    expect(storages[1]?.equivalent).toEqual(alone.known && alone.duration);
    // At the temperature of use there is nothing to say.
    expect(storages[0]?.equivalent).toBeUndefined();
    expect(testOf(kettle, ({ stability }) => delete stability.ageing).storages[1]?.equivalent).toBeUndefined();
  });

  it("says nothing of what is stored where the gel has set or melted", () => {
    const warmer = testOf(kettle, ({ stability }) => (stability.conditions[1].at = "56 °C"));
    expect(warmer.storages[1]?.equivalent).toMatchObject({
      notKnown: { code: "outside-range", law: "equivalent-storage", value: 56, max: 55 },
    });
  });

  it("counts how often a cycle goes through what changes state", () => {
    expect(testOf(vessel).cycles?.crossings).toEqual([{ name: "the oil phase clouds", count: 6 }]);
    expect(testOf(kettle).cycles?.crossings).toEqual([{ name: "gel-point", count: 0 }]);
  });

  it("takes a pack's fill where no sample is stated", () => {
    const { mass = 0 } = testOf(vessel, ({ stability }) => delete stability.sample);
    expect(mass).toBeCloseTo(15 * 0.15, 12);
  });
});

describe("each limit, just below and just above", () => {
  it.each([
    ["18.7 g", "met"],
    ["18.8 g", "not-met"],
  ])("samples within allowance: 150 g for eight samples of %s: %s", (sample, verdict) => {
    expect(answer("samples-within-allowance", kettle, ({ stability }) => (stability.sample = sample)).verdict).toBe(
      verdict,
    );
  });

  it.each([
    ["53 °C", "met"],
    ["53.1 °C", "not-met"],
  ])("stored below transition: it sets at 55 °C with a margin of 2 K, stored at %s: %s", (at, verdict) => {
    const found = answer("stored-below-transition", kettle, ({ stability }) => (stability.conditions[1].at = at));
    expect([found.verdict, found.beside]).toEqual([verdict, { condition: "40 °C" }]);
  });

  it.each([
    ["-3 °C", "met"],
    ["-3.1 °C", "not-met"],
  ])("stored above transition: the oil clouds up to -5 °C with a margin of 2 K, stored at %s: %s", (at, verdict) => {
    const found = answer("stored-below-transition", vessel, ({ stability }) => (stability.conditions[1].at = at));
    expect([found.verdict, found.side]).toEqual([verdict, verdict === "met" ? "none" : "below"]);
  });
});

describe("what nobody stated", () => {
  it("is not known, and asked for", () => {
    const samples = answer("samples-within-allowance", kettle, ({ stability }) => delete stability.allowance);
    expect([samples.verdict, samples.notKnown[0]?.field]).toEqual(["not-known", "stability-allowance"]);
    const stored = answer("stored-below-transition", kettle, ({ bench }) => delete bench.doses);
    expect([stored.verdict, stored.notKnown[0]?.field]).toEqual(["not-known", "bench-doses"]);
  });

  it("asks nothing of a job without a test, nor of an emulsion that changes its state nowhere", () => {
    const none = runPlan(changed(kettle, (draft) => delete draft.stability));
    expect(none.stability).toBeUndefined();
    expect(stabilityToMarkdown({ plan: none })).toContain("No stability test");
    const still = runPlan(changed(vessel, ({ stability }) => delete stability.transitions));
    expect(still.answers.some(({ id }) => id === "stored-below-transition")).toBe(false);
  });
});

describe("faults of the test", () => {
  test.each([
    ["stability.start", ({ stability }: Draft) => (stability.start = "2027-02-29")],
    ["stability.allowance", ({ stability }: Draft) => (stability.allowance = "film in the kettle")],
    ["stability.conditions[1].name", ({ stability }: Draft) => (stability.conditions[1].name = "25 °C")],
    ["stability.conditions[1].pullDays", ({ stability }: Draft) => (stability.conditions[1].pullDays = [28, 28])],
    ["stability.ageing", ({ stability }: Draft) => (stability.ageing.q10.min = 4)],
    [
      "stability.transitions[0]",
      ({ stability }: Draft) => (stability.transitions = [{ name: "wax", from: "40 °C", to: "30 °C" }]),
    ],
  ])("%s", (path, change) => {
    const found = (() => {
      try {
        runPlan(changed(kettle, change));
        return [];
      } catch (error) {
        if (error instanceof CalculationError) return error.faults.map((fault) => fault.path);
        throw error;
      }
    })();
    expect(found).toEqual([path]);
  });
});

describe("days of the calendar", () => {
  it("go on from any day of a year, before its leap day as after it", () => {
    for (const year of [1900, 2000, 2027, 2028])
      for (const month of ["01", "02", "03", "12"])
        for (const days of [0, 27, 31, 59, 60, 365, 366]) {
          const there = new Date(Date.UTC(year, Number(month) - 1, 15) + days * 86_400_000);
          const found = dayAfter(`${year}-${month}-15`, days);
          expect(Object.values(found)).toEqual([there.getUTCFullYear(), there.getUTCMonth() + 1, there.getUTCDate()]);
        }
  });

  it("are those of the platform's calendar, over four centuries", () => {
    for (let days = 0; days < 150_000; days += 37) {
      const there = new Date(Date.UTC(1999, 11, 31) + days * 86_400_000);
      const { year, month, day: ofMonth } = dayAfter("1999-12-31", days);
      expect([year, month, ofMonth]).toEqual([there.getUTCFullYear(), there.getUTCMonth() + 1, there.getUTCDate()]);
    }
  });
});
