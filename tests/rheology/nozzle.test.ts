import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { shearRateAt, yieldStressOf } from "gelwright/laws";
import { flowThroughNozzle, nozzleFlow, ohnesorgeNumber } from "gelwright/rheology";
import { expect, test } from "vitest";
import { march } from "../support/ode.js";
import { anyCurve, between, logarithmic, relative } from "./arbitraries.js";

const diameter = 0.002;

test("the flow that a pressure pushes takes that pressure, for any curve", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1e-9, 1e-5), (curve, flowRate) => {
      const { pressureGradient } = nozzleFlow({ curve, diameter, flowRate });
      const back = flowThroughNozzle({ curve, diameter, pressureGradient });
      // Near the yield stress the flow hangs on the last digits of the pressure.
      const { plug } = nozzleFlow({ curve, diameter, flowRate });
      fc.pre(plug < 0.9);
      expect(relative(back, flowRate)).toBeLessThan(1e-10);
    }),
  );
});

test("a power-law fluid has the correction of Rabinowitsch, whatever the flow", () => {
  fc.assert(
    fc.property(
      between(0.2, 1.5),
      logarithmic(0.1, 100),
      logarithmic(1e-9, 1e-5),
      (flowIndex, consistency, flowRate) => {
        const { correction, plug } = nozzleFlow({
          curve: { law: "power-law", consistency, flowIndex },
          diameter,
          flowRate,
        });
        expect(relative(correction, (3 * flowIndex + 1) / (4 * flowIndex))).toBeLessThan(1e-12);
        expect(plug).toBe(0);
      },
    ),
  );
});

test("for any curve the correction is that of the local slope of flow against stress", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1e-7, 1e-5), (curve, flowRate) => {
      const { correction, plug } = nozzleFlow({ curve, diameter, flowRate });
      fc.pre(plug < 0.9);
      const [less, more] = [0.999, 1.001].map((share) => nozzleFlow({ curve, diameter, flowRate: flowRate * share }));
      const slope = Math.log(1.001 / 0.999) / Math.log((more?.stressWall ?? 0) / (less?.stressWall ?? 0));
      expect(relative(correction, (3 + slope) / 4)).toBeLessThan(1e-5);
    }),
  );
});

test("Newton's fluid follows Hagen and Poiseuille, Bingham's Buckingham and Reiner", () => {
  const radius = diameter / 2;
  const poiseuille = (viscosity: number, gradient: number) => (Math.PI * radius ** 4 * gradient) / (8 * viscosity);
  const newton = { law: "newton", viscosity: 3 } as const;
  expect(
    relative(flowThroughNozzle({ curve: newton, diameter, pressureGradient: 1e5 }), poiseuille(3, 1e5)),
  ).toBeLessThan(1e-14);
  fc.assert(
    fc.property(between(0.01, 0.99), (plug) => {
      const curve = { law: "bingham", yieldStress: (plug * 1e5 * radius) / 2, plasticViscosity: 3 } as const;
      const expected = poiseuille(3, 1e5) * (1 - (4 / 3) * plug + plug ** 4 / 3);
      const flow = flowThroughNozzle({ curve, diameter, pressureGradient: 1e5 });
      expect(Math.abs(flow - expected)).toBeLessThan(1e-14 * poiseuille(3, 1e5));
    }),
  );
});

test("the flow of any curve agrees with an ODE solver across the bore to 1e-8", () => {
  fc.assert(
    fc.property(anyCurve, between(1.2, 10), (curve, excess) => {
      const stressWall = excess * Math.max(5, yieldStressOf(curve));
      const still = yieldStressOf(curve) / stressWall;
      const rate = shearRateAt({ curve, stress: stressWall });
      // ∫ x² rate dx from the plug to the wall, in parts of radius and wall shear rate.
      const [moment = 0] = march(
        (x) => [((still + x) ** 2 * shearRateAt({ curve, stress: stressWall * (still + x) })) / rate],
        [0],
        1 - still,
      );
      const radius = diameter / 2;
      const flow = flowThroughNozzle({ curve, diameter, pressureGradient: (2 * stressWall) / radius });
      expect(relative(flow, Math.PI * radius ** 3 * moment * rate)).toBeLessThan(1e-8);
    }),
    { numRuns: 60 },
  );
});

test("a yield stress holds a small pressure for good, and a spray of it gets no number", () => {
  const curve = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
  expect(flowThroughNozzle({ curve, diameter, pressureGradient: 2e4 })).toBe(0);
  expect(flowThroughNozzle({ curve, diameter, pressureGradient: 2.01e4 })).toBeGreaterThan(0);
  const spray = { shearRate: 1e4, density: 900, surfaceTension: 0.03, diameter: 3e-4 };
  expect(() => ohnesorgeNumber({ ...spray, curve })).toThrow(
    "curve: found a yield stress of 10 Pa, expected a fluid without yield stress: with one, no number says whether a jet breaks up",
  );
  expect(ohnesorgeNumber({ ...spray, curve: { ...curve, yieldStress: 0 } })).toBeCloseTo(
    0.08 / Math.sqrt(900 * 0.03 * 3e-4),
    12,
  );
});

test("at the ends of what a double holds there is a finite answer or a refusal, and no NaN", () => {
  const extreme = fc.constantFrom(5e-324, 1e-300, 1e-150, 1e-30, 1, 1e30, 1e150, 1e308);
  fc.assert(
    fc.property(anyCurve, extreme, extreme, (curve, bore, flowRate) => {
      let flow: object = {};
      try {
        flow = nozzleFlow({ curve, diameter: bore, flowRate });
      } catch (error) {
        if (!(error instanceof CalculationError)) throw error;
      }
      expect(Object.values(flow).every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
