export { type AggregateExposure, aggregateExposure, type ProductDose } from "./aggregate-exposure.js";
export type { ExposureCaution } from "./caution.js";
export { type DailyExposure, dailyExposure } from "./daily-exposure.js";
export {
  type ExposureGrade,
  type ExposureRow,
  type ExposureTable,
  sccsDailyExposure,
  sccsDailyExposureFromMemory,
} from "./exposure-table.js";
export {
  type IngredientLimit,
  type IngredientLimits,
  ingredientLimits,
  type LimitAnswer,
  type LimitTable,
} from "./ingredient-limits.js";
export { type MarginOfSafety, marginOfSafety, type PointOfDeparture } from "./margin-of-safety.js";
export { type MassFractionForMargin, massFractionForMargin } from "./mass-fraction-for-margin.js";
export {
  type ProductExposure,
  type SystemicExposure,
  systemicExposure,
  systemicExposureByArea,
} from "./systemic-exposure.js";
