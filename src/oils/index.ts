export { type AntioxidantDose, antioxidantDose } from "./antioxidant-dose.js";
export { castorOil } from "./castor-oil.js";
export { type Certificate, type CertificateAnswer, checkCertificate, type ValueAtTemperature } from "./certificate.js";
export { type Compound, type CompoundProperty, glycerin, squalane } from "./compounds.js";
export { type FattyAcid, fattyAcid } from "./fatty-acid.js";
export { grunbergNissanTerm, type Interaction, type MolarPart, viscosityByGrunbergNissan } from "./grunberg-nissan.js";
export { hlbOfBlend, requiredHlb, surfactantShare } from "./hlb.js";
export { type InductionEstimate, type InductionReading, type InductionTime, inductionTime } from "./induction-time.js";
export { mediumChainTriglycerides } from "./medium-chain-triglycerides.js";
export { type NearestBlend, nearestBlend } from "./nearest-blend.js";
export { oilDensityPerKelvin, oilRefractiveIndexPerKelvin } from "./oil-slopes.js";
export { type HeatedOil, type OxidationBurden, oxidationRanking } from "./oxidation-ranking.js";
export { type PeroxideReading, type PeroxideRise, peroxideRise } from "./peroxide-rise.js";
export type { Profile, ProfileRanges, Range } from "./profile.js";
export { profileOfBlend } from "./profile-of-blend.js";
export { iodineValueBand, type ProfileValueRanges, profileValueRanges, profileValues } from "./profile-values.js";
export { type ReadProfile, readProfile } from "./read-profile.js";
export { type RelativeOxidation, relativeOxidation } from "./relative-oxidation.js";
export {
  type SolubilityDistance,
  type SolubilityParameters,
  solubilityDistance,
  solubilityOfBlend,
} from "./solubility.js";
export { safflowerOilHighOleic, sunflowerOilHighOleic, sunflowerOilMidOleic } from "./standard-high-oleic.js";
export { coconutOil, palmKernelOil } from "./standard-lauric.js";
export { grapeseedOil, safflowerOil, soyaOil, sunflowerOil } from "./standard-linoleic.js";
export { flaxseedOil, walnutOil } from "./standard-linolenic.js";
export type { Provenance, RangeAtTemperature, StandardOil } from "./standard-oil.js";
export { almondOil, almondOilPharmacopoeia, oliveOil, rapeseedOil } from "./standard-oleic.js";
export { cottonseedOil, maizeOil, riceBranOil, sesameOil } from "./standard-oleic-linoleic.js";
export {
  type OilProperties,
  type OilProperty,
  type PhasePart,
  type Substitution,
  type SubstitutionRow,
  substitute,
} from "./substitution.js";
export type { ProfileValues } from "./values-of-acids.js";
export { viscosityBlendingNumber, viscosityByBlendingNumber } from "./viscosity-blending-number.js";
export { blendViscosityBands, viscosityByArrhenius, viscosityByKendallMonroe } from "./viscosity-means.js";
