import type { Formula } from "../formula/index.js";
import { nameOf } from "./allowances-of.js";
import { type BatchCost, costOf } from "./cost.js";
import { text } from "./named.js";
import type { WeighedLot } from "./weigh.js";

/** What the materials of all lots cost, with the currency of their prices; or why that is not known. */
export type CostOfLots = (BatchCost & { readonly currency: string }) | { readonly notKnown: string };

/** Adds up prices of one currency. Currencies are never converted, and a missing price is never guessed. */
export function costOfLots(
  { materials }: Formula,
  lot: WeighedLot,
  lots: number,
  packs: number | undefined,
): CostOfLots {
  const currencies = new Set<string>();
  const lines = [];
  for (const line of lot.lines) {
    const material = materials[line.material];
    if (!material?.price) return { notKnown: `no price: ${text(material?.name ?? line.material, "material name")}` };
    currencies.add(text(material.price.currency, "currency"));
    lines.push({ name: nameOf(line), mass: line.mass * lots, pricePerKilogram: material.price.perKilogram });
  }
  const [currency = "", another] = currencies;
  if (another !== undefined) return { notKnown: `prices in ${currency} and ${another}` };
  return { currency, ...costOf({ lines, delivered: lot.delivered * lots, ...(packs === undefined ? {} : { packs }) }) };
}
