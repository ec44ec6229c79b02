export { checkRatio } from "./check-ratio.js";
export {
  type GelFormerAndOil,
  gelFormerForOil,
  massesForTotal,
  oilForGelFormer,
  ratioOf,
  ratioOfShare,
  shareOfRatio,
} from "./ratio.js";
export { type DosePoint, temperatureAtDose } from "./setting-temperature.js";
export {
  massFractionOfOil,
  type PhaseDensities,
  volumeFractionClosestPacking,
  volumeFractionOfOil,
} from "./volume-fraction.js";
