import type { FlowCurve } from "../../laws/index.js";
import {
  chooseFlowCurve,
  type FlowChoice,
  type FlowFit,
  type FlowModel,
  nozzleFlow,
  shearRatesInUse,
  viscositiesInUse,
  type YieldConvention,
  type YieldStress,
  yieldStresses,
} from "../../rheology/index.js";
import type { UseCode } from "../codes/words.js";
import { holdsFor, sharesOf } from "../composition.js";
import type { NotKnown } from "../figure.js";
import type { Job } from "../job.js";
import { by, orNotKnown, remembered, stated, unknown, where } from "../unknown.js";

type FlowPoints = NonNullable<Job["bench"]["flowCurve"]>;

/** The viscosity of the set gel in one use. */
export interface PlanUse {
  /** In the caller's words; left out of the usual ones. */
  readonly use?: string;
  /** One of the usual uses, if the caller names none. */
  readonly usual?: UseCode;
  /** [1/s]. */
  readonly shearRate: number;
  /** [Pa·s]. */
  readonly viscosity: number;
  /** Whether the rate lies beyond the points. */
  readonly beyondReadings: boolean;
}

/** How the set gel is sheared in the nozzle of the pack. */
export interface PlanNozzle {
  /** Bore [m]. */
  readonly diameter: number;
  /** At the wall [1/s]. */
  readonly shearRate: number;
  /** At the wall [Pa·s]. */
  readonly viscosity: number;
  /** Pressure on each metre of its length [Pa/m]. */
  readonly pressureGradient: number;
  /** Whether the rate lies beyond the points. */
  readonly beyondReadings: boolean;
}

/** How the set gel flows, by rheometer points. */
export interface FlowByPoints {
  /** At which they were read [°C]. */
  readonly temperature: number;
  /** The model that the points bear out. */
  readonly model: FlowModel;
  /** Its curve, for whatever takes one, in Pa, Pa·s, Pa·sⁿ and s. */
  readonly curve: FlowCurve;
  /** The fitted parameters by their names in the curve, with their standard errors, in the same units. */
  readonly parameters: Readonly<Record<string, { readonly value: number; readonly standardError: number }>>;
  /** How many models were weighed by the corrected criterion of Akaike. */
  readonly candidates: number;
  /** [Pa], and the convention by which it was read. */
  readonly yieldStress?: { readonly value: number; readonly convention: YieldConvention };
  /** Between which values other conventions read it [Pa]. */
  readonly otherConventions?: { readonly min: number; readonly max: number };
  readonly uses: readonly PlanUse[];
  /** Through the nozzle of the pack. */
  readonly nozzle?: PlanNozzle;
}

/** The shear rates of the usual uses stand in the table of the kernels under these words. */
const usual: Readonly<Record<UseCode, string>> = {
  pouring: "pouring",
  "brushing-on": "brushing on",
  "rubbing-in": "rubbing in",
};

/** The rheometer points, if they are of this gel. */
export function flowPointsOf(job: Job): FlowPoints {
  const points = stated(job.bench.flowCurve, "bench-flow-curve");
  return holdsFor(job, sharesOf(job.formula.lines), () => true)
    ? points
    : unknown("not-read", { field: "bench-flow-curve" });
}

/** The model that rheometer points bear out, fitted once. */
export const flowChoiceOf: (flowCurve: FlowPoints) => FlowChoice = remembered(({ points }: FlowPoints) =>
  by("flow-curve-fit", () => chooseFlowCurve({ points }), { field: "bench-flow-curve" }),
);

/** The yield stress of rheometer points by every convention, fitted once. */
const conventionsOf: (flowCurve: FlowPoints) => readonly YieldStress[] = remembered(({ points }: FlowPoints) =>
  by("flow-curve-fit", () => yieldStresses({ points }), { field: "bench-flow-curve" }),
);

/** The yield stress by the convention asked for, or that of the model that the points bear out [Pa]. */
export function yieldStressOfPoints(flowCurve: FlowPoints): NonNullable<FlowByPoints["yieldStress"]> {
  const convention = flowCurve.yieldStressBy ?? conventionOf(flowChoiceOf(flowCurve).best);
  const read = conventionsOf(flowCurve).find((one) => one.convention === convention);
  // A gel of which the points show none is read, and not without a yield stress.
  const value = read?.yieldStress ?? unknown("not-read", { field: "bench-flow-curve", law: "flow-curve-fit" });
  return { value, convention };
}

/** A model with a yield stress has the name of the convention. */
function conventionOf({ model }: FlowFit): YieldConvention {
  if (model === "bingham" || model === "casson" || model === "herschel-bulkley") return model;
  return unknown("not-read", { field: "bench-flow-curve", law: "flow-curve-fit" });
}

function otherConventions(flowCurve: FlowPoints): NonNullable<FlowByPoints["otherConventions"]> {
  const { convention } = yieldStressOfPoints(flowCurve);
  const others = conventionsOf(flowCurve).flatMap((one) =>
    one.convention === convention ? [] : (one.yieldStress ?? []),
  );
  if (others.length === 0) unknown("nothing-there");
  return { min: Math.min(...others), max: Math.max(...others) };
}

/** How the gel is sheared in the nozzle of the pack. */
export function throughNozzle(job: Job): PlanNozzle {
  const { best } = flowChoiceOf(flowPointsOf(job));
  const { diameter, volume, within } = stated(job.pack?.nozzle, "pack-nozzle");
  const {
    shearRateWall: shearRate,
    viscosityWall: viscosity,
    pressureGradient,
  } = by("nozzle-flow", () => nozzleFlow({ curve: best.curve, diameter, flowRate: volume / within }));
  return {
    diameter,
    shearRate,
    viscosity,
    pressureGradient,
    beyondReadings: isBeyond(best, shearRate),
  };
}

function isBeyond({ shearRateMin, shearRateMax }: FlowFit, shearRate: number): boolean {
  return shearRate < shearRateMin || shearRate > shearRateMax;
}

/** The same; or why no model fits the points. */
export type PlanFlow = FlowByPoints | NotKnown;

/** What rheometer points say of the set gel. */
export function flowOf(job: Job): PlanFlow {
  return orNotKnown(() => byPoints(job));
}

function byPoints(job: Job): FlowByPoints {
  const flowCurve = flowPointsOf(job);
  const { best, candidates } = flowChoiceOf(flowCurve);
  const values = best.curve as unknown as Readonly<Record<string, number>>;
  return {
    temperature: flowCurve.temperature,
    model: best.model,
    curve: best.curve,
    parameters: Object.fromEntries(
      best.parameters.map((name) => [
        name,
        { value: values[name] as number, standardError: best.standardErrors[name] as number },
      ]),
    ),
    candidates: candidates.length,
    ...where("yieldStress", () => yieldStressOfPoints(flowCurve)),
    ...where("otherConventions", () => otherConventions(flowCurve)),
    uses: usesOf(flowCurve, best),
    ...where("nozzle", () => throughNozzle(job)),
  };
}

function usesOf({ uses }: FlowPoints, best: FlowFit): readonly PlanUse[] {
  const { curve } = best;
  const inUse = (asked: NonNullable<FlowPoints["uses"]>): readonly (Required<Pick<PlanUse, "use">> & PlanUse)[] =>
    by("flow-curve-fit", () => viscositiesInUse({ curve, uses: asked })).map((one) => ({
      ...one,
      beyondReadings: isBeyond(best, one.shearRate),
    }));
  if (uses) return inUse(uses);
  const codes = Object.keys(usual) as UseCode[];
  return inUse(shearRatesInUse.filter(({ use }) => codes.some((code) => usual[code] === use))).flatMap(
    ({ use, ...one }) => codes.filter((code) => usual[code] === use).map((code) => ({ usual: code, ...one })),
  );
}
