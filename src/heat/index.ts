export { additionTemperatureLeast, largestAddition, meltTemperatureLeast } from "./additions.js";
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
  evaporationFluxMost,
  type Surface,
} from "./evaporation-flux.js";
export { type EvaporationOverRun, evaporationOverRun, type VolatileLoss } from "./evaporation-over-run.js";
export { type Exposure, exposure } from "./exposure.js";
export { type FittedConductance, fitConductance, type TemperatureReading } from "./fit-conductance.js";
export type { Balance } from "./heat-balance.js";
export { heatCapacityFunction, heatCapacityKinks } from "./heat-capacity.js";
export { type HeatToWarm, heatToWarm, type Melting, type MeltingPart } from "./heat-to-warm.js";
export { type HeatingTime, heatingTime, type MeltingOnTheWay } from "./heating-time.js";
export { type Hold, holdTemperature } from "./hold-temperature.js";
export {
  type InsideCoefficient,
  insideCoefficient,
  insideCoefficientFunction,
  type StirredHeatTransfer,
} from "./inside-coefficient.js";
export { type JacketTime, jacketConductance, jacketTime } from "./jacket.js";
export {
  batchMassForDuration,
  capacityFlowForDuration,
  mediumTemperatureForDuration,
  type Wanted,
} from "./jacket-wanted.js";
export { batchTemperatureAtWall, type JacketedWall, jacketCoefficient, jacketedWall } from "./jacketed-wall.js";
export { type EqualAdditions, leastAdditions } from "./least-additions.js";
export { mixingTemperature } from "./mixing-temperature.js";
export { moleFraction } from "./mole-fraction.js";
export type { CoolingPack, Pack, PlaceInPack } from "./pack.js";
export { packCoolingCurve } from "./pack-cooling-curve.js";
export { packTemperature } from "./pack-temperature.js";
export { packTimeUntil } from "./pack-time-until.js";
export { type PlateHeatingTime, plateHeatingTime } from "./plate-heating-time.js";
export { powerForDuration } from "./power-for-duration.js";
export { meanRelativeTemperature, relativeTemperature } from "./relative-temperature.js";
export { relativeRateFunction, type Sensitivity } from "./sensitivity.js";
export { type Shrinkage, shrinkage } from "./shrinkage.js";
export { type Stage, type StagedAdditions, type StageResult, stagedAdditions } from "./staged-additions.js";
export { steadyTemperature } from "./steady-temperature.js";
export { type StirredCorrelation, type StirredRange, stirredCorrelations } from "./stirred-correlations.js";
export { type StirredWall, stirredWall } from "./stirred-wall.js";
export type { Stretch } from "./stretches.js";
export type { Supply } from "./supply.js";
export { type Energy, type SuppliedVessel, vesselLeg } from "./vessel-leg.js";
export { heatFlowAtWall, jacketTemperatureAtWall, type WallLimit } from "./wall-limits.js";
export { wallTemperature } from "./wall-temperature.js";
