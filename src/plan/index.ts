export type { ColdBenchDocument, ColdStepDocument } from "./cold/types.js";
export { comparePlans, type PlanAtScale } from "./compare-plans.js";
export type {
  AfterFilling,
  ColdAddition,
  ColdAdditions,
  ColdRun,
  ContentBounds,
  ExpectedGel,
  NaturalOrigin,
  OilExposure,
  OilOrder,
  Plan,
  PlanCost,
  PlanEvaporation,
  PlanLotOrder,
  PlanScale,
  TimelineStep,
  WeighingLine,
} from "./plan.js";
export { runPlan } from "./run-plan.js";
export type {
  PlanAir,
  PlanAirStretch,
  PlanFilms,
  PlanFlow,
  PlanGelPoint,
  PlanParticle,
  PlanStrength,
  PlanUse,
  PlanYieldStress,
} from "./strength/plan.js";
export type {
  AirDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  NozzleDocument,
  StrengthTrialsDocument,
} from "./strength/types.js";
export type {
  BenchDocument,
  CoolingCurveDocument,
  JacketDocument,
  JobDocument,
  PackDocument,
  ProcessDocument,
  StepDocument,
  StirrerDocument,
  StirrerKind,
  SurfacesDocument,
  VesselDocument,
  ViscosityDocument,
  ViscosityLawDocument,
} from "./types.js";
