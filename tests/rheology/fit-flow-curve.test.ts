import fc from "fast-check";
import { type FlowCurve, shearStressAt } from "gelwright/laws";
import { chooseFlowCurve, type FlowModel, fitFlowCurve, fittedStressAt } from "gelwright/rheology";
import { expect, test } from "vitest";
import { anyCurve, between, logarithmic, relative, rescaled } from "./arbitraries.js";

const rates = [0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30, 100, 300, 1000];
const read = (curve: FlowCurve, at: readonly number[] = rates) =>
  at.map((shearRate) => ({ shearRate, stress: shearStressAt({ curve, shearRate }) }));
const modelOf = ({ law }: FlowCurve): FlowModel => law;

/** Repeatable scatter: each reading off by its own share of `size`. */
const scatter = (points: ReturnType<typeof read>, size: number) =>
  points.map(({ shearRate, stress }, i) => ({
    shearRate,
    stress: stress * (1 + size * Math.sin(12.9898 * (i + 1) ** 2)),
  }));

const yielding = anyCurve.filter(({ law }) => law !== "carreau-yasuda");

test("readings without scatter give back the curve that they were taken from", () => {
  fc.assert(
    fc.property(yielding, fc.constantFrom("relative", "absolute"), (curve, weighting) => {
      // A yield stress that is lost beside the lowest reading, or a flow that is lost beside it, cannot come back.
      if ("yieldStress" in curve) {
        const lowest = shearStressAt({ curve, shearRate: 0.01 });
        const highest = shearStressAt({ curve, shearRate: 1000 });
        fc.pre(curve.yieldStress > 0.02 * lowest && highest > 1.2 * curve.yieldStress);
        fc.pre(weighting === "relative" || curve.yieldStress > 1e-3 * highest);
      }
      const points = read(curve);
      const fit = fitFlowCurve({ model: modelOf(curve), points, weighting: weighting as "relative" });
      for (const { shearRate, stress } of points)
        expect(Math.abs(shearStressAt({ curve: fit.curve, shearRate }) - stress)).toBeLessThan(
          1e-8 * (weighting === "relative" ? stress : (points.at(-1)?.stress ?? 0)),
        );
    }),
  );
});

test("Carreau's curve comes back from readings that span both bends, held or fitted at high rates", () => {
  fc.assert(
    fc.property(
      logarithmic(1, 1000),
      logarithmic(0.1, 10),
      between(0.2, 0.7),
      between(0.01, 0.1),
      (viscosityZero, timeConstant, flowIndex, viscosityInfinite) => {
        const curve = {
          law: "carreau-yasuda",
          viscosityZero,
          viscosityInfinite,
          timeConstant,
          flowIndex,
          transition: 2,
        } as const;
        const points = read(
          curve,
          [...Array(24).keys()].map((i) => 1e-3 * 3 ** i),
        );
        const fitted = fitFlowCurve({ model: "carreau", points });
        const held = fitFlowCurve({ model: "carreau", points, viscosityInfinite });
        for (const fit of [fitted, held])
          for (const name of ["viscosityZero", "timeConstant", "flowIndex"] as const)
            expect(relative((fit.curve as typeof curve)[name], curve[name])).toBeLessThan(1e-6);
        expect(held.parameters).not.toContain("viscosityInfinite");
      },
    ),
    { numRuns: 40 },
  );
});

test("the order of the readings does not matter", () => {
  const points = scatter(read({ law: "herschel-bulkley", yieldStress: 12, consistency: 8, flowIndex: 0.5 }), 0.02);
  const one = fitFlowCurve({ model: "herschel-bulkley", points });
  const other = fitFlowCurve({ model: "herschel-bulkley", points: [...points].reverse() });
  for (const name of one.parameters)
    expect(relative(other.standardErrors[name] as number, one.standardErrors[name] as number)).toBeLessThan(1e-8);
});

test("the same readings in other units give the same curve in those units", () => {
  fc.assert(
    fc.property(
      fc.constantFrom<FlowCurve>(
        { law: "herschel-bulkley", yieldStress: 12, consistency: 8, flowIndex: 0.5 },
        { law: "casson", yieldStress: 12, plasticViscosity: 0.5 },
        { law: "bingham", yieldStress: 12, plasticViscosity: 0.5 },
      ),
      logarithmic(1e-6, 1e6),
      logarithmic(1e-6, 1e6),
      fc.constantFrom<"relative" | "absolute">("relative", "absolute"),
      (curve, stresses, faster, weighting) => {
        const points = scatter(read(curve), 0.02);
        const fit = fitFlowCurve({ model: modelOf(curve), points, weighting });
        const other = fitFlowCurve({
          model: modelOf(curve),
          weighting,
          points: points.map(({ shearRate, stress }) => ({ shearRate: shearRate * faster, stress: stress * stresses })),
        });
        const expected = rescaled(fit.curve, stresses, faster) as unknown as Record<string, number>;
        for (const name of fit.parameters)
          expect(
            relative((other.curve as unknown as Record<string, number>)[name] as number, expected[name] as number),
          ).toBeLessThan(1e-7);
        expect(
          relative(
            other.standardErrors["yieldStress"] as number,
            (fit.standardErrors["yieldStress"] as number) * stresses,
          ),
        ).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 60 },
  );
});

test("residuals of a fit with an intercept add up to nothing, and no small change of a parameter lowers their squares", () => {
  const points = scatter(read({ law: "herschel-bulkley", yieldStress: 12, consistency: 8, flowIndex: 0.5 }), 0.03);
  const fit = fitFlowCurve({ model: "herschel-bulkley", points, weighting: "absolute" });
  expect(Math.abs(fit.residuals.reduce((sum, one) => sum + one, 0))).toBeLessThan(1e-9);
  const squares = (curve: FlowCurve) =>
    points.reduce((sum, { shearRate, stress }) => sum + (stress - shearStressAt({ curve, shearRate })) ** 2, 0);
  for (const name of fit.parameters)
    for (const change of [0.9999, 1.0001]) {
      const moved = {
        ...fit.curve,
        [name]: ((fit.curve as unknown as Record<string, number>)[name] as number) * change,
      };
      expect(squares(moved as FlowCurve)).toBeGreaterThan(fit.sumOfSquares);
    }
});

test("the band of a straight line is narrowest amid its readings, and is what a textbook line has", () => {
  const points = scatter(read({ law: "bingham", yieldStress: 12, plasticViscosity: 0.5 }, [10, 20, 30, 40, 50]), 0.02);
  const fit = fitFlowCurve({ model: "bingham", points, weighting: "absolute" });
  // For a straight line: s √(1/n + (x − x̄)²/Sxx); here x̄ = 30 and Sxx = 1000.
  for (const shearRate of [5, 30, 80]) {
    const expected = fit.standardDeviation * Math.sqrt(1 / 5 + (shearRate - 30) ** 2 / 1000);
    expect(relative(fittedStressAt({ fit, shearRate }).standardError, expected)).toBeLessThan(1e-10);
  }
  expect([5, 30, 80].map((shearRate) => fittedStressAt({ fit, shearRate }).extrapolated)).toEqual([true, false, true]);
});

test("95 % of bands are as wide as tables say, and more confidence makes them wider", () => {
  const points = scatter(read({ law: "bingham", yieldStress: 12, plasticViscosity: 0.5 }, [10, 20, 30, 40, 50]), 0.02);
  const fit = fitFlowCurve({ model: "bingham", points });
  const reach = (confidence?: number) => {
    const found = fittedStressAt({ fit, shearRate: 30, ...(confidence !== undefined && { confidence }) });
    expect(found.stress - found.min).toBeCloseTo(found.max - found.stress, 12);
    return (found.max - found.stress) / found.standardError;
  };
  // Five readings less two parameters: 3.182, 2.353 and 5.841 (NIST/SEMATECH e-Handbook, section 1.3.6.7.2).
  expect(reach()).toBeCloseTo(3.182, 3);
  expect(reach(0.9)).toBeCloseTo(2.353, 3);
  expect(reach(0.99)).toBeCloseTo(5.841, 3);
  expect(() => fittedStressAt({ fit, shearRate: 30, confidence: 1 })).toThrow("above 0 and below 1");
  expect(() => fittedStressAt({ fit: { ...fit, degreesOfFreedom: 0 }, shearRate: 30 })).toThrow("degreesOfFreedom");
});

test("the choice does not pay for a parameter that scatter alone asks for", () => {
  const truth = { law: "bingham", yieldStress: 12, plasticViscosity: 0.5 } as const;
  for (const size of [0, 0.002, 0.01, 0.03]) {
    const { best, candidates } = chooseFlowCurve({ points: scatter(read(truth), size) });
    expect(best.model).toBe("bingham");
    expect(candidates.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(candidates[0]?.difference).toBe(0);
  }
});

test("the choice takes the parameters that the readings do ask for", () => {
  const cases: readonly FlowCurve[] = [
    { law: "newton", viscosity: 2 },
    { law: "power-law", consistency: 20, flowIndex: 0.6 },
    { law: "casson", yieldStress: 12, plasticViscosity: 0.5 },
    { law: "herschel-bulkley", yieldStress: 12, consistency: 8, flowIndex: 0.5 },
  ];
  for (const truth of cases) expect(chooseFlowCurve({ points: scatter(read(truth), 0.01) }).best.model).toBe(truth.law);
});

test("models that the readings cannot carry are named with what is missing", () => {
  const { refused, best } = chooseFlowCurve({ points: read({ law: "newton", viscosity: 2 }) });
  expect(best.model).toBe("newton");
  const reasonOf = (model: FlowModel) => refused.find((one) => one.model === model)?.reason ?? "";
  expect(reasonOf("carreau")).toMatch(/no thinning|readings that show what it asks for/);
  const few = chooseFlowCurve({ points: read({ law: "newton", viscosity: 2 }, [1, 2, 4, 8]) });
  expect(few.refused.find(({ model }) => model === "bingham")?.reason).toContain(
    "at least 5 readings to weigh bingham",
  );
});

test("a gel that plainly yields is not called Newtonian, however few its readings are", () => {
  const yields = { law: "herschel-bulkley", yieldStress: 24, consistency: 9, flowIndex: 0.45 } as const;
  // Four readings can weigh no model against another but Newton's.
  expect(() => chooseFlowCurve({ points: read(yields, [1, 3, 10, 30]) })).toThrow(
    /newton misses them by .* scatter by 10.0 %/,
  );
  const { best, candidates, refused } = chooseFlowCurve({ points: read(yields, [1, 3, 10, 30, 100]) });
  expect(["bingham", "casson"]).toContain(best.model);
  expect(candidates.map(({ fit }) => fit.model)).not.toContain("newton");
  expect(refused.find(({ model }) => model === "newton")?.reason).toContain("newton misses them by");
});

test("no gel whose yield stress is at least a third of its lowest stress is called Newtonian", () => {
  fc.assert(
    fc.property(yielding, between(4, 11), (curve, count) => {
      const points = scatter(read(curve, rates.slice(0, Math.floor(count))), 0.05);
      fc.pre("yieldStress" in curve && curve.yieldStress > (points[0]?.stress ?? 0) / 3);
      try {
        expect(chooseFlowCurve({ points }).best.model).not.toBe("newton");
      } catch (error) {
        expect(String(error)).toContain("newton misses them by");
      }
    }),
    { numRuns: 60 },
  );
});

// 1.5235 is the root of chi squared over its degrees of freedom, 99 % and ten of them: scipy 1.17.1, chi2.ppf(0.99, 10).
test("a model competes just below the limit of what the scatter explains, and just above it does not", () => {
  const points = scatter(read({ law: "newton", viscosity: 2 }), 0.08);
  const { standardDeviation, degreesOfFreedom } = fitFlowCurve({ model: "newton", points });
  expect(degreesOfFreedom).toBe(10);
  const choose = (share: number) =>
    chooseFlowCurve({ points, models: ["newton"], scatter: (standardDeviation / 1.5235) * share });
  expect(choose(1.002).best.model).toBe("newton");
  expect(() => choose(0.998)).toThrow("newton misses them by");
});

test("with absolute weighting the scatter is in pascal, and not looked at unless it is stated", () => {
  const points = read({ law: "bingham", yieldStress: 12, plasticViscosity: 0.5 }, [1, 3, 10, 30]);
  const given = { points, models: ["newton"], weighting: "absolute" } as const;
  expect(chooseFlowCurve(given).best.model).toBe("newton");
  const { standardDeviation } = fitFlowCurve({ model: "newton", points, weighting: "absolute" });
  // With three degrees of freedom: 1.9446.
  expect(chooseFlowCurve({ ...given, scatter: (standardDeviation / 1.9446) * 1.002 }).best.model).toBe("newton");
  expect(() => chooseFlowCurve({ ...given, scatter: (standardDeviation / 1.9446) * 0.998 })).toThrow(
    /Pa from readings/,
  );
  for (const wrong of [0, -0.1, Number.NaN, Number.POSITIVE_INFINITY, "5 %" as never])
    expect(() => chooseFlowCurve({ ...given, scatter: wrong })).toThrow("scatter: found");
});

test.each([
  [
    "too few readings",
    "herschel-bulkley",
    [1, 10, 100],
    "for herschel-bulkley at least 4 readings at 3 or more different shear rates",
  ],
  ["all at one rate", "bingham", [10, 10, 10, 10], "found 4 readings at 1 shear rates"],
  ["none below the bend", "carreau", [100, 200, 400, 800, 1600, 3200], "no plateau"],
] as const)("ill-posed, %s: refused with the readings that are missing", (_what, model, at, message) => {
  const curve = {
    law: "carreau-yasuda",
    viscosityZero: 50,
    viscosityInfinite: 0.1,
    timeConstant: 5,
    flowIndex: 0.4,
    transition: 2,
  } as const;
  expect(() => fitFlowCurve({ model, points: read(curve, at) })).toThrow(message);
});

test("a plain liquid does not thin, whichever model with plateaus is asked for and however its readings round", () => {
  fc.assert(
    fc.property(
      logarithmic(1e-3, 1e3),
      fc.constantFrom<FlowModel>("carreau", "carreau-yasuda"),
      fc.constantFrom<"relative" | "absolute">("relative", "absolute"),
      (viscosity, model, weighting) => {
        const points = read({ law: "newton", viscosity });
        expect(() => fitFlowCurve({ model, points, weighting })).toThrow(/no thinning|readings that show/);
      },
    ),
  );
});

test("a gel that yields has no plateau at rest, whichever way its readings scatter", () => {
  const yields = { law: "herschel-bulkley", yieldStress: 24, consistency: 9, flowIndex: 0.45 } as const;
  for (const size of [0, 0.01, 0.03])
    for (const model of ["carreau", "carreau-yasuda"] as const)
      expect(() =>
        fitFlowCurve({ model, points: scatter(read(yields, [0.1, 0.3, 1, 3, 10, 30, 100, 300]), size) }),
      ).toThrow("no plateau at rest");
});

test("a yield stress that would be negative is no yield stress", () => {
  const points = read({ law: "power-law", consistency: 5, flowIndex: 1.3 });
  expect(() => fitFlowCurve({ model: "bingham", points, weighting: "absolute" })).toThrow(
    "found no yield stress, expected for bingham readings below 0.01 1/s",
  );
  expect(() => fitFlowCurve({ model: "casson", points, weighting: "absolute" })).toThrow("no yield stress");
});

test("stresses that fall with the rate fit no flow curve", () => {
  const points = [1, 2, 4, 8].map((shearRate) => ({ shearRate, stress: 20 / shearRate }));
  expect(() => fitFlowCurve({ model: "power-law", points })).toThrow("stresses that rise with the shear rate");
  expect(() => fitFlowCurve({ model: "power-law", points, weighting: "loose" as never })).toThrow("weighting");
  expect(() => fitFlowCurve({ model: "sisko" as never, points })).toThrow('model: found "sisko"');
});
