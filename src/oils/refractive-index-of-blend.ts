import { list, positive, record, refuse, result, temperature } from "../error.js";
import { fractionsOf, meanOf } from "./fractions.js";

/** An oil of a blend, as the refractive index needs it. */
export interface RefractivePart {
  /** Mass [kg] or share, 0 or more; only the proportions count. */
  readonly mass: number;
  /** Density at the temperature [kg/m³], above 0. */
  readonly density: number;
  /** Refractive index at the temperature, 1 to 3. */
  readonly refractiveIndex: number;
}

/**
 * The refractive index of a blend of oils, by Lorentz and Lorenz with volumes that add up.
 *
 * $$\frac{n^2 - 1}{n^2 + 2} = \sum_i \varphi_i\,\frac{n_i^2 - 1}{n_i^2 + 2}$$
 *
 * An index means nothing without its temperature: between 20 and 40 °C that of an oil falls by about 0.008. All parts
 * are at the one temperature that is given, and so is the result.
 *
 * @param input.temperature - The temperature of all densities and indices [°C].
 * @param input.parts - Mass [kg], density [kg/m³] and refractive index of each oil; at least one.
 * @returns The refractive index at that temperature, between the least and the greatest of the parts.
 * @throws CalculationError `input` where an argument is out of range.
 * @source lorentz-lorenz-1880 from memory
 * @example
 * ```ts
 * import { refractiveIndexOfBlend } from "gelwright/oils";
 * const parts = [
 *   { mass: 70, density: 945, refractiveIndex: 1.449 },
 *   { mass: 30, density: 915, refractiveIndex: 1.474 },
 * ];
 * refractiveIndexOfBlend({ temperature: 20, parts }); // => 1.456622151205508
 * ```
 */
export function refractiveIndexOfBlend(input: {
  readonly temperature: number;
  readonly parts: readonly RefractivePart[];
}): number {
  const { parts, temperature: warmth } = record(input, "input");
  temperature(warmth, "temperature");
  const refraction = meanOf(volumeFractionsOf(parts), (i) => {
    const square = index(parts[i]?.refractiveIndex, `parts[${i}].refractiveIndex`) ** 2;
    return (square - 1) / (square + 2);
  });
  return result(Math.sqrt((1 + 2 * refraction) / (1 - refraction)), "refractive index");
}

/** The share of each part in the volume, from masses and densities, where volumes add up. */
function volumeFractionsOf(parts: readonly { readonly mass: number; readonly density: number }[]): readonly number[] {
  const masses = fractionsOf(parts, "mass");
  const volumes = masses.map((mass, i) => ({
    volume: mass / positive(list(parts, "parts")[i]?.density, `parts[${i}].density`),
  }));
  return fractionsOf(volumes, "volume");
}

function index(value: unknown, path: string): number {
  if (typeof value === "number" && value >= 1 && value <= 3) return value;
  return refuse("input", path, value, "a refractive index from 1 to 3");
}
