import { CalculationError } from "../error.js";
import type { Formula } from "../formula/index.js";
import { record, refuse } from "../guards.js";
import { stepsDown } from "../numeric/decimal.js";
import { maxOf } from "../numeric/extremes.js";
import type { BatchVessel } from "./allowances-of.js";
import * as known from "./known.js";
import { largestMass } from "./largest-mass.js";
import { type ScaledBatch, scaledTo } from "./scale.js";
import { type Scaling, scalingOf } from "./scaling.js";
import { type StockUse, stockOf, usesOf } from "./stock.js";
import type { Batch } from "./types.js";

/** The largest batch that a stock makes. */
export interface LargestBatch {
  /** The batch, as `scaleFormula` scales it; `massTarget` is its size. */
  readonly scaled: ScaledBatch;
  /**
   * Keys of the materials that limit it: used up, to the digit of the balances, or less than one more pack or one more
   * full lot would take. Empty where another lot would be too little for the vessel.
   */
  readonly limitedBy: readonly string[];
  /** What it takes of each material. */
  readonly materials: readonly StockUse[];
}

/** What the largest batch is searched with. */
interface Search {
  readonly scaling: Scaling;
  /** Of each material [kg]. */
  readonly stock: ReadonlyMap<string, number>;
}

/**
 * The largest batch that the materials in stock make, and which of them limits it.
 *
 * $$m = \max\left\lbrace m : n\,m_i(m/n) \le S_i \ \text{for every material } i \text{ in stock}\right\rbrace$$
 *
 * The reverse of `scaleFormula`: a batch of that size, scaled like any other and rounded to the balances, takes no more
 * of a material than there is. All allowances count for every lot, the film too. Premixes are opened into their
 * materials. The amount that the batch document asks for is ignored; if it asks for packs, their fill counts, and packs
 * stay whole. A material without an entry in the stock list does not limit the batch: `materials` says how much of it is
 * needed.
 *
 * @param input.formula - A formula that was read.
 * @param input.batch - A batch that was read, with its `stock` [kg].
 * @param input.vessel - Name, working volumes [m³] and inner diameter [m]. Without it the batch is one lot, and no film can be calculated.
 * @param input.yieldStress - Yield stress [Pa] of the gel as the vessel is emptied, for a film without a thickness.
 * @returns The batch, scaled; the materials that limit it; and what it takes of each [kg].
 * @throws CalculationError `input` where something needed is missing, or the stock names no material of the formula; `unreachable` where the stock makes no batch: less than the losses of a lot take, than a pack, than the vessel or the balances need.
 * @source definition
 * @example
 * ```ts
 * import { largestBatch, readBatch } from "gelwright/batch";
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
 *   target: { packs: 1, fillMass: "50 g" },
 *   allowances: [{ kind: "mass", name: "samples", mass: "200 g" }],
 *   balances: [{ name: "floor", increment: "1 g", capacity: "60 kg", minimumWeight: "50 g" }],
 *   stock: [{ material: "oil", mass: "17 kg" }, { material: "former", mass: "5 kg" }],
 * });
 * const largest = largestBatch({ formula, batch });
 * largest.scaled.packs; // => 373
 * largest.limitedBy; // => ["oil"]
 * ```
 */
export function largestBatch(input: {
  readonly formula: Formula;
  readonly batch: Batch;
  readonly vessel?: BatchVessel | undefined;
  readonly yieldStress?: number | undefined;
}): LargestBatch {
  const scaling = scalingOf(record(input, "input", known.largestBatch));
  const { formula, batch } = scaling;
  const search = { scaling, stock: stockOf(formula, batch) };
  if (!scaling.lines.some(({ material }) => search.stock.has(material)))
    refuse("input", "stock", [...search.stock.keys()].join(", "), "a material that the batch takes");
  return batch.packs === undefined ? byMass(search) : byPacks(search, scaling.massTarget / batch.packs);
}

/** For a batch that is asked for by mass or volume. */
function byMass({ scaling, stock }: Search): LargestBatch {
  const { mass, limitedBy } = largestMass(scaling)(stock);
  let scaled = scaledTo(scaling, mass, undefined);
  // If rounding takes more than there is, a batch that is smaller by a quarter of the excess is tried.
  for (let tries = 0; tries < triesMax; tries += 1) {
    const uses = usesOf(scaled, stock);
    const over = maxOf(uses.map(({ inStock, toBuy, needed }) => (inStock === undefined ? 0 : toBuy / needed)));
    if (over === 0) return { scaled, limitedBy, materials: uses };
    scaled = scaledTo(scaling, scaled.massTarget * (1 - over / 4), undefined);
  }
  return refuse(
    "unreachable",
    "stock",
    "less than the balances can be kept within",
    "finer balances, or more in stock",
  );
}

/** How many batches are tried, about: rounding takes at most one step of the balance too much for each line and lot. */
const triesMax = 200;

/** For a batch in whole packs. */
function byPacks({ scaling, stock }: Search, fill: number): LargestBatch {
  const { lots = 1 } = scaling.batch;
  const massFrom = largestMass(scaling);
  const packsFrom = (there: ReadonlyMap<string, number>): number => stepsDown(massFrom(there).mass / fill);
  const inPacks = (packs: number): ScaledBatch => scaledTo(scaling, packs * fill, packs);
  // Masses that are rounded down may leave enough for a pack or two more.
  const exact = Math.max(lots, packsFrom(stock));
  const steps = stepsOf(inPacks(exact), scaling);
  const atMost = packsFrom(new Map([...stock].map(([key, mass]) => [key, mass + (steps.get(key) ?? 0)])));
  // Every number of packs is tried, unless a pack is far lighter than a step of the balance.
  const leap = Math.max(1, Math.floor((atMost - exact) / triesMax));
  for (let packs = atMost; packs >= lots; packs -= Math.min(leap, packs - lots) || 1) {
    const scaled = inPacks(packs);
    if (shortOf(scaled, stock).length === 0) return upTo(scaled, leap, inPacks, stock);
  }
  return refuse("unreachable", "stock", "too little", `enough for ${lots} packs of ${fill} kg`);
}

/** From a batch that the stock makes up to one that cannot have one pack more. */
function upTo(
  first: ScaledBatch,
  leap: number,
  inPacks: (packs: number) => ScaledBatch,
  stock: ReadonlyMap<string, number>,
): LargestBatch {
  let scaled = first;
  for (let more = leap; ; ) {
    // All lots together may hold a few packs more than were asked for.
    const { lots, packsOfLot = 0 } = scaled;
    const largest = lots * packsOfLot;
    const larger = orUndefined(() => inPacks(largest + more));
    const limitedBy = larger ? shortOf(larger, stock) : [];
    if (larger && limitedBy.length === 0) scaled = larger;
    else if (more > 1) more = Math.floor(more / 2);
    else {
      const whole = scaled.packs === largest ? scaled : inPacks(largest);
      return { scaled: whole, limitedBy, materials: usesOf(whole, stock) };
    }
  }
}

/** Materials in stock of which a batch takes more than there is. */
function shortOf(scaled: ScaledBatch, stock: ReadonlyMap<string, number>): readonly string[] {
  return usesOf(scaled, stock).flatMap(({ material, inStock, toBuy }) =>
    inStock !== undefined && toBuy > 0 ? [material] : [],
  );
}

/** A batch, unless it cannot be made for a reason other than its stock. */
function orUndefined(batch: () => ScaledBatch): ScaledBatch | undefined {
  try {
    return batch();
  } catch (error) {
    if (error instanceof CalculationError) return undefined;
    throw error;
  }
}

/** How far rounding may move the weighings of a material, all lots together [kg]: by a step of the balance; the line that takes up what is left over, by the steps of all lines. */
function stepsOf({ lot, lots }: ScaledBatch, { lines }: Scaling): ReadonlyMap<string, number> {
  const all = lot.lines.reduce((sum, { increment }) => sum + increment, 0);
  const steps = new Map<string, number>();
  lot.lines.forEach(({ material, increment }, i) => {
    const step = lines[i]?.carrier ? all : increment;
    steps.set(material, (steps.get(material) ?? 0) + lots * step);
  });
  return steps;
}
