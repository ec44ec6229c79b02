import { runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { changed, exampleJob } from "../support/example.js";

type Draft = ReturnType<typeof JSON.parse>;

const standing = (temperatureMax: unknown) =>
  changed(exampleJob(), ({ pack }: Draft) => Object.assign(pack, { temperatureMax }));

test("the hottest product that a pack stands is a temperature", () => {
  expect(() => runPlan(standing("60 °C"))).not.toThrow();
  for (const [written, expected] of [
    ["60", /unit/],
    ["60 K/min", /pack\.temperatureMax/],
    [60, /pack\.temperatureMax/],
  ] as const)
    expect(() => runPlan(standing(written))).toThrow(expected);
});
