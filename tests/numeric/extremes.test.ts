import { heat } from "gelwright";
import { expect, test } from "vitest";
import { mieEfficiency } from "../../src/gel/mie.js";
import { logMean } from "../../src/heat/log-mean.js";
import { normalBelow } from "../../src/numeric/normal.js";
import { fisherAbove, studentBeyond } from "../../src/numeric/tails.js";
import { truncated } from "../../src/packing/truncated.js";
import reference from "./extremes.json" with { type: "json" };

type Inputs = Readonly<Record<string, number>>;

const calls: Readonly<Record<string, (inputs: never) => number>> = {
  "heat.coolingTime": heat.coolingTime,
  "heat.heatingTime.duration": (inputs: Parameters<typeof heat.heatingTime>[0]) => heat.heatingTime(inputs).duration,
  "heat.heatingTime.energyLost": (inputs: Parameters<typeof heat.heatingTime>[0]) =>
    heat.heatingTime(inputs).energyLost,
  "heat.relativeTemperature": heat.relativeTemperature,
  mieEfficiency: ({ size = Number.NaN, ratio = Number.NaN }: Inputs) => mieEfficiency(size, ratio),
  normalBelow: ({ x = Number.NaN }: Inputs) => normalBelow(x),
  studentBeyond: ({ t = Number.NaN, degrees = Number.NaN }: Inputs) => studentBeyond(t, degrees),
  fisherAbove: ({ ratio = Number.NaN, above = Number.NaN, below = Number.NaN }: Inputs) =>
    fisherAbove(ratio, above, below),
  logMean: ({ one = Number.NaN, other = Number.NaN }: Inputs) => logMean(one, other),
  "truncated.share": ({ from = Number.NaN, to = Number.NaN }: Inputs) => truncated(from, to).share,
  "truncated.mean": ({ from = Number.NaN, to = Number.NaN }: Inputs) => truncated(from, to).powers[0],
};

test.each(reference.cases)("$call at $inputs keeps its digits: $why", ({ call, inputs, expected, bound }) => {
  const found = calls[call]?.(inputs as never) ?? Number.NaN;
  expect(Math.abs(found / expected - 1)).toBeLessThanOrEqual(bound);
});
