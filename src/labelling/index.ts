export {
  type AllergenTable,
  type AllergenThresholds,
  euAllergenThresholds,
  type ListedAllergen,
  type ProductUse,
} from "./allergen-totals.js";
export type { LabellingCaution } from "./caution.js";
export {
  type CertifiedShares,
  type CertifiedTable,
  type CertifiedThreshold,
  certifiedShares,
  type ThresholdAnswer,
} from "./certification.js";
export {
  type CertificationShortfall,
  type CertifiedGoal,
  certificationShortfalls,
} from "./certification-shortfalls.js";
export type { CertifiedClass, CertifiedFigure, CertifiedLine } from "./certified-line.js";
export { type ClaimBasis, type ClaimFigure, type ClaimLine, claimFigure } from "./claim-figure.js";
export {
  type FoundAllergen,
  type FragranceAllergens,
  fragranceAllergens,
  type NamedShare,
} from "./fragrance-allergens.js";
export {
  type AllergensOnLabel,
  euIngredientOrder,
  type IngredientList,
  ingredientList,
  type OrderRule,
} from "./ingredient-list.js";
export type { AllergenContent, LabelLine } from "./line.js";
export {
  type LabelParticle,
  type MicroplasticFlag,
  microplasticFlag,
  type ParticleNature,
  type ParticleRestriction,
  type ParticleTable,
} from "./microplastics.js";
export {
  type ChangeAfterOpening,
  type LimitAfterOpening,
  type PeriodAfterOpening,
  periodAfterOpening,
} from "./period-after-opening.js";
