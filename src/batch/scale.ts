import type { Formula } from "../formula/index.js";
import { record } from "../guards.js";
import type { BatchVessel } from "./allowances-of.js";
import type { BatchCharge } from "./charge.js";
import * as known from "./known.js";
import { type CostOfLots, costOfLots } from "./lots-cost.js";
import { chargeOf, lotsOf, type Scaling, scalingOf } from "./scaling.js";
import type { Batch } from "./types.js";
import { type WeighedLot, weigh } from "./weigh.js";

/** A formula scaled to a batch: what to weigh on what, how often, and what arrives. */
export interface ScaledBatch {
  /** Finished product asked for [kg]. */
  readonly massTarget: number;
  /** Packs asked for, where the target is in packs. */
  readonly packs?: number | undefined;
  /** Density of the product at 20 °C [kg/m³]; left out where it is not known. */
  readonly density?: number | undefined;
  /** Equal lots: as many as were asked for, else the fewest that fit the vessel with their packs whole. */
  readonly lots: number;
  /** Finished product that one lot is to bring [kg]. */
  readonly massOfLot: number;
  /** Packs of one lot, where the target is in packs; all lots together may hold a few more than were asked for. */
  readonly packsOfLot?: number | undefined;
  /** Exact charge of one lot, before rounding, and what each allowance takes. */
  readonly charge: BatchCharge;
  /** What is weighed for one lot. */
  readonly lot: WeighedLot;
  /** What the materials of all lots cost, per kilogram and pack delivered; or why that is not known. */
  readonly cost: CostOfLots;
}

/**
 * Scales a formula to a batch: charge with its allowances, lots, balances, rounded masses, tolerances and cost.
 *
 * Every allowance counts for each lot, because each lot empties the vessel once. The masses are rounded so that what was
 * asked for still arrives after all allowances. A lot holds whole packs. Volumes are at 20 °C: leave room in the vessel
 * for a hot batch to expand, or ask for more lots.
 *
 * @param input.formula - A formula that was read.
 * @param input.batch - A batch that was read.
 * @param input.vessel - Name, working volumes [m³] and inner diameter [m]. Without it the batch is one lot, and no film can be calculated.
 * @param input.yieldStress - Yield stress [Pa] of the gel as the vessel is emptied, for a film without a thickness.
 * @returns The scaled batch: masses in kg, cost in the currency of the prices.
 * @throws CalculationError `input` where something needed is missing, such as a density for a volume; `unreachable`,
 *   naming every line that no balance can weigh, or where no number of equal lots fits the vessel.
 * @source definition
 * @example
 * ```ts
 * import { readBatch, scaleFormula } from "gelwright/batch";
 * import { readFormula } from "gelwright/formula";
 * const formula = readFormula({
 *   version: 1,
 *   name: "bench trial",
 *   materials: {
 *     former: { name: "gel former", function: "gel former" },
 *     oil: { name: "sunflower oil", function: "oil" },
 *   },
 *   phases: [
 *     { name: "A", lines: [{ material: "former", amount: "9 %" }, { material: "oil", amount: "q.s." }] },
 *   ],
 * });
 * const batch = readBatch({
 *   version: 1,
 *   target: { mass: "5 kg" },
 *   allowances: [{ kind: "mass", name: "samples", mass: "123.4 g" }],
 *   balances: [{ name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "50 g" }],
 * });
 * scaleFormula({ formula, batch }).lot.lines.map((line) => line.mass); // => [0.461, 4.663]
 * ```
 */
export function scaleFormula(input: {
  readonly formula: Formula;
  readonly batch: Batch;
  readonly vessel?: BatchVessel | undefined;
  readonly yieldStress?: number | undefined;
}): ScaledBatch {
  const scaling = scalingOf(record(input, "input", known.scaleFormula));
  return scaledTo(scaling, scaling.massTarget, scaling.batch.packs);
}

/** The batch scaled to a mass of finished product [kg], and to a number of packs if it is asked for in packs. */
export function scaledTo(scaling: Scaling, massTarget: number, packs: number | undefined): ScaledBatch {
  const { formula, batch, lines, density, allowances } = scaling;
  const { lots, massOfLot, packsOfLot } = lotsOf(scaling, massTarget, packs);
  const charge = chargeOf(scaling, massOfLot);
  const lot = weigh(lines, charge, allowances, massOfLot, batch, formula.materials);
  const cost = costOfLots(formula, lot, lots, packsOfLot === undefined ? undefined : packsOfLot * lots);
  return { massTarget, packs, density, lots, massOfLot, packsOfLot, charge, lot, cost };
}
