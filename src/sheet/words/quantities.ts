import type { QuantityCode } from "../../plan/index.js";
import type { Known, Say } from "./types.js";

/** What a law calls the figure that it refused, and in which quantity it is written; without one it is a bare number. */
interface Name {
  readonly name: string;
  readonly quantity?: QuantityCode;
}

const names: Readonly<Record<string, Name>> = {
  temperature: { name: "the temperature", quantity: "temperature" },
  "temperature-end": { name: "the temperature to be reached", quantity: "temperature" },
  "temperature-start": { name: "the temperature at the start", quantity: "temperature" },
  "temperature-bulk": { name: "the temperature of the charge", quantity: "temperature" },
  "temperature-wall": { name: "the temperature of the wall", quantity: "temperature" },
  "temperature-min": { name: "the lowest temperature", quantity: "temperature" },
  "temperature-max": { name: "the highest temperature", quantity: "temperature" },
  duration: { name: "the duration", quantity: "duration" },
  dose: { name: "the dose of gel former", quantity: "mass-fraction" },
  "mass-fraction": { name: "the mass fraction", quantity: "mass-fraction" },
  "mass-fraction-glycerin": { name: "the share of glycerin", quantity: "mass-fraction" },
  "volume-fraction": { name: "the volume fraction", quantity: "volume-fraction" },
  "volume-fraction-oil": { name: "the oil fraction", quantity: "volume-fraction" },
  "reynolds-number": { name: "the Reynolds number" },
  reynolds: { name: "the Reynolds number" },
  viscosity: { name: "the viscosity in Pa·s" },
  "shear-rate": { name: "the shear rate in 1/s" },
  "yield-stress": { name: "the yield stress", quantity: "stress" },
  strength: { name: "the strength", quantity: "stress" },
  speed: { name: "the speed", quantity: "speed" },
  volume: { name: "the volume", quantity: "volume" },
  level: { name: "the level", quantity: "length" },
  diameter: { name: "the diameter", quantity: "length" },
  lots: { name: "the number of lots", quantity: "count" },
};

/** Readings that a fit refused as a whole, and what it would take. */
const unfit: Readonly<Record<string, string>> = {
  trials:
    "no curve can be fitted to the trials: it takes more of them, at doses further apart, and strengths that rise with the dose",
  points: "no curve can be fitted to the readings: it takes more of them, further apart",
};

/** Why readings were refused as a whole, if it is readings that were. */
export function unfitnessOf(quantity: string): string | undefined {
  return unfit[quantity];
}

/** The name of a figure that a law refused. */
export function nameOf(quantity: string): string {
  // A name that is none of these is the kernel's own: its words without the hyphens.
  return names[quantity]?.name ?? `the ${quantity.replaceAll("-", " ")}`;
}

/** The figure itself, with its unit if its quantity has one. */
export function amountOf(value: Known, quantity: string, say: Say): string {
  const code = names[quantity]?.quantity;
  return code ? say.quantity(value, code) : say.number(value);
}
