import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked } from "../../support/asked.js";
import { changed, coldJob, type Draft } from "../../support/example.js";

const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("the gel as it is looked through", () => {
  const clear = "clarity-while-warm";
  /** Both phases charged at a temperature, in no time, and looked through at once. */
  const charged = (at: string) =>
    vessel(({ process, vessel: own, formula }) => {
      delete own.stirrer;
      formula.phases.pop();
      process.steps = [
        { do: "charge", phase: "A", at },
        { do: "charge", phase: "B", at },
        { do: "match clarity" },
        { do: "fill" },
      ];
    });

  test("is asked about in the step that does so", () => {
    expect(asked(coldJob(), clear).map(({ of, at }) => [of, at])).toEqual([
      [{ step: 5 }, { step: 5, place: "vessel" }],
    ]);
  });

  test.each([
    ["21.499 °C", 21],
    ["21.5 °C", 21.5],
    ["21.501 °C", 21.501],
  ])("at %s is looked at as at %s °C", (at, looked) => {
    expect(Number(answered(charged(at), clear).beside?.["temperature"])).toBeCloseTo(looked, 9);
  });

  test("is to be clear in the vessel if it will be so in the room, up to the difference that is allowed and no further", () => {
    const at = (mismatchAllowed: number) =>
      answered(
        vessel(({ bench }) => (bench.emulsion.mismatchAllowed = mismatchAllowed)),
        clear,
      );
    const apart = answered(coldJob(), "clarity-match");
    const { oil, gelFormer } = apart.beside as { oil: number; gelFormer: number };
    const value = Math.abs(oil - gelFormer);
    expect(at(value * 1.001).limit.max?.value).toBeCloseTo(value * 1.001, 12);
    expect(at(value).limit.max?.value).toBe(value);
    expect(at(value * 0.999).limit).toMatchObject({ min: { value: value * 0.999 } });
  });
});
