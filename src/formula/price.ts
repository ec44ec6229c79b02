import { refuse, show } from "../guards.js";
import { readQuantity, type Unit } from "../units/index.js";

/** A price per mass with its currency in three letters (ISO 4217): `"12.50 EUR/kg"`. */
export type PriceText = `${number} ${Uppercase<string>}/${Unit<"mass">}`;

/** What a material costs. */
export interface Price {
  /** Amount of money per kilogram. */
  readonly perKilogram: number;
  /** Currency, three letters (ISO 4217). */
  readonly currency: string;
}

/** Reads `"12.50 EUR/kg"`. Currencies are never converted. */
export function readPrice(text: string): Price {
  const [, amount, currency = "", unit = ""] = /^(\d+(?:\.\d+)?)\s*([A-Z]{3})\s*\/\s*(\S+)$/.exec(text.trim()) ?? [];
  const perKilogram = amount === undefined ? Number.NaN : Number(amount) / readQuantity(`1 ${unit}`, "mass");
  if (Number.isFinite(perKilogram)) return { perKilogram, currency };
  const expected = "a price per mass with its currency in three letters, such as 12.50 EUR/kg";
  return refuse("document", "price", show(text), expected, { rule: "not-a-price" });
}
