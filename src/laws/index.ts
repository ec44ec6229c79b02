export type { Beyond } from "./beyond.js";
export { type DensityLaw, densityAt, densityFunction } from "./density.js";
export { type HeatLossLaw, heatLossAt, heatLossFunction } from "./heat-loss.js";
export { type SpecificHeatLaw, specificHeatAt, specificHeatFunction } from "./specific-heat.js";
export { temperatureAtViscosity } from "./temperature-at-viscosity.js";
export { viscosityAt, viscosityFunction, viscosityKinks, viscosityRange } from "./viscosity.js";
export type { MeltLaw, SettingLaw, ViscosityLaw, ViscosityReading } from "./viscosity-law.js";
