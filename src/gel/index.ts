export type { GelAnswer } from "./answer.js";
export { checkRatio } from "./check-ratio.js";
export { checkWaterActivity } from "./check-water-activity.js";
export { type CrystallisingPair, dissolvedGelFormer, dissolvingTemperature } from "./crystallising.js";
export { doseForStrength, strengthAtDose } from "./dose-for-strength.js";
export { type DoseResponse, fitDoseResponse, type Trial } from "./dose-response.js";
export {
  criticalCapillaryBand,
  criticalCapillaryNumber,
  type DropletDiameters,
  dropletDiameterInShear,
  largestDroplet,
  type ShearedOil,
} from "./droplet-breakup.js";
export type { EmulsionGel, EmulsionPhases } from "./emulsion-gel.js";
export type { Estimate } from "./estimate.js";
export { doseForGelPoint, fitGelPoint, type GelPointLine, gelPointAtDose } from "./gel-point.js";
export { type GelWithWater, gelWithWater, type MismatchDoubt } from "./gel-with-water.js";
export { densityGlycerinWater, glycerinWaterBands, refractiveIndexGlycerinWater } from "./glycerin-water.js";
export { laplacePressure } from "./laplace-pressure.js";
export { type DissolvedSolids, glycerinForIndexMatch, type IndexMatch, temperatureForIndexMatch } from "./match.js";
export { type OpenGel, uptakeDuration, waterTakenUpAfter } from "./moisture-uptake.js";
export {
  modulusOfDroplets,
  oilFractionForModulus,
  oilFractionForYieldStress,
  type PackedDroplets,
  packedStrengthBand,
  yieldStressOfDroplets,
} from "./packed-strength.js";
export { checkOilFraction, type Packing, packingOf } from "./packing.js";
export {
  type GelFormerAndOil,
  gelFormerForOil,
  massesForTotal,
  oilForGelFormer,
  ratioOf,
  ratioOfShare,
  shareOfRatio,
} from "./ratio.js";
export { type Scatterer, type ScatteringTheory, scatteringEfficiency } from "./scattering.js";
export { type DosePoint, temperatureAtDose } from "./setting-temperature.js";
export { stillAirCoefficient } from "./still-air.js";
export {
  type Coverage,
  interfaceOfDroplets,
  type SurfactantNeeded,
  smallestDroplet,
  surfactantForDroplets,
} from "./surfactant.js";
export { type AirBubbles, type Turbidity, transmittance, turbidity, turbidityBand } from "./turbidity.js";
export {
  massFractionOfOil,
  type PhaseDensities,
  volumeFractionClosestPacking,
  volumeFractionOfOil,
} from "./volume-fraction.js";
export {
  type ByTwoLaws,
  glycerinAtHumidity,
  waterActivity,
  waterActivityBand,
  waterTakenUp,
} from "./water-activity.js";
export { waterUntilFlowing } from "./water-until-flowing.js";
export { waterUntilMilky } from "./water-until-milky.js";
