import { positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";
import { eachPart, type MixturePart } from "./mixture.js";

/** The value, if it is a refractive index that a liquid or its solids can have. */
export function refractiveIndex(value: unknown, path: string): number {
  if (typeof value === "number" && value >= 1 && value <= 3) return value;
  return refuse("input", path, value, "a refractive index from 1 to 3");
}

/** A part of a mixture, as its refractive index needs it. */
export interface RefractivePart extends MixturePart {
  /** Density at the temperature [kg/m³], above 0. */
  readonly density: number;
  /** Refractive index at the temperature, 1 to 3. */
  readonly refractiveIndex: number;
}

/**
 * The refractive index of a mixture of oils, or of a phase with its solids, by Lorentz and Lorenz with volumes that add up.
 *
 * $$\frac{n^2 - 1}{n^2 + 2} = \sum_i \varphi_i\,\frac{n_i^2 - 1}{n_i^2 + 2}$$
 *
 * An index means nothing without its temperature: between 20 and 40 °C that of an oil falls by about 0.0076 (0.0070 to 0.0084,
 * worked from its expansion). All parts
 * are at the one temperature that is given, and so is the result.
 *
 * @param input.temperature - The temperature of all densities and indices [°C].
 * @param input.parts - Mass [kg] (or share), density [kg/m³] and refractive index of each part; at least one.
 * @returns The refractive index at that temperature, between the lowest and the highest of the parts.
 * @throws CalculationError `input` where an argument is out of range.
 * @source lorentz-lorenz-1880 from memory
 * @example
 * ```ts
 * import { refractiveIndexOfMixture } from "gelwright/formula";
 * const parts = [
 *   { mass: 70, density: 945, refractiveIndex: 1.449 },
 *   { mass: 30, density: 915, refractiveIndex: 1.474 },
 * ];
 * refractiveIndexOfMixture({ temperature: 20, parts }); // => 1.456622151205508
 * ```
 */
export function refractiveIndexOfMixture(input: {
  readonly temperature: number;
  readonly parts: readonly RefractivePart[];
}): number {
  temperature(record(input, "input", known.refractiveIndexOfMixture).temperature, "temperature");
  let volume = 0;
  let refraction = 0;
  eachPart(input, (part, at) => {
    const own = part.mass / positive(part.density, `${at}.density`);
    const square = refractiveIndex(part.refractiveIndex, `${at}.refractiveIndex`) ** 2;
    volume += own;
    refraction += (own * (square - 1)) / (square + 2);
  });
  const share = result(refraction / volume, "refraction");
  return Math.sqrt((1 + 2 * share) / (1 - share));
}
