import { prepareJob } from "gelwright/plan";
import { expect, test } from "vitest";
import { yieldStressFigure } from "../../../src/plan/parts/yield-stress.js";
import { runOf } from "../../../src/plan/prepared-run.js";
import { changed, coldJob } from "../../support/example.js";

test("the yield stress of an emulsion that nobody read is that of its packed droplets, between the ends of their law", () => {
  const unread = changed(coldJob(), ({ bench }) => {
    for (const key of ["yieldStress", "strengthTrials", "flowCurve"]) delete bench[key];
    for (const reading of bench.emulsion.thickness.readings) delete reading.yieldStress;
  });
  const run = runOf(prepareJob(unread));
  const found = yieldStressFigure(run);
  const oil = run.moments.at(-1)?.before.charge.oilFraction() ?? Number.NaN;
  // Princen and Kiss 1989, from memory: droplets of 8 µm at 5 mN/m.
  const byTheory = (2 * 5e-3 * oil ** (1 / 3) * (-0.08 - 0.114 * Math.log10(1 - oil))) / 8e-6;
  expect(found.value).toBeCloseTo(byTheory, 6);
  expect(found.min).toBeCloseTo(0.7 * byTheory, 6);
  expect(found.max).toBeCloseTo(1.7 * byTheory, 6);
  expect(found.basis).toEqual([{ kind: "law", key: "packed-droplets" }]);
});
