import { positive, record, result } from "../guards.js";
import { compileFlowCurve } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import { flowMoment } from "./flow-moment.js";
import * as known from "./known.js";
import { pullAlong } from "./slope.js";

/** How an even film runs down a slope. */
export interface FilmFlow {
  /** Velocity at the surface [m/s]. */
  readonly velocitySurface: number;
  /** Volume that passes, on each metre of width [m²/s]. */
  readonly flowPerWidth: number;
  /** Shear stress on the wall [Pa]. */
  readonly stressWall: number;
  /** Shear rate at the wall [1/s]. */
  readonly shearRateWall: number;
}

/**
 * How fast an even film runs down a slope, nothing where its yield stress holds it.
 *
 * $$u_s = \int_0^h \dot\gamma(\rho g z \sin\alpha)\,dz \qquad q = \int_0^h z\,\dot\gamma(\rho g z \sin\alpha)\,dz
 *   \qquad \text{Newton: } u_s = \frac{\rho g h^2}{2\mu},\; q = \frac{\rho g h^3}{3\mu}$$
 *
 * For a steady, laminar film on a wall that it does not slip on.
 *
 * @param input.curve - The flow curve.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.thickness - Thickness of the film [m], above 0.
 * @param input.inclination - Slope [°] from level, above 0; 90, a wall, by default.
 * @returns Surface velocity, flow, wall stress and wall shear rate.
 * @throws CalculationError `input` where an argument is out of range.
 * @source bird-2002 section 2.2 for Newton, from memory; otherwise the integral of the flow curve
 * @example
 * ```ts
 * import { filmFlow } from "gelwright/rheology";
 * const curve = { law: "newton", viscosity: 2 } as const;
 * filmFlow({ curve, density: 1000, thickness: 0.001 }).velocitySurface; // => 0.0024516625
 * ```
 */
export function filmFlow(input: {
  readonly curve: FlowCurve;
  readonly density: number;
  readonly thickness: number;
  readonly inclination?: number;
}): FilmFlow {
  const { curve, density, thickness, inclination } = record(input, "input", known.filmFlow);
  const deep = positive(thickness, "thickness");
  const stressWall = result(positive(density, "density") * pullAlong(inclination) * deep, "wall stress");
  const shearRateWall = result(compileFlowCurve(curve, "curve").rateOf(stressWall), "wall shear rate");
  return {
    velocitySurface: result(deep * flowMoment(curve, shearRateWall, 0), "surface velocity"),
    flowPerWidth: result(deep * deep * flowMoment(curve, shearRateWall, 1), "flow"),
    stressWall,
    shearRateWall,
  };
}
