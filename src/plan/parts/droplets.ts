import { criticalCapillaryBand, largestDroplet, modulusOfDroplets, yieldStressOfDroplets } from "../../gel/index.js";
import { bandAround } from "../../laws/index.js";
import type { Charge } from "../charge.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import { ofEmulsion, ofGel } from "../composition.js";
import type { Basis } from "../figure.js";
import type { Job } from "../job.js";
import type { Run, State } from "../state.js";
import { by, otherwise, stated, unknown } from "../unknown.js";

/** Up to where droplets were seen to break as in the whole emulsion (Jansen and others 2001). */
const seenUpTo = 0.7;

/** The finished gel: what is in the vessel before it is filled, or after the last step if nothing is. */
export function gelOf({ moments }: Run): State {
  const filled = moments.find(({ step }) => step.do === "fill");
  return filled?.before ?? moments.at(-1)?.after ?? unknown("nothing-there");
}

/** One subject where the finished gel holds an outer phase. */
export function withOuter(run: Run): readonly Run[] {
  return otherwise(
    () => (gelOf(run).charge.isEmulsion() ? [run] : []),
    () => [],
  );
}

/** One subject where the finished gel is an emulsion with oil in it. */
export function withOil(run: Run): readonly Run[] {
  return withOuter(run).filter((one) => gelOf(one).charge.oil().length > 0);
}

/** The droplets of an emulsion. */
export interface Droplets {
  /** Sauter mean diameter [m]. */
  readonly diameter: number;
  /** Lower end, by how sure the law of their breakup is [m]; both ends are the diameter where it is measured. */
  readonly min: number;
  /** Upper end [m]. */
  readonly max: number;
  readonly basis: readonly Basis[];
  readonly assumptions?: readonly AssumptionCode[];
}

/** The droplets as measured, or by the shear that made them, with the whole gel around them. */
export function dropletsOf(charge: Charge): Droplets {
  const { job } = charge;
  const emulsion = stated(job.bench.emulsion, "bench-emulsion");
  const { dropletDiameter: measured, shear } = emulsion;
  if (measured !== undefined) {
    const diameter = ofGel(job, measured, "emulsion-droplets");
    return {
      diameter,
      min: diameter,
      max: diameter,
      basis: [{ kind: "reading", key: "emulsion-droplets", source: job.bench.source }],
    };
  }
  const { rate: shearRate, viscosityOil, viscosityEmulsion: viscosityAround } = ofGel(job, shear, "emulsion-droplets");
  const interfacialTension = tensionOf(job);
  const diameter = by("droplets-in-shear", () =>
    largestDroplet({ viscosityOil, viscosityAround, shearRate, interfacialTension }),
  );
  const { min, max } = bandAround({ value: diameter, band: criticalCapillaryBand });
  return {
    diameter,
    min,
    max,
    basis: [{ kind: "law", key: "droplets-in-shear" }],
    ...(charge.oilFraction() > seenUpTo && { assumptions: ["droplets-packed-closer-than-seen"] as const }),
  };
}

/** Interfacial tension of this oil against this gel former [N/m]. */
export function tensionOf(job: Job): number {
  return ofEmulsion(job, job.bench.emulsion?.interfacialTension, "emulsion-interfacial-tension");
}

/** The droplets as they are packed. */
function packed(charge: Charge): Parameters<typeof modulusOfDroplets>[0] {
  const { diameter } = dropletsOf(charge);
  return { volumeFractionOil: charge.oilFraction(), diameter, interfacialTension: tensionOf(charge.job) };
}

/** Shear modulus of packed droplets, by theory [Pa]. */
export function modulusByTheory(charge: Charge): number {
  const droplets = packed(charge);
  return by("packed-droplets", () => modulusOfDroplets(droplets));
}

/** Yield stress of packed droplets, by theory [Pa]. */
export function yieldStressByTheory(charge: Charge): number {
  const droplets = packed(charge);
  return by("packed-droplets", () => yieldStressOfDroplets(droplets));
}
