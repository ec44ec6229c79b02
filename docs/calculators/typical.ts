import { type Band, choiOkosFat, choiOkosFatBands, specificHeatAt } from "gelwright/laws";

/** A figure to start from that the library itself gives, with its reason and how sure it is. */
export interface Typical {
  readonly value: number;
  readonly reason: string;
  readonly band?: Band;
}

/** Of a liquid oil at a temperature [°C], rounded to what a sheet would say. */
export function oilSpecificHeat(temperature: number): Typical {
  const value = specificHeatAt({ law: choiOkosFat.specificHeat, temperature });
  return {
    value: Math.round(value / 5) * 5,
    reason: `That of liquid fats and oils at ${temperature} °C, from the law choiOkosFat; your supplier may state one.`,
    band: choiOkosFatBands.specificHeat,
  };
}
