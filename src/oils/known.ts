// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const antioxidantDose: Known = [
  ["massOil", "massFractionTarget", "strength"],
  ["massFractionPresent", "lossOnDrying", "inPlaceOf"],
];
export const certificate: Known = [
  [],
  ["profile", "iodineValue", "saponificationValue", "relativeDensity", "refractiveIndex", "tocols"],
];
export const checkCertificate: Known = [["oil", "certificate"], []];
export const grunbergNissanTerm: Known = [["parts", "viscosityBlend"], []];
export const hlbOfBlend: Known = [["parts"], []];
export const inductionTime: Known = [["readings", "temperature"], ["confidence"]];
export const nearestBlend: Known = [["first", "second", "target"], []];
export const oxidationRanking: Known = [["oils"], []];
export const peroxideRise: Known = [["readings"], ["confidence"]];
export const profileOfBlend: Known = [["parts"], ["sumTolerance"]];
export const profileValueRanges: Known = [["ranges"], []];
export const profileValues: Known = [["profile"], ["sumTolerance"]];
export const readProfile: Known = [["percentages"], ["sumTolerance"]];
export const relativeOxidation: Known = [["parts"], ["oxidisabilityReference"]];
export const requiredHlb: Known = [["parts"], []];
export const solubilityDistance: Known = [["first", "second"], ["interactionRadius"]];
export const solubilityOfBlend: Known = [["parts"], []];
export const substitute: Known = [["parts", "replaced", "by", "temperature"], []];
export const surfactantShare: Known = [["hlb", "hlbFirst", "hlbSecond"], []];
export const viscosityBlendingNumber: Known = [["kinematicViscosity"], []];
export const viscosityByArrhenius: Known = [["parts"], []];
export const viscosityByBlendingNumber: Known = [["parts"], []];
export const viscosityByGrunbergNissan: Known = [["parts"], ["interactions"]];
export const viscosityByKendallMonroe: Known = [["parts"], []];
