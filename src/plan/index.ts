export type {
  AfterFilling,
  ContentBounds,
  NaturalOrigin,
  OilExposure,
  OilOrder,
  Plan,
  PlanCost,
  PlanEvaporation,
  TimelineStep,
  WeighingLine,
} from "./plan.js";
export { runPlan } from "./run-plan.js";
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
