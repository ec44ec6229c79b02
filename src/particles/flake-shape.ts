import { positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** The shape of a flake, in the numbers that drag laws ask for. */
export interface FlakeShape {
  /** Diameter of the sphere of equal volume [m]. */
  readonly diameter: number;
  /** Surface of that sphere over the surface of the flake, below 1. */
  readonly sphericity: number;
  /** Thickness over diameter of the flake. */
  readonly aspectRatio: number;
}

/**
 * What a flake of glitter or mica comes to as a particle: the sphere of its volume, its sphericity, its aspect ratio.
 *
 * $$d_V = \left(\tfrac32\,D^2 h\right)^{1/3} \qquad \psi = \frac{\pi d_V^2}{\tfrac{\pi}{2}D^2 + \pi D h}$$
 *
 * A flake that is no disc, hexagonal glitter for one, is taken as the disc of equal area.
 *
 * @param input.diameter - Diameter of the flake [m], above 0.
 * @param input.thickness - Thickness of the flake [m], above 0 and not above its diameter.
 * @returns Diameter of the sphere of equal volume [m], sphericity, aspect ratio.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { flakeShape, terminalVelocity } from "gelwright/particles";
 * const { diameter, aspectRatio } = flakeShape({ diameter: 200e-6, thickness: 20e-6 });
 * const drag = { law: "disc", aspectRatio, orientation: "broadside" } as const;
 * terminalVelocity({ diameter, densityParticle: 1400, densityFluid: 910, viscosity: 1, drag }).velocity; // => 0.0000018870206002749891
 * ```
 */
export function flakeShape(input: { readonly diameter: number; readonly thickness: number }): FlakeShape {
  const { diameter, thickness } = record(input, "input", known.flakeShape);
  const width = positive(diameter, "diameter");
  const height = positive(thickness, "thickness");
  if (height > width) refuse("input", "thickness", height, `at most the diameter, ${width} m`);
  const aspectRatio = height / width;
  const relative = Math.cbrt(1.5 * aspectRatio);
  return {
    diameter: result(width * relative, "diameter"),
    sphericity: result(relative ** 2 / (0.5 + aspectRatio), "sphericity"),
    aspectRatio: result(aspectRatio, "aspect ratio"),
  };
}

/**
 * The flake behind a size analysis, which gives the sphere of equal volume: how wide it is, and its shape for drag laws.
 *
 * $$D = \sqrt{\frac{2\,d_V^3}{3\,h}}$$
 *
 * The inverse of `flakeShape`, where the thickness is known and the width is not.
 *
 * @param input.diameter - Diameter of the sphere of equal volume [m], above 0.
 * @param input.thickness - Thickness of the flake [m], above 0 and no more than that of a disc as thick as it is wide.
 * @returns Width of the flake [m], and its shape.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { flakeOfVolume, flakeShape } from "gelwright/particles";
 * const { diameter } = flakeShape({ diameter: 60e-6, thickness: 1e-6 });
 * Math.round(flakeOfVolume({ diameter, thickness: 1e-6 }).width * 1e9) / 1e9; // => 0.00006
 * ```
 */
export function flakeOfVolume(input: {
  readonly diameter: number;
  readonly thickness: number;
}): FlakeShape & { readonly width: number } {
  const { diameter, thickness } = record(input, "input", known.flakeOfVolume);
  const sphere = positive(diameter, "diameter");
  const height = positive(thickness, "thickness");
  const width = result(sphere * Math.sqrt((2 * sphere) / (3 * height)), "width");
  if (height > width)
    refuse("input", "thickness", height, `at most ${sphere * Math.cbrt(2 / 3)} m, that of a disc as thick as wide`);
  return { width, ...flakeShape({ diameter: width, thickness: height }) };
}
