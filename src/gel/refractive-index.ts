import { refractiveIndex } from "../formula/refraction.js";
import { finite, record, refuse, temperature } from "../guards.js";

/** A refractive index, which means nothing without its temperature. */
export interface RefractiveIndex {
  /** Refractive index at the sodium D line, 1 to 3. */
  readonly refractiveIndex: number;
  /** Temperature at which it was read [°C]. */
  readonly temperature: number;
  /** Change with temperature [1/K]; about -3.8e-4 for vegetable oils, from memory. Needed for any other temperature. */
  readonly perKelvin?: number;
}

/** The index at a temperature, which is the one where it was read unless its slope is given. */
export function indexAt(oil: RefractiveIndex, at: number, path: string): number {
  const read = refractiveIndex(record(oil, path).refractiveIndex, `${path}.refractiveIndex`);
  const apart = at - temperature(oil.temperature, `${path}.temperature`);
  if (apart === 0) return read;
  if (oil.perKelvin === undefined)
    refuse("input", `${path}.perKelvin`, "nothing", `the change with temperature, since it was read ${-apart} K away`);
  return refractiveIndex(
    read + finite(oil.perKelvin, `${path}.perKelvin`) * apart,
    `${path}.refractiveIndex at ${at} °C`,
  );
}
