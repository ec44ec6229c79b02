import { finite, list, positive, record, refuse, result, temperature } from "../error.js";

/** A refractive index, which means nothing without its temperature. */
export interface RefractiveIndex {
  /** Refractive index at the sodium D line, 1 to 3. */
  readonly refractiveIndex: number;
  /** Temperature at which it was read [°C]. */
  readonly temperature: number;
  /** Change with temperature [1/K]; about -3.8e-4 for vegetable oils, from memory. Needed for any other temperature. */
  readonly perKelvin?: number;
}

/** One oil of a blend, or one part of a phase. */
export interface BlendPart {
  /** Mass, above 0, in the unit of the other parts [kg, or %]. */
  readonly mass: number;
  /** Density at the temperature of the refractive index [kg/m³], above 0. */
  readonly density: number;
  /** Refractive index at the temperature of all parts, 1 to 3. */
  readonly refractiveIndex: number;
}

/** The value, if it is a refractive index that a liquid or its solids can have. */
export function index(value: unknown, path: string): number {
  if (typeof value === "number" && value >= 1 && value <= 3) return value;
  return refuse("input", path, value, "a refractive index from 1 to 3");
}

/** The index at a temperature, which is the one where it was read unless its slope is given. */
export function indexAt(oil: RefractiveIndex, at: number, path: string): number {
  const read = index(record(oil, path).refractiveIndex, `${path}.refractiveIndex`);
  const apart = at - temperature(oil.temperature, `${path}.temperature`);
  if (apart === 0) return read;
  if (oil.perKelvin === undefined)
    refuse("input", `${path}.perKelvin`, "nothing", `the change with temperature, since it was read ${-apart} K away`);
  return index(read + finite(oil.perKelvin, `${path}.perKelvin`) * apart, `${path}.refractiveIndex at ${at} °C`);
}

/**
 * The refractive index of a blend of oils, or of a phase with its solids, by Lorentz and Lorenz.
 *
 * $$\frac{n^2 - 1}{n^2 + 2} = \sum_i \varphi_i\,\frac{n_i^2 - 1}{n_i^2 + 2}$$
 *
 * The volumes add up. All indices and densities are of one temperature.
 *
 * @param input.parts - Mass, density [kg/m³] and refractive index of each part; at least one.
 * @returns The refractive index, between the least and the greatest of the parts.
 * @throws CalculationError `input` where an argument is out of range.
 * @source lorentz-lorenz-1880 from memory
 * @example
 * ```ts
 * import { refractiveIndexOfBlend } from "gelwright/gel";
 * const parts = [{ mass: 70, density: 945, refractiveIndex: 1.449 }, { mass: 30, density: 915, refractiveIndex: 1.474 }];
 * refractiveIndexOfBlend({ parts }).toFixed(4); // => "1.4566"
 * ```
 */
export function refractiveIndexOfBlend(input: { readonly parts: readonly BlendPart[] }): number {
  let volume = 0;
  let refraction = 0;
  list(record(input, "input").parts, "parts", 1).forEach((part, i) => {
    const at = `parts[${i}]`;
    const { mass, density, refractiveIndex } = record(part, at);
    const own = positive(mass, `${at}.mass`) / positive(density, `${at}.density`);
    const square = index(refractiveIndex, `${at}.refractiveIndex`) ** 2;
    volume += own;
    refraction += (own * (square - 1)) / (square + 2);
  });
  const share = result(refraction / volume, "refraction");
  return Math.sqrt((1 + 2 * share) / (1 - share));
}
