export {
  type CentrifugeDoubt,
  centrifugeSpeed,
  type GravityTime,
  gravityTime,
  relativeCentrifugalForce,
} from "./centrifuge.js";
export { colourDifference1976, colourDifference2000, type LabColour } from "./colour-difference.js";
export {
  type AgeingAssumption,
  type ComparedStorage,
  type EquivalentStorage,
  equivalentStorage,
  storageFor,
} from "./equivalent-storage.js";
export type { AgeingKinetics } from "./kinetics.js";
export { meanKineticTemperature, type TemperatureReading } from "./mean-kinetic-temperature.js";
export { type OilBleed, oilBleed } from "./oil-bleed.js";
export type { LotReadings, PoolingTest, ShelfLifeModel } from "./pooling.js";
export { type ShelfLife, shelfLife } from "./shelf-life.js";
export {
  type CycleStay,
  type CycleStep,
  type TemperatureCycles,
  temperatureCycles,
} from "./temperature-cycles.js";
export { type ConditionNeeds, type Pull, type StorageCondition, type TestPlan, testPlan } from "./test-plan.js";
export type { Transition } from "./transition.js";
export { type TimedReading, type Trend, trend } from "./trend.js";
export { type ViscosityDrift, viscosityDrift } from "./viscosity-drift.js";
export { type WelchTest, welchTest } from "./welch-test.js";
