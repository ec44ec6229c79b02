import fc from "fast-check";
import type { FlowCurve } from "gelwright/laws";
import { between } from "../support/between.js";

export { between };

/** Numbers spread evenly over the decades between two. */
export const logarithmic = (min: number, max: number): fc.Arbitrary<number> =>
  between(Math.log(min), Math.log(max)).map(Math.exp);

export const relative = (actual: number, expected: number): number => Math.abs(actual / expected - 1);

const plastic = { yieldStress: between(0.1, 100), plasticViscosity: logarithmic(0.01, 50) };

/** Curves such as gels and oils have. */
export const anyCurve: fc.Arbitrary<FlowCurve> = fc.oneof(
  fc.record({ law: fc.constant("newton" as const), viscosity: logarithmic(0.001, 100) }),
  fc.record({
    law: fc.constant("power-law" as const),
    consistency: logarithmic(0.1, 100),
    flowIndex: between(0.2, 1.4),
  }),
  fc.record({ law: fc.constant("bingham" as const), ...plastic }),
  fc.record({ law: fc.constant("casson" as const), ...plastic }),
  fc.record({
    law: fc.constant("herschel-bulkley" as const),
    yieldStress: between(0.1, 100),
    consistency: logarithmic(0.1, 100),
    flowIndex: between(0.2, 1.4),
  }),
  fc.record({
    law: fc.constant("carreau-yasuda" as const),
    viscosityZero: logarithmic(1, 1000),
    viscosityInfinite: between(0, 0.5),
    timeConstant: logarithmic(0.01, 100),
    flowIndex: between(0.2, 1),
    transition: between(0.5, 4),
  }),
);

/** The same curve where stresses are counted in units `stresses` times smaller and rates `rates` times smaller. */
export function rescaled(curve: FlowCurve, stresses: number, rates: number): FlowCurve {
  const viscosities = stresses / rates;
  switch (curve.law) {
    case "newton":
      return { ...curve, viscosity: curve.viscosity * viscosities };
    case "power-law":
      return { ...curve, consistency: (curve.consistency * stresses) / rates ** curve.flowIndex };
    case "herschel-bulkley":
      return {
        ...curve,
        yieldStress: curve.yieldStress * stresses,
        consistency: (curve.consistency * stresses) / rates ** curve.flowIndex,
      };
    case "carreau-yasuda":
      return {
        ...curve,
        viscosityZero: curve.viscosityZero * viscosities,
        viscosityInfinite: curve.viscosityInfinite * viscosities,
        timeConstant: curve.timeConstant / rates,
      };
    default:
      return {
        ...curve,
        yieldStress: curve.yieldStress * stresses,
        plasticViscosity: curve.plasticViscosity * viscosities,
      };
  }
}
