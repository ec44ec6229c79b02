import { notNegative, positive, refuse, result, show, variant } from "../guards.js";
import { root } from "../numeric/root.js";
import type { FlowCurve } from "./flow-curve.js";
import * as known from "./known.js";

/** A flow curve that has been checked, ready to be evaluated; rates and stresses are taken as they come. */
export interface CompiledFlowCurve {
  /** Stress below which it does not flow [Pa], 0 for a fluid that always flows. */
  readonly yieldStress: number;
  /** Viscosity at rest [Pa·s], where it has one. */
  readonly viscosityZero?: number;
  readonly stressOf: (rate: number) => number;
  /** The rate at a stress, 0 at and below the yield stress. */
  readonly rateOf: (stress: number) => number;
}

/** τ = τ_y + K γ̇ⁿ, of which Newton's, Bingham's and the power law are cases. */
function herschelBulkley(yieldStress: number, consistency: number, index: number): CompiledFlowCurve {
  return {
    yieldStress,
    stressOf: (rate) => yieldStress + consistency * rate ** index,
    rateOf: (stress) => (stress > yieldStress ? ((stress - yieldStress) / consistency) ** (1 / index) : 0),
  };
}

function carreau(zero: number, infinite: number, time: number, index: number, bend: number): CompiledFlowCurve {
  const slopeMin = Math.min(1, index);
  const stressOf = (rate: number): number =>
    rate * (infinite + (zero - infinite) * (1 + (time * rate) ** bend) ** ((index - 1) / bend));
  return {
    yieldStress: 0,
    viscosityZero: zero,
    stressOf,
    rateOf: (stress) => {
      if (!(stress > 0)) return 0;
      const guess = Math.log(stress / zero);
      const off = (logRate: number): number => Math.log(stressOf(Math.exp(logRate)) / stress);
      // On logarithmic axes the curve rises by at least `slopeMin`, so the answer is no further off than this.
      const reach = (Math.abs(off(guess)) / slopeMin) * (1 + 1e-9) + 1e-9;
      return Math.exp(root(off, guess - reach, guess + reach, "shear rate", 1e-15));
    },
  };
}

/** Checks a curve, which faults call `path`. */
export function compileFlowCurve(curve: FlowCurve, path: string): CompiledFlowCurve {
  variant(curve, path, "law", known.flowCurve);
  const above = (value: number, name: string): number => positive(value, `${path}.${name}`);
  switch (curve.law) {
    case "newton": {
      const viscosity = above(curve.viscosity, "viscosity");
      return { ...herschelBulkley(0, viscosity, 1), viscosityZero: viscosity };
    }
    case "power-law":
      return herschelBulkley(0, above(curve.consistency, "consistency"), above(curve.flowIndex, "flowIndex"));
    case "bingham":
      return herschelBulkley(
        notNegative(curve.yieldStress, `${path}.yieldStress`),
        above(curve.plasticViscosity, "plasticViscosity"),
        1,
      );
    case "casson": {
      const yieldStress = notNegative(curve.yieldStress, `${path}.yieldStress`);
      const plastic = above(curve.plasticViscosity, "plasticViscosity");
      const rootOfYield = Math.sqrt(yieldStress);
      return {
        yieldStress,
        stressOf: (rate) => yieldStress + plastic * rate + 2 * rootOfYield * Math.sqrt(plastic * rate),
        rateOf: (stress) => (stress > yieldStress ? (Math.sqrt(stress) - rootOfYield) ** 2 / plastic : 0),
      };
    }
    case "herschel-bulkley":
      return herschelBulkley(
        notNegative(curve.yieldStress, `${path}.yieldStress`),
        above(curve.consistency, "consistency"),
        above(curve.flowIndex, "flowIndex"),
      );
    case "carreau-yasuda": {
      const zero = above(curve.viscosityZero, "viscosityZero");
      const infinite = notNegative(curve.viscosityInfinite, `${path}.viscosityInfinite`);
      if (infinite > zero)
        refuse("input", `${path}.viscosityInfinite`, infinite, `no more than viscosityZero, ${zero}`);
      return carreau(
        zero,
        infinite,
        above(curve.timeConstant, "timeConstant"),
        above(curve.flowIndex, "flowIndex"),
        above(curve.transition, "transition"),
      );
    }
    default:
      return refuse("input", `${path}.law`, show((curve as { law: unknown }).law), "a flow-curve law");
  }
}

/** The viscosity at a rate; at rest, only of a fluid that has one. */
export function viscosityAtRate(compiled: CompiledFlowCurve, rate: number): number {
  if (rate > 0) return result(compiled.stressOf(rate) / rate, "viscosity");
  return (
    compiled.viscosityZero ??
    refuse("range", "shearRate", rate, "a rate above 0: this curve has no finite viscosity at rest")
  );
}
