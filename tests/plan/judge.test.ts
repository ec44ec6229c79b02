import fc from "fast-check";
import { assumptionCodes, quantityCodes } from "gelwright/plan";
import { describe, expect, test } from "vitest";

import type { Figure, Limit, Verdict } from "../../src/plan/figure.js";
import { deciding, type Judged, judge, type Margin } from "../../src/plan/judge.js";
import { opened } from "../../src/plan/questions/question.js";

// Whole numbers, so that sums are exact and ends often meet.
const number = fc.integer({ min: -6, max: 6 });
const step = fc.integer({ min: 0, max: 4 });

/** A figure with both ends known. */
const closed: fc.Arbitrary<Figure> = fc.tuple(number, step).map(([min, width]) => ({ min, max: min + width }));

/** A figure, of which one end or both may be open. */
const figure: fc.Arbitrary<Figure> = fc
  .tuple(closed, fc.boolean(), fc.boolean())
  .map(([{ min, max }, below, above]) => ({ min: below ? null : min, max: above ? null : max }));

const limit: fc.Arbitrary<Limit> = fc.oneof(
  fc.record({ min: figure }),
  fc.record({ max: figure }),
  fc.record({ min: figure, max: figure }),
);

const margin: fc.Arbitrary<Margin> = fc.record({ min: step, max: step }, { requiredKeys: [] });

/** How far each end of a figure goes outwards; `null` opens it. */
const widening = fc.tuple(fc.option(step), fc.option(step));
type Widening = readonly [number | null, number | null];

function widened({ min, max }: Figure, [down, up]: Widening): Figure {
  return {
    min: min === null || down === null ? null : min - down,
    max: max === null || up === null ? null : max + up,
  };
}

function shifted({ min, max }: Figure, by: number): Figure {
  return { min: min === null ? null : min + by, max: max === null ? null : max + by };
}

/** The limit with each end changed. */
function each(one: Limit, change: (end: Figure, side: "min" | "max") => Figure): Limit {
  return { ...(one.min && { min: change(one.min, "min") }), ...(one.max && { max: change(one.max, "max") }) };
}

describe("the judge", () => {
  test("never meets a limit with a figure that is not known", () => {
    fc.assert(
      fc.property(limit, margin, (held, inHand) => {
        expect(judge({ min: null, max: null }, held, inHand).verdict).not.toBe("met");
      }),
    );
  });

  test("meets no limit that is not known", () => {
    fc.assert(
      fc.property(figure, margin, (found, inHand) => {
        for (const held of [{ min: { min: null, max: null } }, { max: { min: null, max: null } }, {}])
          expect(judge(found, held, inHand)).toMatchObject({ verdict: "not-known", side: "none" });
      }),
    );
  });

  test("keeps its verdict or knows it no more as figure and limit widen", () => {
    fc.assert(
      fc.property(figure, limit, margin, widening, widening, widening, (found, held, inHand, own, low, high) => {
        const before = judge(found, held, inHand).verdict;
        const wide = each(held, (end, side) => widened(end, side === "min" ? low : high));
        expect([before, "not-known"]).toContain(judge(widened(found, own), wide, inHand).verdict);
      }),
      { numRuns: 2000 },
    );
  });

  test("does not meet an empty limit, whatever the figure", () => {
    fc.assert(
      fc.property(figure, closed, closed, step, margin, (found, min, max, gap, inHand) => {
        const above = shifted(min, (max.max ?? 0) - (min.min ?? 0) + 1 + gap);
        expect(judge(found, { min: above, max }, inHand).verdict).toBe("not-met");
      }),
    );
  });

  test("neither meets a stricter limit than one that was not met, nor one with a larger margin", () => {
    fc.assert(
      fc.property(figure, limit, margin, step, step, margin, (found, held, inHand, up, down, more) => {
        const before = judge(found, held, inHand).verdict;
        const stricter = each(held, (end, side) => shifted(end, side === "min" ? up : -down));
        const larger = { min: (inHand.min ?? 0) + (more.min ?? 0), max: (inHand.max ?? 0) + (more.max ?? 0) };
        for (const after of [judge(found, stricter, inHand), judge(found, held, larger)]) {
          if (before !== "met") expect(after.verdict).not.toBe("met");
          if (before === "not-met") expect(after.verdict).toBe("not-met");
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("counts equality as inside, with the margin and without", () => {
    fc.assert(
      fc.property(number, step, (value, inHand) => {
        const at = (by: number): Figure => ({ min: value + by, max: value + by });
        const low = judge(at(inHand), { min: at(0) }, { min: inHand });
        const high = judge(at(-inHand), { max: at(0) }, { max: inHand });
        const between = judge(at(0), { min: at(0), max: at(0) });
        for (const one of [low, high, between]) {
          expect(one).toMatchObject({ verdict: "met", side: "none" });
          expect(one.room).toBeCloseTo(0, 12);
        }
      }),
    );
  });

  test("says on which side a figure lies that is not met, and by how much", () => {
    const held = { min: { min: 2, max: 3 }, max: { min: 7, max: 8 } };
    expect(judge({ min: 0, max: 1 }, held)).toEqual({ verdict: "not-met", side: "below", room: -3 });
    expect(judge({ min: 9, max: 10 }, held)).toEqual({ verdict: "not-met", side: "above", room: -3 });
    expect(judge({ min: 4, max: 5 }, held)).toEqual({ verdict: "met", side: "none", room: 1 });
    expect(judge({ min: 2, max: 5 }, held)).toEqual({ verdict: "not-known", side: "none", room: -1 });
    expect(judge({ min: null, max: 1 }, held)).toEqual({ verdict: "not-met", side: "below", room: null });
  });

  test("does not know a figure that only touches a limit which may lie higher", () => {
    const held = { min: { min: 3, max: 5 } };
    expect(judge({ min: 1, max: 2.999 }, held)).toMatchObject({ verdict: "not-met", side: "below" });
    expect(judge({ min: 1, max: 3 }, held)).toMatchObject({ verdict: "not-known", side: "none" });
  });

  test("takes a limit of a single value for a limit, and one whose ends have passed each other for none", () => {
    const [wide, at]: [Figure, Figure] = [
      { min: null, max: null },
      { min: 4, max: 4 },
    ];
    expect(judge(wide, { min: at, max: at })).toMatchObject({ verdict: "not-known", side: "none" });
    expect(judge(wide, { min: at, max: shifted(at, -0.001) })).toEqual({
      verdict: "not-met",
      side: "none",
      room: null,
    });
    expect(judge(wide, { min: at, max: shifted(at, 2) }, { min: 1, max: 1 })).toMatchObject({ verdict: "not-known" });
  });

  test("gives no distance to a limit that is open", () => {
    expect(judge({ min: 1, max: 2 }, { min: { min: 0, max: null } }).room).toBe(null);
    expect(judge({ min: 1, max: 2 }, { max: { min: null, max: 3 } }).room).toBe(null);
  });
});

describe("the state that decides", () => {
  const verdict = fc.constantFrom<Verdict>("met", "not-met", "not-known");
  const state: fc.Arbitrary<Judged<number>> = fc.record({
    verdict,
    side: fc.constant("none" as const),
    room: fc.option(number),
    state: fc.nat(),
  });
  const states = fc.array(state, { minLength: 1, maxLength: 8 });
  const order = {
    every: ["not-met", "not-known", "met"],
    some: ["met", "not-known", "not-met"],
  } as const;

  test.each(["every", "some"] as const)("is the first of %s in the order of verdicts", (quantifier) => {
    fc.assert(
      fc.property(states, (all) => {
        const expected = order[quantifier].find((one) => all.some((found) => found.verdict === one));
        expect(deciding(all, quantifier)?.verdict).toBe(expected);
      }),
    );
  });

  test.each(["every", "some"] as const)(
    "gives the same verdict and room in any order of the states, for %s",
    (quantifier) => {
      const shuffled = states.chain((all) =>
        fc.tuple(fc.constant(all), fc.shuffledSubarray([...all.keys()], { minLength: all.length })),
      );
      fc.assert(
        fc.property(shuffled, ([all, places]) => {
          const other = places.map((i) => all[i] as Judged<number>);
          const [one, two] = [deciding(all, quantifier), deciding(other, quantifier)];
          expect(two?.verdict).toBe(one?.verdict);
          expect(two?.room).toBe(one?.room);
        }),
      );
    },
  );

  test("is the one with the smallest room of every, and with the largest of some", () => {
    const of = (room: number | null): Judged<number | null> => ({ verdict: "met", side: "none", room, state: room });
    expect(deciding([of(3), of(1), of(2)], "every")?.room).toBe(1);
    expect(deciding([of(3), of(null), of(2)], "every")?.room).toBe(null);
    expect(deciding([of(1), of(3), of(null)], "some")?.room).toBe(3);
    expect(deciding([], "every")).toBeUndefined();
  });

  test.each(["every", "some"] as const)("is the first of %s that are alike", (quantifier) => {
    const alike = [0, 1, 2].map((i): Judged<number> => ({ verdict: "met", side: "none", room: 5, state: i }));
    expect(deciding(alike, quantifier)?.state).toBe(0);
  });

  test("is met no more once another state has to be", () => {
    fc.assert(
      fc.property(states, state, (all, more) => {
        const before = deciding(all, "every")?.verdict;
        if (before !== "met") expect(deciding([...all, more], "every")?.verdict).not.toBe("met");
        if (deciding(all, "some")?.verdict === "met") expect(deciding([...all, more], "some")?.verdict).toBe("met");
      }),
    );
  });
});

describe("an assumption", () => {
  const assumptions = fc.subarray([...assumptionCodes]);
  const quantity = fc.constantFrom(...quantityCodes);

  test("that opens an end keeps the verdict or makes it not known", () => {
    fc.assert(
      fc.property(figure, assumptions, quantity, limit, margin, (found, taken, of, held, inHand) => {
        const before = judge(found, held, inHand).verdict;
        const after = judge(opened({ ...found, assumptions: taken }, of), held, inHand).verdict;
        expect([before, "not-known"]).toContain(after);
      }),
      { numRuns: 2000 },
    );
  });

  test("opens the end on which the truth may lie", () => {
    const found: Figure = { min: 1, max: 1, value: 1 };
    const without = opened({ ...found, assumptions: ["heat-of-stirring-left-out"] }, "temperature");
    expect(without).toMatchObject({ min: 1, max: null });
    expect(opened({ ...found, assumptions: ["heat-loss-left-out"] }, "temperature")).toMatchObject({
      min: null,
      max: 1,
    });
    expect(opened({ ...found, assumptions: ["heat-loss-left-out"] }, "duration")).toMatchObject({ min: 1, max: 1 });
  });
});
