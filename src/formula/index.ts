export type { Check } from "./check.js";
export { conductivityOfMixture, densityOfMixture, type MixturePart, specificHeatOfMixture } from "./mixture.js";
export { normalise } from "./normalise.js";
export { readFormula } from "./read.js";
export { type RefractivePart, refractiveIndexOfMixture } from "./refraction.js";
export { replaceMaterial } from "./replace.js";
export { suppliedShare } from "./strength.js";
export type {
  DensityDocument,
  Formula,
  FormulaDocument,
  FormulaLine,
  HeatSensitivityDocument,
  IndexReading,
  IndicesDocument,
  LimitsDocument,
  LineDocument,
  Material,
  MaterialDocument,
  MaterialFunction,
  MeltingDocument,
  Particle,
  ParticleDocument,
  PremixDocument,
  Price,
  PropertiesOf,
  RefractiveIndexDocument,
  Volatile,
  VolatileDocument,
} from "./types.js";
