import { runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";

const job = exampleJob();
const three = changed(job, (draft) => Object.assign(draft.batch.target, { packs: 3000 }));
const inDay = (workingDay: object) => changed(three, (draft) => Object.assign(draft.process, { workingDay }));

test("three lots in one kettle follow one another as each is filled, and packs rest meanwhile", () => {
  const { lotOrder: order, timeline } = runPlan(three);
  if (!order || "notKnown" in order) throw new Error("no order");
  const filled = timeline.find(({ inPacks }) => inPacks)?.timeEnd ?? Number.NaN;
  const begins = order.entries.filter(({ stage }) => stage === "2 heat").map(({ start }) => start);
  expect(begins).toHaveLength(3);
  expect((begins[1] ?? 0) - (begins[0] ?? 0)).toBeCloseTo(filled, 6);
  expect(order.entries.filter(({ stage }) => stage === "11 rest")).toHaveLength(3);
  expect(toMarkdown({ plan: runPlan(three) })).toContain("## Order of the lots");
  expect(toMarkdown({ plan: runPlan(three) })).toContain("no working day is stated");
});

test("a working day takes as many lots as fit it, and another vessel takes more", () => {
  const daysOf = (workingDay: object): number => {
    const { lotOrder: order } = runPlan(inDay(workingDay));
    if (!order || "notKnown" in order) throw new Error("no order");
    return order.days;
  };
  expect(daysOf({ length: "8 h", cleaning: "30 min" })).toBe(2);
  expect(daysOf({ length: "8 h", cleaning: "30 min", vessels: 2 })).toBe(1);
  expect(daysOf({ length: "4 h" })).toBe(3);
  const plan = runPlan(inDay({ length: "8 h", cleaning: "30 min" }));
  expect(plan.checks.find(({ id }) => id === "lot-fits-the-day")?.verdict).toBe("met");
  expect(toMarkdown({ plan })).toMatch(/\| 3 \| 2 \| 2 heat \| 0:00 \| \d:\d\d \|/);
});

test("a lot that no day holds is said so, and so is a step whose end is not known", () => {
  const short = runPlan(inDay({ length: "2 h" }));
  expect(short.lotOrder).toMatchObject({ notKnown: expect.stringContaining("do not fit a working day of 7200 s") });
  expect(short.checks.find(({ id }) => id === "lot-fits-the-day")?.verdict).toBe("not met");
  expect(toMarkdown({ plan: short })).toContain("Not known: ");
  const lost = runPlan(changed(inDay({ length: "8 h" }), (draft) => delete draft.vessel.coolingCurve));
  expect(lost.lotOrder).toMatchObject({ notKnown: expect.stringMatching(/^how long step \d takes is not known$/) });
  expect(lost.checks.find(({ id }) => id === "lot-fits-the-day")?.verdict).toBe("not known");
});

test("a single lot with no day to fit has no order, and with one is looked at too", () => {
  expect(runPlan(job).lotOrder).toBeUndefined();
  const one = runPlan(changed(job, (draft) => Object.assign(draft.process, { workingDay: { length: "8 h" } })));
  expect(one.lotOrder).toMatchObject({ days: 1 });
  expect(toMarkdown({ plan: one })).toContain("| lot-fits-the-day | met |");
  expect(toMarkdown({ plan: one })).not.toContain("## Order of the lots");
});

test("lots of the cold route too wait for their vessel, which rests before it fills", () => {
  const cold = changed(coldJob(), (draft) => Object.assign(draft.batch.target, { packs: 1600 }));
  const plan = runPlan(cold);
  if (!plan.lotOrder || "notKnown" in plan.lotOrder) throw new Error("no order");
  const { entries, days } = plan.lotOrder;
  const filled = plan.timeline.find(({ inPacks }) => inPacks)?.timeEnd ?? Number.NaN;
  expect(days).toBe(2);
  expect(filled).toBeLessThan(8 * 3600);
  expect(entries.filter(({ stage }) => stage === "3 add").map(({ day }) => day)).toEqual([1, 2]);
  expect(plan.checks.find(({ id }) => id === "lot-fits-the-day")?.verdict).toBe("met");
});
