import { CalculationError } from "gelwright/error";
import { type Answer, measureNext, type Plan, type Reason, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";
import { keyOf, plansByName } from "./jobs/plans.js";

const starter = jobsByName()["starter-without-readings"];
if (!starter) throw new Error("the starter job is there");
const plan = runPlan(starter);

function open({ answers }: Plan): readonly Answer[] {
  return answers.filter(({ verdict }) => verdict === "not-known");
}

describe("a starter job of a vessel, a stirrer, an oil, a gel former and a glitter, without a reading", () => {
  const { figures, others } = measureNext(plan);

  test("gets a short list instead of a not known for every answer", () => {
    expect(open(plan).length).toBeGreaterThan(20);
    expect(figures.length).toBeLessThan(open(plan).length / 2);
  });

  test("is told first what most answers wait for", () => {
    const [first] = figures;
    expect(first).toMatchObject({ field: "bench-viscosities", phases: ["A"], how: "measure" });
    const counts = figures.map(({ answers }) => answers.length);
    expect(counts).toEqual([...counts].sort((one, other) => other - one));
    expect(counts[0]).toBeGreaterThan(10);
  });

  test("reads one curve of a charge on heating and cooling, and setting temperatures at all doses at once", () => {
    const curve = figures.find(({ field, phases }) => field === "bench-viscosities" && phases?.join() === "A");
    expect(curve?.directions).toEqual(["heating", "cooling"]);
    const doses = figures.filter(({ field }) => field === "bench-doses");
    expect(doses).toHaveLength(1);
    expect(doses[0]?.dose?.min).toBeLessThan(doses[0]?.dose?.max ?? 0);
  });

  test("measures at the bench, looks up on the data sheet, decides what nobody can measure", () => {
    const how = (wanted: string): string | undefined => figures.find(({ field }) => field === wanted)?.how;
    expect(how("bench-yield-stress")).toBe("measure");
    expect(how("material-flash-point")).toBe("look-up");
    expect(how("bench-settling-max")).toBe("decide");
  });

  test("has every answer that is not known in the list, or among those that no figure settles", () => {
    const listed = [...figures.flatMap(({ answers }) => answers), ...others].map(keyOf);
    expect([...new Set(listed)].sort()).toEqual(open(plan).map(keyOf).sort());
    const inFigures = new Set(figures.flatMap(({ answers }) => answers.map(keyOf)));
    expect(others.filter((one) => inFigures.has(keyOf(one)))).toEqual([]);
  });
});

describe("an answer that lacks two figures", () => {
  test("counts for each and waits for neither alone", () => {
    const { figures } = measureNext(plan);
    const motor = figures.flatMap(({ field, answers }) =>
      answers.filter(({ id }) => id === "motor-power").map(({ alone }) => [field, alone]),
    );
    expect(motor).toEqual([
      ["bench-viscosities", false],
      ["stirrer-motor", false],
    ]);
  });

  test("waits for the other alone once one of them is stated", () => {
    const stated = runPlan(
      changed(starter, (draft) => {
        draft.vessel.stirrer.motor = { power: "180 W" };
      }),
    );
    const { figures } = measureNext(stated);
    expect(figures.some(({ field }) => field === "stirrer-motor")).toBe(false);
    const curve = figures.find(({ field }) => field === "bench-viscosities");
    expect(curve?.answers.find(({ id }) => id === "motor-power")?.alone).toBe(true);
  });
});

test("a figure that was missing is missing no more once it is stated", () => {
  const field = "bench-settling-max";
  const stated = runPlan(
    changed(starter, (draft) => {
      draft.bench.settlingAllowed = "1 mm";
    }),
  );
  expect(measureNext(plan).figures.map((one) => one.field)).toContain(field);
  expect(measureNext(stated).figures.map((one) => one.field)).not.toContain(field);
});

test.each(plansByName())(
  "the list of %s has each figure once and only answers that are not known",
  (_name, { plan: of }) => {
    const { figures, others } = measureNext(of);
    const keys = figures.map(({ field, of: whose, phases }) => JSON.stringify([field, whose, phases]));
    expect(new Set(keys).size).toBe(keys.length);
    const waiting = new Set([...figures.flatMap(({ answers }) => answers), ...others].map(keyOf));
    expect([...waiting].sort()).toEqual(open(of).map(keyOf).sort());
    expect(measureNext(JSON.parse(JSON.stringify(of)))).toEqual({ figures, others });
  },
);

test("what a material lacks is one figure, for the wall, for particles in a pack and for the time that it takes to set", () => {
  const lacking = runPlan(
    changed(exampleJob(), ({ formula: { materials } }) => {
      delete materials.gelFormer.conductivity;
    }),
  );
  const ofConductivity = measureNext(lacking).figures.filter(({ field }) => field === "material-conductivity");
  expect(ofConductivity.map(({ of }) => of)).toEqual(["gelFormer"]);
  expect(new Set(ofConductivity[0]?.answers.map(({ id }) => id))).toEqual(
    new Set(["maximum-temperature", "flash-point", "particles-go-in", "particles-settle", "set-at-centre"]),
  );
});

test("a loss that was left out is what to measure, if nothing else is said to be lacking", () => {
  const [answer] = open(plan);
  const figure = { min: null, max: 20, assumptions: ["heat-loss-left-out"] } as const;
  const { figures } = measureNext({ answers: [{ ...(answer as Answer), notKnown: [], figure }] });
  expect(figures.map(({ field }) => field)).toEqual(["vessel-heat-loss"]);
});

test("of two figures that as many answers lack, that goes first which more of them wait for alone", () => {
  const [answer] = open(plan);
  const lacks = (...fields: readonly NonNullable<Reason["field"]>[]) => ({
    ...(answer as Answer),
    notKnown: fields.map((field) => ({ code: "not-stated" as const, field })),
  });
  const order = (...answers: readonly ReturnType<typeof lacks>[]) =>
    measureNext({ answers }).figures.map(({ field }) => field);
  const [several, one] = ["vessel-heater", "stirrer-motor"] as const;
  expect(order(lacks(several, one), lacks(several, "pack"), lacks(one))).toEqual([one, several, "pack"]);
  // But what more answers lack goes before what fewer wait for alone.
  expect(order(lacks(one), lacks(several, "pack"), lacks(several, "pack"))).toEqual([several, "pack", one]);
});

test("no answers give an empty list, and what is no answer is refused by its place", () => {
  expect(measureNext({ answers: [] })).toEqual({ figures: [], others: [] });
  const [answer] = open(plan);
  const odd = { ...answer, notKnown: [{ code: "not-stated", field: "weather" }] };
  expect(() => measureNext({ answers: [odd as never] })).toThrow(CalculationError);
  expect(() => measureNext({ answers: [odd as never] })).toThrow(
    /^answers\[0\]\.notKnown\[0\]\.field: found "weather"/,
  );
});
