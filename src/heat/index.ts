export { additionTemperatureMin, largestAddition, meltTemperatureMin } from "./additions.js";
export { type AgeingKinetics, relativeRateFunction } from "./ageing-kinetics.js";
export type { Charge, Part } from "./charge.js";
export { type ConductionRoot, conductionRoot } from "./conduction-root.js";
export type { BiotNumber, ConductionShape } from "./conduction-shape.js";
export { coolingTime, coolingTimeAtScale, temperatureAfterCooling } from "./cooling.js";
export { type CoolingAtScale, coolingAtScales } from "./cooling-at-scales.js";
export { chargeForEvaporation, lossFraction, massAfterEvaporation } from "./evaporation.js";
export {
  type EvaporationCoefficient,
  evaporationCoefficient,
  evaporationFlux,
  evaporationFluxMax,
  type Surface,
} from "./evaporation-flux.js";
export { type EvaporationOverRun, evaporationOverRun, type VolatileLoss } from "./evaporation-over-run.js";
export { type EqualAdditions, fewestAdditions } from "./fewest-additions.js";
export { type FittedConductance, fitConductance, type TemperatureReading } from "./fit-conductance.js";
export type { HeatBalance } from "./heat-balance.js";
export { heatCapacityBreakpoints, heatCapacityFunction } from "./heat-capacity.js";
export type { HeatSource } from "./heat-source.js";
export { type HeatToWarm, heatToWarm, type Melting, type MeltingPart } from "./heat-to-warm.js";
export { type HeatingTime, heatingTime, type MeltingOnTheWay } from "./heating-time.js";
export { type Hold, holdTemperature } from "./hold-temperature.js";
export {
  type InsideCoefficient,
  insideCoefficient,
  insideCoefficientBand,
  insideCoefficientFunction,
  type StirredHeatTransfer,
} from "./inside-coefficient.js";
export { type JacketTime, jacketConductance, jacketTime } from "./jacket.js";
export {
  batchMassForDuration,
  capacityFlowForDuration,
  mediumTemperatureForDuration,
  type TimeTarget,
} from "./jacket-target.js";
export { batchTemperatureAtWall, type JacketedWall, jacketCoefficient, jacketedWall } from "./jacketed-wall.js";
export { mixingTemperature } from "./mixing-temperature.js";
export { moleFraction } from "./mole-fraction.js";
export type { CoolingPack, Pack, PlaceInPack } from "./pack.js";
export { packCoolingCurve } from "./pack-cooling-curve.js";
export { packCoolingTime } from "./pack-cooling-time.js";
export { packTemperature } from "./pack-temperature.js";
export { type PlateHeatingTime, plateHeatingTime } from "./plate-heating-time.js";
export { powerForDuration } from "./power-for-duration.js";
export { meanRelativeTemperature, relativeTemperature } from "./relative-temperature.js";
export type { Segment } from "./segments.js";
export { type Shrinkage, shrinkage } from "./shrinkage.js";
export { type Stage, type StagedAdditions, type StageResult, stagedAdditions } from "./staged-additions.js";
export { steadyTemperature } from "./steady-temperature.js";
export { type StirredCorrelation, type StirredRange, stirredCorrelations } from "./stirred-correlations.js";
export { type StirredWall, stirredWall } from "./stirred-wall.js";
export { type ThermalExposure, thermalExposure } from "./thermal-exposure.js";
export { type Energy, type HeatedVessel, vesselSegment } from "./vessel-segment.js";
export { vesselTimes } from "./vessel-times.js";
export { heatFlowAtWall, jacketTemperatureAtWall, type WallLimit } from "./wall-limits.js";
export { wallTemperature } from "./wall-temperature.js";
