// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const checkOilFraction: Known = [["volumeFractionOil"], ["volumeFractionOilMax"]];
export const checkRatio: Known = [["ratio"], ["min", "max"]];
export const checkWaterActivity: Known = [["min", "max"], []];
export const criticalCapillaryNumber: Known = [["viscosityRatio"], []];
export const densityGlycerinWater: Known = [["massFractionGlycerin", "temperature"], ["beyond"]];
export const dissolvedGelFormer: Known = [
  ["temperatureMelting", "heatOfFusion", "molarMassGelFormer", "molarMassOil", "temperature"],
  [],
];
export const dissolvingTemperature: Known = [
  ["temperatureMelting", "heatOfFusion", "molarMassGelFormer", "molarMassOil", "massFractionGelFormer"],
  [],
];
export const doseForGelPoint: Known = [["line", "temperature"], ["confidence"]];
export const doseForStrength: Known = [
  ["fit", "strength"],
  ["confidence", "beyond"],
];
export const dropletDiameterInShear: Known = [
  ["viscosityOil", "shearRate", "interfacialTension", "viscosityGelFormer", "viscosityEmulsion"],
  [],
];
export const fitDoseResponse: Known = [["trials"], ["threshold", "confidence"]];
export const fitGelPoint: Known = [["points"], []];
export const gelFormerForOil: Known = [["oil", "ratio"], []];
export const gelPointAtDose: Known = [["line", "dose"], ["confidence"]];
export const gelWithWater: Known = [
  ["oil", "diameter", "massOil", "densityOil", "massGlycerin", "massWater", "temperature", "massWaterAdded"],
  ["solids", "beyond", "mismatchUncertainty", "interfacialTension"],
];
export const glycerinAtHumidity: Known = [["relativeHumidity", "temperature"], ["norrishConstant"]];
export const glycerinForIndexMatch: Known = [
  ["oil", "temperature", "mismatch"],
  ["solids", "beyond"],
];
export const interfaceOfDroplets: Known = [["volumeOil", "diameter"], []];
export const laplacePressure: Known = [["interfacialTension", "diameter"], []];
export const largestDroplet: Known = [["viscosityOil", "shearRate", "interfacialTension", "viscosityAround"], []];
export const massFractionOfOil: Known = [["densityOil", "densityGelFormer", "volumeFractionOil"], []];
export const massesForTotal: Known = [["total", "ratio"], []];
export const modulusOfDroplets: Known = [["volumeFractionOil", "diameter", "interfacialTension"], []];
export const oilForGelFormer: Known = [["gelFormer", "ratio"], []];
export const oilFractionForModulus: Known = [["diameter", "interfacialTension", "modulus"], []];
export const oilFractionForYieldStress: Known = [["diameter", "interfacialTension", "yieldStress"], []];
export const packingOf: Known = [["volumeFractionOil"], ["volumeFractionOilMax"]];
export const ratioOf: Known = [["gelFormer", "oil"], []];
export const ratioOfShare: Known = [["shareGelFormer"], []];
export const refractiveIndex: Known = [["refractiveIndex", "temperature"], ["perKelvin"]];
export const refractiveIndexGlycerinWater: Known = [["massFractionGlycerin", "temperature"], ["beyond"]];
export const scatteringEfficiency: Known = [
  ["diameter", "refractiveIndexDroplet", "refractiveIndexOuter"],
  ["wavelength", "theory"],
];
export const shareOfRatio: Known = [["ratio"], []];
export const smallestDroplet: Known = [["adsorption", "volumeOil", "massSurfactant"], ["strength"]];
export const stillAirCoefficient: Known = [["gap", "temperature"], []];
export const strengthAtDose: Known = [
  ["fit", "dose"],
  ["confidence", "beyond"],
];
export const surfactantForDroplets: Known = [["adsorption", "volumeOil", "diameter"], ["strength"]];
export const temperatureAtDose: Known = [["dose", "points"], []];
export const temperatureForIndexMatch: Known = [
  ["oil", "massFractionGlycerin"],
  ["solids", "beyond"],
];
export const transmittance: Known = [["turbidity", "depth"], []];
export const turbidity: Known = [
  ["diameter", "refractiveIndexDroplet", "refractiveIndexOuter", "volumeFractionOil"],
  ["wavelength", "air"],
];
export const uptakeDuration: Known = [
  ["massGlycerin", "massWater", "area", "coefficient", "relativeHumidity", "temperature"],
  ["norrishConstant", "massFractionGlycerinEnd", "waterActivityEnd"],
];
export const volumeFractionOfOil: Known = [["densityOil", "densityGelFormer", "massFractionOil"], []];
export const waterActivity: Known = [["massFractionGlycerin", "temperature"], ["norrishConstant"]];
export const waterTakenUp: Known = [
  ["massGlycerin", "massWater", "relativeHumidity", "temperature"],
  ["norrishConstant"],
];
export const waterTakenUpAfter: Known = [
  ["massGlycerin", "massWater", "area", "coefficient", "relativeHumidity", "temperature", "duration"],
  ["norrishConstant"],
];
export const waterUntilFlowing: Known = [
  ["massOil", "densityOil", "massGlycerin", "massWater", "temperature", "diameter", "interfacialTension", "stress"],
  ["solids", "beyond"],
];
export const waterUntilMilky: Known = [
  ["oil", "diameter", "massOil", "densityOil", "massGlycerin", "massWater", "temperature", "depth", "transmittanceMin"],
  ["solids", "beyond", "mismatchUncertainty"],
];
export const yieldStressOfDroplets: Known = [["volumeFractionOil", "diameter", "interfacialTension"], []];
