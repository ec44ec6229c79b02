import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, coldJob, exampleJob, readOnTheWayDown } from "../support/example.js";

// Read on its way down too: what stirs a melt that nobody read warms it by nobody knows how much, and its day has no end.
const job = readOnTheWayDown(exampleJob());
const three = changed(job, (draft) => Object.assign(draft.batch.target, { packs: 3000 }));
const inDay = (workingDay: object): JobDocument =>
  changed(three, (draft) => Object.assign(draft.process, { workingDay }));
const orderOf = ({ lotOrder }: Plan) => {
  if (!lotOrder || "notKnown" in lotOrder) throw new Error(`no order: ${JSON.stringify(lotOrder)}`);
  return lotOrder;
};
const filledAt = ({ timeline }: Plan): number => known(timeline.find(({ inPacks }) => inPacks)?.timeEnd);

test("three lots in one kettle follow one another as each is filled, and packs rest meanwhile", () => {
  const plan = runPlan(three);
  const { entries, ...order } = orderOf(plan);
  const begins = entries.filter(({ step }) => step === 2).map(({ start }) => start);
  expect(begins).toHaveLength(3);
  expect((begins[1] ?? 0) - (begins[0] ?? 0)).toBeCloseTo(filledAt(plan), 6);
  expect((begins[2] ?? 0) - (begins[1] ?? 0)).toBeCloseTo(filledAt(plan), 6);
  const resting = entries.filter((entry) => entry.do === "rest");
  expect(resting.map(({ lot, step }) => [lot, step])).toEqual([
    [1, 11],
    [2, 11],
    [3, 11],
  ]);
  // No working day is stated: they follow round the clock.
  expect(order).not.toHaveProperty("workingDay");
  expect(answersOf(plan, "lot-fits-the-day")).toEqual([]);
});

test("a working day takes as many lots as fit it, and another vessel takes more", () => {
  const daysOf = (workingDay: object): number => orderOf(runPlan(inDay(workingDay))).days;
  expect(daysOf({ length: "8 h", cleaning: "30 min" })).toBe(2);
  expect(daysOf({ length: "8 h", cleaning: "30 min", vessels: 2 })).toBe(1);
  expect(daysOf({ length: "4 h" })).toBe(3);
  const plan = runPlan(inDay({ length: "8 h", cleaning: "30 min" }));
  expect(answerOf(plan, "lot-fits-the-day").verdict).toBe("met");
  expect(orderOf(plan).workingDay).toBe(8 * 3600);
  // The third lot begins the second day.
  expect(orderOf(plan).entries.find(({ lot, step }) => lot === 3 && step === 2)).toMatchObject({
    day: 2,
    do: "heat",
    start: 0,
  });
});

test("a lot that no day holds is said so, and so is a step whose end is not known", () => {
  const short = runPlan(inDay({ length: "2 h" }));
  expect(short.lotOrder).toEqual({
    notKnown: {
      code: "outside-range",
      law: "lot-order",
      quantity: "duration",
      value: expect.closeTo(filledAt(short), 6),
      min: 0,
      max: 7200,
    },
  });
  expect(answerOf(short, "lot-fits-the-day")).toMatchObject({
    verdict: "not-met",
    side: "above",
    limit: { max: { value: 7200 } },
  });
  const lost = runPlan(changed(inDay({ length: "8 h" }), (draft) => delete draft.vessel.coolingCurve));
  expect(lost.lotOrder).toMatchObject({ notKnown: { code: "not-stated", field: "vessel-heat-loss" } });
  expect(answerOf(lost, "lot-fits-the-day").verdict).toBe("not-known");
});

test("a single lot with no day to fit has no order, and with one is looked at too", () => {
  expect(runPlan(job).lotOrder).toBeUndefined();
  const one = runPlan(changed(job, (draft) => Object.assign(draft.process, { workingDay: { length: "8 h" } })));
  expect(one.lotOrder).toMatchObject({ days: 1 });
  expect(answerOf(one, "lot-fits-the-day").verdict).toBe("met");
});

test("lots of an emulsion too wait for their vessel, which rests before it fills", () => {
  const plan = runPlan(changed(coldJob(), (draft) => Object.assign(draft.batch.target, { packs: 1600 })));
  const { entries, days } = orderOf(plan);
  expect(days).toBe(2);
  expect(filledAt(plan)).toBeLessThan(8 * 3600);
  expect(entries.filter((entry) => entry.do === "add").map(({ step, day }) => [step, day])).toEqual([
    [3, 1],
    [3, 2],
  ]);
  expect(answerOf(plan, "lot-fits-the-day").verdict).toBe("met");
});
