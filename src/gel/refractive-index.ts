import type { RefractiveIndex } from "../formula/index.js";
import { refractiveIndex } from "../formula/refraction.js";
import { finite, record, refuse, temperature } from "../guards.js";
import * as known from "./known.js";

/** The index at a temperature, which is the one where it was read unless its slope is given. */
export function indexAt(oil: RefractiveIndex, at: number, path: string): number {
  const read = refractiveIndex(record(oil, path, known.refractiveIndex).refractiveIndex, `${path}.refractiveIndex`);
  const apart = at - temperature(oil.temperature, `${path}.temperature`);
  if (apart === 0) return read;
  if (oil.perKelvin === undefined)
    refuse("input", `${path}.perKelvin`, "nothing", `the change with temperature, since it was read ${-apart} K away`);
  return refractiveIndex(
    read + finite(oil.perKelvin, `${path}.perKelvin`) * apart,
    `${path}.refractiveIndex at ${at} °C`,
  );
}
