import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const id = "additions-within-share";

/** The cold route with all of its oil charged in one step, in equal additions or at once. */
function poured(change: (step: Draft, draft: Draft) => void = () => {}): JobDocument {
  return changed(coldJob(), (draft) => {
    const { steps } = draft.process;
    const place = steps.findIndex(({ do: kind }: Draft) => kind === "add");
    steps[place] = { do: "charge", phase: "B", for: "10 min" };
    change(steps[place], draft);
  });
}

describe("oil that goes in by a schedule", () => {
  test("is judged addition by addition, and only where oil goes in", () => {
    const rows = (runPlan(coldJob()).emulsion?.schedules ?? []).flatMap((one) => ("rows" in one ? one.rows : []));
    const { beside, states } = answered(coldJob(), id);
    expect(states.met + states.notMet + states.notKnown).toBe(rows.length);
    expect(beside).toEqual({
      additions: rows.length,
      massFirst: rows[0]?.mass,
      massMax: Math.max(...rows.map(({ mass }) => mass)),
    });
  });

  test("offers no more additions: the schedule sets how many there are", () => {
    expect(leversOf(coldJob(), id)).toEqual([]);
  });

  test("in a stream or beyond what is known is not known, of the phase or for the reason that it has", () => {
    const stream = allJobsByName()["oil-by-stream"] as JobDocument;
    expect(answered(stream, id)).toMatchObject({ at: { step: 3 }, notKnown: [{ code: "no-method", of: "B" }] });
    const unread = changed(coldJob(), ({ bench }) => delete bench.emulsion.additionShareMax);
    expect(answered(unread, id)).toMatchObject({ verdict: "not-known", at: { step: 3 } });
    expect(answered(unread, id).notKnown[0]?.step).toBe(3);
  });
});

describe("the additions of the bench", () => {
  /** The job that repeats them, on a bench that also states a share that was taken up without oil. */
  const repeated = (share?: string): JobDocument =>
    changed(allJobsByName()["additions-as-at-the-bench"] as JobDocument, ({ bench }) => {
      if (share) bench.emulsion.additionShareMax = [{ oil: "0 % v/v", share }];
    });

  test("are the shares that were taken up, where the bench states no others", () => {
    expect(answered(repeated(), id)).toMatchObject({ verdict: "met", notKnown: [] });
  });

  test("are not known to be taken up where the bench states that so much is too much", () => {
    // 2.5 g into 60 g are 4.2 %.
    const { notKnown, states } = answered(repeated("4 %"), id);
    expect(notKnown).toEqual([{ code: "contradiction", field: "emulsion-share-max" }]);
    expect(states.met).toBeLessThan(15);
    expect(answered(repeated("50 %"), id)).toMatchObject({ verdict: "met", notKnown: [] });
  });
});

describe("oil that is charged", () => {
  test("at once is one addition, and has no number", () => {
    const { at, beside, figure } = answered(poured(), id);
    const mass = Number(beside?.["massFirst"]);
    expect(at).toEqual({ step: 3, place: "vessel" });
    expect(beside).toEqual({ additions: 1, massFirst: mass, massMax: mass });
    const outer = runPlan(coldJob()).weighing.lines.filter(({ phase }) => phase === "A");
    expect((figure.value ?? 0) * outer.reduce((sum, line) => sum + line.mass, 0)).toBeCloseTo(mass, 1);
  });

  test("in equal additions meets more with each, and is allowed more", () => {
    const [one] = asked(poured(), id);
    const all = Number(one?.beside?.["massFirst"]);
    const job = poured((step) => (step.equalAdditions = 3));
    const { at, beside, figure, limit } = answered(job, id);
    expect(beside).toEqual({
      additions: 3,
      massFirst: expect.closeTo(all / 3, 9),
      massMax: expect.closeTo(all / 3, 9),
    });
    // The first meets the gel former alone: 4 % of that are allowed.
    expect(at).toEqual({ step: 3, addition: 1, place: "vessel" });
    expect(figure.value).toBeCloseTo((one?.figure.value ?? 0) / 3, 9);
    expect(limit.max?.value).toBeCloseTo(0.04, 9);
  });

  test("in more than the bench allowed for the gel that is there is not met in the addition that is too much", () => {
    // From 50 % of oil on the bench allows twice as much and more: of many small additions a late one is nearest to its limit.
    const shares = [
      { oil: "0 % v/v", share: "60 %" },
      { oil: "50 % v/v", share: "8 %" },
      { oil: "85 % v/v", share: "8 %" },
    ];
    const job = poured((step, { bench }) => {
      step.equalAdditions = 10;
      bench.emulsion.additionShareMax = shares;
    });
    const { at, verdict, figure, limit } = answered(job, id);
    expect(verdict).toBe("not-met");
    expect(at.addition).toBeGreaterThan(1);
    expect(figure.value).toBeGreaterThan(limit.max?.value ?? Number.NaN);
  });

  test("can go in in up to a thousand additions, from as many as there are", () => {
    const what = { step: 3, field: "equalAdditions" };
    expect(leversOf(poured(), id)).toEqual([["more-additions", 1, 1000, what, "in whole numbers"]]);
    expect(
      leversOf(
        poured((step) => (step.equalAdditions = 5)),
        id,
      ),
    ).toEqual([["more-additions", 5, 1000, what, "in whole numbers"]]);
  });

  test("before the gel former meets it all at once, by the share that the bench allows without oil, and more additions do not help", () => {
    const job = poured((_step, { process }) => {
      const { steps } = process;
      const [former, stir, oil] = steps.splice(0, 3);
      steps.unshift(oil, former, stir);
    });
    const { at, figure, limit, beside } = answered(job, id);
    expect(at).toEqual({ step: 1, place: "vessel" });
    expect(limit.max?.value).toBeCloseTo(0.04, 9);
    expect(figure.value).toBeCloseTo(answered(poured(), id).figure.value ?? 0, 9);
    expect(beside?.["additions"]).toBe(1);
    expect(leversOf(job, id)).toEqual([]);
  });
});

test("a share just up to the bench's is within it, and one beyond it by more than the noise of doubles is not", () => {
  const { figure } = answered(poured(), id);
  const at = (share: number) =>
    answered(
      poured((_step, { bench }) => (bench.emulsion.additionShareMax = [{ oil: "0 % v/v", share: `${100 * share} %` }])),
      id,
    ).verdict;
  const share = figure.value ?? Number.NaN;
  expect([share * (1 - 1e-9), share, share * (1 + 1e-9)].map(at)).toEqual(["not-met", "met", "met"]);
});
