export type {
  ColdAddition,
  ColdAdditions,
  ColdRun,
  ColdSpeed,
  ColdSpeeds,
  ColdWarming,
  ExpectedGel,
} from "./cold/plan.js";
export type { ColdStepDocument, EmulsionDocument, ThicknessDocument } from "./cold/types.js";
export { comparePlans, type PlanAtScale } from "./compare-plans.js";
export type { AfterFilling, OilThermalExposure, OxidationRank, PlanEvaporation } from "./heat-plan.js";
export type {
  NaturalOrigin,
  Plan,
  PlanCost,
  PlanLotOrder,
  ScaleMetrics,
  TimelineStep,
  WeighingLine,
} from "./plan.js";
export { runPlan } from "./run-plan.js";
export type {
  PlanAir,
  PlanAirSegment,
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
  JobDocument,
  PackDocument,
  ProcessDocument,
  StepDocument,
  ViscosityDocument,
  ViscosityLawDocument,
} from "./types.js";
export type {
  BottomDocument,
  CoolingCurveDocument,
  JacketDocument,
  StirrerDocument,
  StirrerKind,
  SurfacesDocument,
  VesselDocument,
} from "./vessel-document.js";
