import type { Formula } from "../formula/index.js";
import { record } from "../guards.js";
import type { BatchVessel } from "./allowances-of.js";
import * as known from "./known.js";
import { type ScaledBatch, scaleFormula } from "./scale.js";
import { type StockUse, stockOf, usesOf } from "./stock.js";
import type { Batch } from "./types.js";

/** A batch, and what has to be bought for it. */
export interface MaterialsToBuy {
  readonly scaled: ScaledBatch;
  /** Every material that it takes; `toBuy` is 0 for what there is enough of. */
  readonly materials: readonly StockUse[];
}

/**
 * What to buy for a batch, in addition to the materials in stock.
 *
 * $$b_i = \max\left(0,\ n\,m_i - S_i\right)$$
 *
 * The masses are those of `scaleFormula`: all lots, with their allowances and the film, premixes opened, rounded to the
 * balances. What is missing is rounded up to the last digit of the balance. A material without an entry in the stock
 * list has to be bought in full, and without a list everything has.
 *
 * @param input.formula - A formula that was read.
 * @param input.batch - A batch that was read, with its `stock` [kg]; default an empty stock.
 * @param input.vessel - Name, working volumes [m³] and inner diameter [m]. Without it the batch is one lot, and no film can be calculated.
 * @param input.yieldStress - Yield stress [Pa] of the gel as the vessel is emptied, for a film without a thickness.
 * @returns The batch, scaled, and for each material what is needed, what there is and what to buy [kg].
 * @throws CalculationError `input` where something needed is missing, or the stock names no material of the formula; `unreachable` as `scaleFormula` does.
 * @source definition
 * @example
 * ```ts
 * import { materialsToBuy, readBatch } from "gelwright/batch";
 * import { readFormula } from "gelwright/formula";
 * const formula = readFormula({
 *   version: 1,
 *   name: "clear gel",
 *   materials: {
 *     former: { name: "gel former", function: "gel former" },
 *     oil: { name: "sunflower oil", function: "oil" },
 *   },
 *   phases: [
 *     { name: "A", lines: [{ material: "former", amount: "10 %" }, { material: "oil", amount: "q.s." }] },
 *   ],
 * });
 * const batch = readBatch({
 *   version: 1,
 *   target: { packs: 1200, fillMass: "50 g" },
 *   allowances: [{ kind: "mass", name: "samples", mass: "200 g" }],
 *   balances: [{ name: "floor", increment: "1 g", capacity: "60 kg", minimumWeight: "50 g" }],
 *   stock: [{ material: "oil", mass: "17 kg" }, { material: "former", mass: "8 kg" }],
 * });
 * const { materials } = materialsToBuy({ formula, batch });
 * materials.map(({ material, toBuy }) => `${material}: ${toBuy} kg`); // => ["former: 0 kg", "oil: 37.18 kg"]
 * ```
 */
export function materialsToBuy(input: {
  readonly formula: Formula;
  readonly batch: Batch;
  readonly vessel?: BatchVessel | undefined;
  readonly yieldStress?: number | undefined;
}): MaterialsToBuy {
  const { formula, batch } = record(input, "input", known.materialsToBuy);
  const scaled = scaleFormula(input);
  const stock = batch.stock === undefined ? new Map<string, number>() : stockOf(formula, batch);
  return { scaled, materials: usesOf(scaled, stock) };
}
