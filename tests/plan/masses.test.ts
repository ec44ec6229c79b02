import { CalculationError, type Fault } from "gelwright/error";
import { type JobDocument, prepareJob, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, type Draft, exampleJob } from "../support/example.js";

/** The one fault of a job that leaves nothing to weigh. */
function faultOf(job: JobDocument): Fault {
  try {
    runPlan(prepareJob(job));
  } catch (error) {
    if (error instanceof CalculationError && error.faults.length === 1) return error.faults[0] as Fault;
    throw error;
  }
  return expect.unreachable("a job without faults");
}

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("packs that are asked for by volume", () => {
  test("take a density of the product, or one of each material that has none, each of which is named once", () => {
    const { path, expected } = faultOf(
      kettle(({ formula: { materials, phases } }) => {
        delete materials.tocopherols.density;
        delete materials.fragrance.density;
        phases[0].lines.push({ material: "fragrance", amount: "0.1 %" });
      }),
    );
    expect(path).toBe("batch.density");
    const named = expected.match(/materials\.\w+\.density/g);
    expect(named?.sort()).toEqual(["materials.fragrance.density", "materials.tocopherols.density"]);
  });
});

describe("a film that is left to be predicted", () => {
  const without = (change: (bench: Draft) => void = () => {}) =>
    faultOf(
      kettle(({ batch, bench }) => {
        delete batch.allowances[2].thickness;
        for (const key of ["yieldStress", "strengthTrials", "viscosities"]) delete bench[key];
        change(bench);
      }),
    );

  test("takes what a yield stress follows from, and says so where its thickness would stand", () => {
    const { path, expected, rule } = without((bench) => delete bench.flowCurve);
    expect([path, rule]).toEqual(["batch.allowances[2].thickness", "missing"]);
    for (const field of ["bench.yieldStress", "bench.flowCurve", "bench.strengthTrials"])
      expect(expected).toContain(field);
    expect(expected).not.toContain("yieldStressBy");
  });

  test("takes more points, or how to read them, where those that there are show no yield stress", () => {
    const { expected } = without(({ flowCurve }) => {
      flowCurve.points = flowCurve.points.slice(0, 3);
    });
    expect(expected).toContain("bench.flowCurve with more points or its yieldStressBy");
  });
});
