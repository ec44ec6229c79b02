import { positive, record, result } from "../guards.js";
import { compileFlowCurve } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import { root } from "../numeric/root.js";
import { flowMoment } from "./flow-moment.js";
import * as known from "./known.js";
import { pullAlong } from "./slope.js";

/** A film that has drained for some time. */
export interface DrainedFilm {
  /** Thickness at the distance [m]. */
  readonly thickness: number;
  /** Mean thickness from the upper edge down to the distance [m]. */
  readonly thicknessMean: number;
}

/**
 * The film that is left on a wall after draining for a time, at a distance below its upper edge.
 *
 * $$\frac{x}{t} = h\,\dot\gamma(\rho g h \sin\alpha) \qquad
 *   \text{Newton: } h = \sqrt{\frac{\mu\,x}{\rho g t}} \qquad
 *   \text{power law: } h = \left(\frac{K}{\rho g}\right)^{1/(n+1)}\left(\frac{x}{t}\right)^{n/(n+1)}$$
 *
 * Each thickness travels down at a speed of its own; Jeffreys found it for Newton's fluid, and the same balance gives
 * it for any flow curve. With a yield stress the film thins towards the thickest that does not run, and stays there.
 * It holds where the film was thicker at the start than it is now, from a straight upper edge, without surface tension
 * or evaporation; the mean, times area and density, is what an unscraped wall keeps.
 *
 * @param input.curve - The flow curve, at the temperature of the wall.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.distance - Distance below the upper edge [m], above 0.
 * @param input.duration - Time since the vessel was emptied [s], above 0.
 * @param input.inclination - Slope [°] from level, above 0; 90, a wall, by default.
 * @returns Thickness there, and mean thickness from the edge down to there [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source jeffreys-1930 for Newton, from memory; for other curves by the same balance, derived here
 * @example
 * ```ts
 * import { drainedFilm } from "gelwright/rheology";
 * const curve = { law: "newton", viscosity: 0.980665 } as const;
 * Math.round(drainedFilm({ curve, density: 1000, distance: 0.36, duration: 36 }).thickness * 1e9); // => 1000000
 * ```
 */
export function drainedFilm(input: {
  readonly curve: FlowCurve;
  readonly density: number;
  readonly distance: number;
  readonly duration: number;
  readonly inclination?: number;
}): DrainedFilm {
  const { curve, density, distance, duration, inclination } = record(input, "input", known.drainedFilm);
  const { stressOf } = compileFlowCurve(curve, "curve");
  const pull = positive(density, "density") * pullAlong(inclination);
  const long = positive(distance, "distance");
  const speed = long / positive(duration, "duration");
  // Stress times rate at the wall is pull times speed, and rises at least as fast as the rate: so the bracket holds it.
  const goal = Math.log(result(pull * speed, "draining"));
  const off = (log: number): number => Math.log(stressOf(Math.exp(log))) + log - goal;
  const reach = result(Math.abs(off(0)), "draining") * (1 + 1e-9) + 1e-9;
  const rate = Math.exp(root(off, -reach, reach, "wall shear rate", 1e-15));
  const thickness = result(stressOf(rate) / pull, "thickness");
  const gone = (thickness * thickness * flowMoment(curve, rate, 1)) / speed;
  return { thickness, thicknessMean: result(thickness - gone, "mean thickness") };
}
