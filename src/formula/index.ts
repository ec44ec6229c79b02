export type { DatedTable } from "./dated-table.js";
export type {
  AgeingKineticsDocument,
  CertifiedDocument,
  DensityDocument,
  IndicesDocument,
  InductionDocument,
  LimitsDocument,
  MaterialDocument,
  MaterialFunction,
  MeltingDocument,
  ParticleDocument,
  PropertiesOf,
  RefractiveIndexDocument,
  VolatileDocument,
} from "./material-document.js";
export { conductivityOfMixture, densityOfMixture, type MixturePart, specificHeatOfMixture } from "./mixture.js";
export { normalise } from "./normalise.js";
export type { Price, PriceText } from "./price.js";
export { readFormula } from "./read.js";
export { type RefractivePart, refractiveIndexOfMixture } from "./refraction.js";
export { replaceMaterial } from "./replace.js";
export { suppliedShare } from "./strength.js";
export type {
  Formula,
  FormulaDocument,
  FormulaLine,
  FormulaPremix,
  LineDocument,
  Material,
  Particle,
  PremixDocument,
  RefractiveIndex,
  Volatile,
} from "./types.js";
