import { prepareJob } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { emulsionCurveOf, oilLawsOf, thickenedBy } from "../../src/plan/oil-laws.js";
import { runOf } from "../../src/plan/prepared-run.js";
import { otherwise } from "../../src/plan/unknown.js";
import { changed, coldJob, type Draft } from "../support/example.js";

const benchOf = (change: (bench: Draft) => void = () => {}) =>
  runOf(prepareJob(changed(coldJob(), ({ bench }) => change(bench)))).job.bench;
const read = (...readings: readonly Draft[]) =>
  benchOf(({ emulsion }) => (emulsion.thickness = { shearRate: "20 1/s", readings }));
const at = (bench: ReturnType<typeof benchOf>, oil: number, grains = 0) =>
  otherwise(
    () => emulsionCurveOf(bench, oil, grains),
    ({ field }) => field,
  );

describe("the curve of an emulsion along its oil", () => {
  const thin = { oil: "50 % v/v", viscosity: "1 Pa·s", flowIndex: 0.8, yieldStress: "1 Pa" };
  const thick = { oil: "80 % v/v", viscosity: "4 Pa·s", flowIndex: 0.5, yieldStress: "9 Pa" };

  test("takes two readings of its viscosity and of its flow index, and no fewer", () => {
    expect(at(read(thin, thick), 0.5)).toHaveProperty("law", "herschel-bulkley");
    expect(at(read(thick), 0.8)).toBe("emulsion-thickness");
    const { flowIndex: _, ...once } = thin;
    expect(at(read(once, thick), 0.8)).toBe("emulsion-thickness-flow-index");
  });

  test("has a yield stress by two readings of it, and is a power law by one", () => {
    const { yieldStress: _, ...without } = thin;
    expect(at(read(without, thick), 0.8)).toHaveProperty("law", "power-law");
    expect(at(read(thin, thick), 0.8)).toHaveProperty("yieldStress", expect.closeTo(9, 12));
  });

  test("goes through the stress that was read, at its shear rate", () => {
    const curve = at(read(thin, thick), 0.8);
    if (typeof curve !== "object" || curve.law !== "herschel-bulkley") throw new Error("a curve");
    // 4 Pa·s at 20 1/s are 80 Pa, of which 9 Pa are the yield stress.
    expect(curve.yieldStress + curve.consistency * 20 ** curve.flowIndex).toBeCloseTo(80, 9);
    expect(curve.flowIndex).toBeCloseTo(0.5, 12);
  });

  test("is as many times thicker with particles in all of its stress, whether it has a yield stress or none", () => {
    // Krieger and Dougherty: a tenth by volume of what packs at 0.64 [η] = 2.5.
    const factor = (1 - 0.1 / 0.64) ** (-2.5 * 0.64);
    expect(thickenedBy(0.1)).toBeCloseTo(factor, 9);
    const { yieldStress: _, ...without } = thin;
    for (const bench of [read(thin, thick), read(without, thick)]) {
      const [plain, grainy] = [at(bench, 0.8), at(bench, 0.8, 0.1)];
      if (typeof plain !== "object" || typeof grainy !== "object") throw new Error("two curves");
      expect("consistency" in plain && "consistency" in grainy && grainy.consistency / plain.consistency).toBeCloseTo(
        factor,
        9,
      );
      if ("yieldStress" in plain && "yieldStress" in grainy)
        expect(grainy.yieldStress / plain.yieldStress).toBeCloseTo(factor, 9);
    }
  });
});

describe("what the bench read along the oil fraction", () => {
  test("of one reading is the same at all of them, of several a table, of none nothing", () => {
    const shares = (count: number) =>
      oilLawsOf(
        benchOf(({ emulsion }) => {
          emulsion.additionShareMax = emulsion.additionShareMax.slice(0, count);
          if (count === 0) delete emulsion.additionShareMax;
        }),
      ).share;
    expect(shares(1)).toEqual({ law: "constant", value: 0.04 });
    expect(shares(2)).toEqual({
      law: "table",
      points: [
        { volumeFractionOil: 0, value: 0.04 },
        { volumeFractionOil: 0.5, value: 0.08 },
      ],
    });
    expect(shares(0)).toBeUndefined();
  });
});
