export type { Allowance, FilmPart, FixedAllowance, NamedLoss, ProportionalAllowance } from "./allowance.js";
export type { BatchVessel } from "./allowances-of.js";
export { type Balance, chooseBalance, minimumWeight } from "./balance.js";
export { type AllowanceMass, type BatchCharge, chargeFor, type LineCharge } from "./charge.js";
export { type BatchCost, costOf } from "./cost.js";
export { type Delivered, deliveredFrom, type LossMass } from "./delivered.js";
export { filmAllowances, filmMass, filmThickness } from "./film.js";
export { type LargestBatch, largestBatch } from "./largest-batch.js";
export { splitIntoLots } from "./lots.js";
export type { CostOfLots } from "./lots-cost.js";
export { type LotEntry, type LotOrder, type LotStage, orderLots } from "./order-lots.js";
export { readBatch } from "./read.js";
export { type Reconciliation, reconcile, type WeighedLine } from "./reconcile.js";
export { type LineToRound, type RoundedLines, roundToBalances } from "./rounding.js";
export { type ScaledBatch, scaleFormula } from "./scale.js";
export type { StockUse } from "./stock.js";
export { deliveredMass, type Target } from "./target.js";
export { type MaterialsToBuy, materialsToBuy } from "./to-buy.js";
export { type WeighingTolerance, weighingTolerance } from "./tolerance.js";
export type {
  AllowanceDocument,
  BalanceDocument,
  Batch,
  BatchAllowance,
  BatchDocument,
  SamplesDocument,
  Stock,
  StockDocument,
  TakesFrom,
  TargetDocument,
} from "./types.js";
export type { WeighedLot, WeighLine } from "./weigh.js";
