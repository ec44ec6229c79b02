import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);
const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("samples of a stability test", () => {
  const id = "samples-within-allowance";
  const limit = (change: (draft: Draft) => void) => answered(kettle(change), id);

  test("come out of the allowance that the test names, or of one for its samples", () => {
    expect(limit(() => {}).limit.max).toMatchObject({
      value: 0.15,
      basis: [{ of: "8 samples of 15 g, and 30 g for the bench" }],
    });
    // Of two that fit, the one that is named.
    const two = limit(({ batch }) =>
      batch.allowances.unshift({ kind: "samples", name: "samples of the test", stabilityTest: true }),
    );
    expect(two.limit.max?.value).toBe(0.15);
  });

  test("that no allowance is stated for are not known to be there", () => {
    const none = limit(({ stability, batch }) => {
      delete stability.allowance;
      batch.allowances = batch.allowances.filter(({ kind }: Draft) => kind !== "mass");
    });
    expect(none).toMatchObject({ verdict: "not-known", notKnown: [{ field: "stability-allowance" }] });
    expect(
      asked(
        kettle((draft) => delete draft.stability),
        id,
      ),
    ).toEqual([]);
  });
});

describe("storage below a transition", () => {
  const id = "stored-below-transition";

  test("is asked of each storage with a temperature, of a melt or a product with transitions of its own", () => {
    const { met, notMet, notKnown } = answered(exampleJob(), id).states;
    expect(met + notMet + notKnown).toBe(3);
    const { states } = answered(coldJob(), id);
    expect(states.met + states.notMet + states.notKnown).toBe(2);
    expect(
      asked(
        vessel(({ stability }) => delete stability.transitions),
        id,
      ),
    ).toEqual([]);
  });

  test("has the nearest transition on either side, and names the storage that decides", () => {
    const several = vessel(({ stability }) => {
      stability.transitions = [
        { name: "clouds", from: "-12 °C", to: "-5 °C" },
        { name: "thins", from: "2 °C", to: "4 °C" },
        { name: "melts", from: "50 °C", to: "55 °C" },
        { name: "parts", from: "60 °C", to: "70 °C" },
      ];
    });
    const { limit, beside, verdict } = answered(several, id);
    expect([limit.min?.value, limit.max?.value]).toEqual([4, 50]);
    expect([verdict, beside?.["condition"]]).toEqual(["met", "40 °C"]);
  });

  test("keeps the margin of the setting temperature on either side", () => {
    expect(answered(exampleJob(), id).margin).toEqual({ min: 2, max: 2 });
    const wide = kettle(({ process }) => (process.settingMargin = "5 K"));
    expect(answered(wide, id).margin).toEqual({ min: 5, max: 5 });
  });

  test("is not known where no transition is", () => {
    const unread = kettle(({ bench }) => delete bench.doses);
    expect(answered(unread, id)).toMatchObject({ verdict: "not-known", notKnown: [{ field: "bench-doses" }] });
  });
});
