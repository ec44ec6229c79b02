import { fraction, list, positive, record, refuse, result } from "../guards.js";
import { polyline } from "../numeric/polyline.js";
import type { OilPoint } from "./oil-law.js";

/** Readings at a few oil fractions as a function between them; nothing beyond them. Their logarithm runs straight, or they do. */
export function readingsAlongOil(
  readings: readonly OilPoint[],
  path: string,
  as: "logarithm" | "value",
): (volumeFractionOil: number) => number | undefined {
  const places: number[] = [];
  const values = list(readings, path, 2).map((reading, i) => {
    const at = `${path}[${i}]`;
    const oil = fraction(record(reading, at).volumeFractionOil, `${at}.volumeFractionOil`);
    if (oil <= (places.at(-1) ?? -1))
      refuse("input", `${at}.volumeFractionOil`, oil, "more oil than the reading before");
    places.push(oil);
    const value = positive(reading.value, `${at}.value`);
    return as === "logarithm" ? Math.log(value) : value;
  });
  const [min = 0, max = 0] = [places[0], places.at(-1)];
  return (oil) => {
    // Volumes carry the noise of doubles: a hair past the last reading is the last reading.
    if (oil < min - 1e-12 || oil > max + 1e-12) return undefined;
    const between = polyline(places, values, oil);
    return result(as === "logarithm" ? Math.exp(between) : between, path);
  };
}
