import { positive, record, result } from "../guards.js";

/** What fills an upright, flat-bottomed cylinder. */
export interface Filling {
  /** Height of the filling [m]. */
  readonly height: number;
  /** Wall, bottom and surface together [m²]. */
  readonly area: number;
  /** Area to volume [1/m]: what decides how fast it cools beside one of another size. */
  readonly surfaceToVolume: number;
}

/**
 * Height, area and surface to volume of what fills an upright, flat-bottomed vessel.
 *
 * $$H = \frac{4V}{\pi D^2} \qquad A = \pi D H + \frac\pi2 D^2 \qquad \frac AV = \frac4D + \frac2H$$
 *
 * @param input.volume - Volume of the filling [m³], above 0.
 * @param input.diameter - Inner diameter of the vessel [m], above 0.
 * @returns Height [m], area [m²], area to volume [1/m].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { filling } from "gelwright/heat";
 * filling({ volume: 0.002, diameter: 0.1 }).height; // => 0.25464790894703254
 * ```
 */
export function filling(input: { readonly volume: number; readonly diameter: number }): Filling {
  const { volume, diameter } = record(input, "input");
  const across = positive(diameter, "diameter");
  const height = result((4 * positive(volume, "volume")) / (Math.PI * across * across), "height");
  const area = result(Math.PI * across * (height + across / 2), "area");
  return { height, area, surfaceToVolume: result(area / volume, "surfaceToVolume") };
}
