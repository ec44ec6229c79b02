import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked } from "../../support/asked.js";
import { changed, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("the strength of the gel", () => {
  test("is asked about where the trials name a target", () => {
    expect(answered(exampleJob(), "gel-strength").limit.min?.value).toBe(20);
    expect(
      asked(
        kettle(({ bench }) => delete bench.strengthTrials.target),
        "gel-strength",
      ),
    ).toEqual([]);
    expect(
      asked(
        kettle(({ bench }) => delete bench.strengthTrials),
        "gel-strength",
      ),
    ).toEqual([]);
  });

  test("is the yield stress of the gel where trials are of that, and else what trials say", () => {
    const figure = (of: string) =>
      answered(
        kettle(({ bench }) => {
          bench.strengthTrials.of = of;
          if (of !== "yield stress") for (const one of bench.strengthTrials.trials) one.strength = "5 Pa";
        }),
        "gel-strength",
      );
    const { figure: own } = figure("yield stress");
    const suspended = answered(exampleJob(), "particles-stay-suspended").figure;
    expect(own).toEqual(suspended);
  });
});
