export { acceptSample, type SampleVerdict } from "./accept-sample.js";
export { allPacksTest, type BatchTest, type BatchTestTable, batchTestFor } from "./batch-test.js";
export { batchTestsEec1976, batchTestsEec1976Destructive, batchTestsOimlR87, batchTestsUk2006 } from "./batch-tests.js";
export { batchTestsHandbook133 } from "./batch-tests-handbook-133.js";
export { batchTestsNewZealand1999 } from "./batch-tests-new-zealand.js";
export { correctionFactor } from "./correction-factor.js";
export { type ErrorTable, type TolerableError, tolerableError } from "./error-table.js";
export {
  allowableVariationsHandbook133,
  tolerableErrorsEec1976,
  tolerableErrorsNewZealand1999,
  tolerableErrorsOimlR87,
} from "./error-tables.js";
export { fillerVolume, fillMass, volumeExpansion } from "./fill.js";
export { type FillLimits, fillLimits } from "./fill-limits.js";
export { type HeadSpace, headSpace } from "./head-space.js";
export type { LegalGrade, LegalSource } from "./legal-table.js";
export { type OverfillCost, overfillCost } from "./overfill-cost.js";
export { type PacksFromBatch, packsFromBatch } from "./packs-from-batch.js";
export { shareRejected } from "./share-rejected.js";
export { type SpreadOfFill, spreadOfFill } from "./spread-of-fill.js";
export { type TargetFill, targetByRules, targetFill } from "./target-fill.js";
export { type TopUp, topUp } from "./top-up.js";
