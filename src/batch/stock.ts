import type { Formula } from "../formula/index.js";
import { list, notNegative, record, refuse } from "../guards.js";
import { increment as decimal, multiple, slack } from "../numeric/decimal.js";
import { minOf } from "../numeric/extremes.js";
import { text } from "./named.js";
import type { ScaledBatch } from "./scale.js";
import type { Batch } from "./types.js";

/** What a batch takes of a material, and what there is of it. */
export interface StockUse {
  /** Key of the material. */
  readonly material: string;
  /** What all lots take of it [kg], as the balances show it. */
  readonly needed: number;
  /** What there is of it [kg]; left out if the stock list has no entry for it. */
  readonly inStock?: number;
  /** What is missing for the batch [kg], rounded up to the last digit of the balance: 0 if there is enough, all that is needed if the stock list has no entry. */
  readonly toBuy: number;
}

/** What there is of each material on the stock list [kg]. */
export function stockOf({ materials }: Formula, { stock }: Batch): ReadonlyMap<string, number> {
  const masses = new Map<string, number>();
  list(stock ?? [], "stock", 1).forEach((entry, i) => {
    const at = `stock[${i}]`;
    const material = text(record(entry, at).material, `${at}.material`);
    if (!Object.hasOwn(materials, material))
      refuse("input", `${at}.material`, material, "the key of a material of the formula, not of a premix", {
        rule: "unknown-name",
      });
    masses.set(material, (masses.get(material) ?? 0) + notNegative(entry.mass, `${at}.mass`));
  });
  return masses;
}

/** What the lots of a batch take of each material, in the order of weighing, and what is in stock [kg]. */
export function usesOf({ lot, lots }: ScaledBatch, stock: ReadonlyMap<string, number>): readonly StockUse[] {
  const keys = [...new Set(lot.lines.map(({ material }) => material))];
  return keys.map((material) => {
    const lines = lot.lines.filter((line) => line.material === material);
    const exponent = minOf(lines.map(({ increment }) => decimal(increment, "increment").exponent));
    // In whole numbers of the last digit that any of its balances shows.
    const digits = (mass: number): number => mass / 10 ** exponent;
    const taken = lines.reduce((sum, { mass }) => sum + Math.round(digits(mass)) * lots, 0);
    const kilograms = (count: number): number => multiple(count, { digits: 1, exponent }, `needed of ${material}`);
    const inStock = stock.get(material);
    const missing = Math.ceil(taken - digits(inStock ?? 0) * (1 + slack));
    return {
      material,
      needed: kilograms(taken),
      ...(inStock !== undefined && { inStock }),
      toBuy: kilograms(Math.max(0, missing)),
    };
  });
}
