export type {
  ContentBounds,
  NaturalOrigin,
  Plan,
  PlanCost,
  TimelineStep,
  WeighingLine,
} from "./plan.js";
export { runPlan } from "./run-plan.js";
export type {
  BenchDocument,
  JobDocument,
  PackDocument,
  ProcessDocument,
  StepDocument,
  VesselDocument,
  ViscosityDocument,
  ViscosityLawDocument,
} from "./types.js";
