import { positive, record, result } from "../guards.js";
import { levelOfVolume } from "./filling.js";
import * as known from "./known.js";
import { compileBottom, type VesselShape } from "./vessel-bottom.js";

/** The bottom of a vessel by itself, up to where the wall is upright. */
export interface BottomGeometry {
  /** [m]; 0 for a flat one. */
  readonly depth: number;
  /** What it holds [m³]. */
  readonly volume: number;
  /** Of its face [m²]. */
  readonly area: number;
}

/**
 * Depth, content and face of the bottom of an upright round vessel.
 *
 * $$A_\mathrm{cone} = \frac{\pi T}{2}\sqrt{h^2 + \tfrac{T^2}{4}} \qquad A_\mathrm{dish} = 2\pi R\,h_R + 2\pi r\,(c\,\theta + r\sin\theta)$$
 *
 * for a cone of depth h, and for a dish whose sphere of radius R is $h_R$ deep and goes over into a rounding of radius r,
 * about a circle of radius c, through the angle $\theta$. Half an ellipsoid is integrated along its curve.
 *
 * @param input.vessel - Inner diameter [m] and bottom, as plain data.
 * @returns Depth [m], content [m³], area [m²].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { bottomGeometry } from "gelwright/mixing";
 * bottomGeometry({ vessel: { diameter: 0.6, bottom: { shape: "dished" } } }).depth; // => 0.11626453510208704
 * ```
 */
export function bottomGeometry(input: { readonly vessel: VesselShape }): BottomGeometry {
  const { vessel } = record(input, "input", known.bottomGeometry);
  const { depth, below, wetted } = compileBottom(vessel, "vessel");
  return { depth, volume: result(below(depth), "volume"), area: result(wetted(depth), "area") };
}

/** What fills a vessel, with the faces that it has. */
export interface VesselFilling {
  /** Above the lowest point [m]. */
  readonly level: number;
  /** Of wall and bottom [m²]. */
  readonly areaWetted: number;
  /** Of its surface [m²]. */
  readonly areaSurface: number;
  /** Both over the volume [1/m]: what decides how fast it cools beside one of another size. */
  readonly surfaceToVolume: number;
}

/**
 * Level, wetted area and surface of what fills an upright round vessel.
 *
 * $$A = A_\mathrm{bottom} + \pi T\,(h - h_\mathrm{bottom}) \qquad \frac{A}{V} = \frac{A + A_\mathrm{surface}}{V}$$
 *
 * Below the upright wall only the part of the bottom that is wetted counts, and the surface is narrower than the vessel.
 *
 * @param input.vessel - Inner diameter [m] and bottom, as plain data.
 * @param input.volume - Volume of the filling [m³], above 0.
 * @returns Level [m], wetted area and surface [m²], area to volume [1/m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { vesselFilling } from "gelwright/mixing";
 * const vessel = { diameter: 0.6, bottom: { shape: "cone", depth: 0.3 } } as const;
 * vesselFilling({ vessel, volume: 0.1 }).surfaceToVolume; // => 11.607739107086134
 * ```
 */
export function vesselFilling(input: { readonly vessel: VesselShape; readonly volume: number }): VesselFilling {
  const { vessel, volume } = record(input, "input", known.vesselFilling);
  const { diameter, depth, wetted, radius } = compileBottom(vessel, "vessel");
  const level = levelOfVolume({ vessel, volume: positive(volume, "volume") });
  const inBottom = Math.min(level, depth);
  const areaWetted = result(wetted(inBottom) + Math.PI * diameter * (level - inBottom), "wetted area");
  const areaSurface = result(Math.PI * radius(inBottom) ** 2, "surface");
  return {
    level,
    areaWetted,
    areaSurface,
    surfaceToVolume: result((areaWetted + areaSurface) / volume, "surfaceToVolume"),
  };
}
