import fc from "fast-check";
import { apparentViscosityAt, type FlowCurve, shearRateAt, shearStressAt, yieldStressOf } from "gelwright/laws";
import { expect, test } from "vitest";
import { anyCurve, between, logarithmic, relative } from "./arbitraries.js";

test("a stress leads back to the shear rate that it came from, and a rate to its stress", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1e-3, 1e4), (curve, shearRate) => {
      const stress = shearStressAt({ curve, shearRate });
      // Near the yield stress the rate hangs on the last digits of the stress, so it is compared as a stress.
      const back = shearRateAt({ curve, stress });
      expect(relative(shearStressAt({ curve, shearRate: back }), stress)).toBeLessThan(1e-13);
      fc.pre(stress > 2 * yieldStressOf(curve));
      expect(relative(back, shearRate)).toBeLessThan(1e-11);
    }),
  );
});

test("more shear takes more stress, and every curve but a thickening one thins", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1e-3, 1e3), between(1.01, 10), (curve, shearRate, faster) => {
      const [slow, fast] = [shearRate, shearRate * faster];
      expect(shearStressAt({ curve, shearRate: fast })).toBeGreaterThan(shearStressAt({ curve, shearRate: slow }));
      const ratio = apparentViscosityAt({ curve, shearRate: fast }) / apparentViscosityAt({ curve, shearRate: slow });
      if (!("flowIndex" in curve) || curve.flowIndex <= 1) expect(ratio).toBeLessThanOrEqual(1 + 1e-14);
    }),
  );
});

test("nothing flows at or below the yield stress, and the curve begins there", () => {
  fc.assert(
    fc.property(anyCurve, between(0, 1), (curve, share) => {
      const yieldStress = yieldStressOf(curve);
      expect(shearStressAt({ curve, shearRate: 0 })).toBe(yieldStress);
      expect(shearRateAt({ curve, stress: share * yieldStress })).toBe(0);
    }),
  );
});

test("Herschel and Bulkley's law holds Newton's, Bingham's and the power law as cases", () => {
  fc.assert(
    fc.property(
      between(0.1, 100),
      between(0.01, 50),
      between(0.2, 1.5),
      logarithmic(0.01, 1e3),
      (y, k, n, shearRate) => {
        const hb = (yieldStress: number, flowIndex: number): FlowCurve => ({
          law: "herschel-bulkley",
          yieldStress,
          consistency: k,
          flowIndex,
        });
        const pairs: readonly (readonly [FlowCurve, FlowCurve])[] = [
          [hb(0, 1), { law: "newton", viscosity: k }],
          [hb(0, n), { law: "power-law", consistency: k, flowIndex: n }],
          [hb(y, 1), { law: "bingham", yieldStress: y, plasticViscosity: k }],
        ];
        for (const [general, special] of pairs) {
          expect(shearStressAt({ curve: general, shearRate })).toBe(shearStressAt({ curve: special, shearRate }));
          const stress = y + 2 * k;
          expect(shearRateAt({ curve: general, stress })).toBe(shearRateAt({ curve: special, stress }));
        }
      },
    ),
  );
});

test("Carreau and Yasuda's law runs from one plateau to the other", () => {
  const curve = {
    law: "carreau-yasuda",
    viscosityZero: 80,
    viscosityInfinite: 0.05,
    timeConstant: 3,
    flowIndex: 0.3,
    transition: 1.5,
  } as const;
  expect(apparentViscosityAt({ curve, shearRate: 0 })).toBe(80);
  expect(relative(apparentViscosityAt({ curve, shearRate: 1e-9 }), 80)).toBeLessThan(1e-9);
  expect(relative(apparentViscosityAt({ curve, shearRate: 1e14 }), 0.05)).toBeLessThan(1e-5);
  const flat = { ...curve, flowIndex: 1 };
  expect(apparentViscosityAt({ curve: flat, shearRate: 7 })).toBe(80);
});

test("a fluid with a yield stress, or that thins without end, has no viscosity at rest", () => {
  const bingham = { law: "bingham", yieldStress: 5, plasticViscosity: 1 } as const;
  const thinning = { law: "power-law", consistency: 5, flowIndex: 0.5 } as const;
  for (const curve of [bingham, thinning])
    expect(() => apparentViscosityAt({ curve, shearRate: 0 })).toThrow("no finite viscosity at rest");
  expect(apparentViscosityAt({ curve: { law: "newton", viscosity: 3 }, shearRate: 0 })).toBe(3);
});

test("wrong constants are named with their place", () => {
  expect(() => yieldStressOf({ law: "bingham", yieldStress: -1, plasticViscosity: 1 })).toThrow("curve.yieldStress");
  expect(() => yieldStressOf({ law: "ellis" } as never)).toThrow('curve.law: found "ellis"');
  const upside = {
    law: "carreau-yasuda",
    viscosityZero: 1,
    viscosityInfinite: 2,
    timeConstant: 1,
    flowIndex: 0.5,
    transition: 2,
  } as const;
  expect(() => yieldStressOf(upside)).toThrow(
    "curve.viscosityInfinite: found 2, expected no more than viscosityZero, 1",
  );
});
