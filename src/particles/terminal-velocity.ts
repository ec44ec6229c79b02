import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { gravity } from "../laws/gravity.js";
import { compileDrag, shareOfStokes } from "./compile-drag.js";
import type { DragLaw } from "./drag-law.js";
import * as known from "./known.js";

/**
 * How fast one particle sinks or rises, by any drag law: coarse grains in a thin melt, and flakes in thick oil.
 *
 * $$\tfrac43\,\frac{g\,d\,|\rho_p - \rho_f|}{\rho_f\,v^2} = C_D(\mathrm{Re}) \qquad \mathrm{Re} = \frac{\rho_f\,|v|\,d}{\mu}$$
 *
 * A flake that lies at rest in thick oil keeps the way it lies, and drifts sideways when it is tilted: face on and edge
 * on are the bounds. A yield stress that holds the particle is not in these laws.
 *
 * @param input.diameter - Diameter of the sphere of equal volume [m], above 0; `flakeShape` gives that of a flake.
 * @param input.densityParticle - Density of the particle [kg/m³], above 0.
 * @param input.densityFluid - Density of the liquid [kg/m³], above 0.
 * @param input.viscosity - Viscosity of the liquid [Pa·s], above 0.
 * @param input.drag - The drag law, as plain data.
 * @param input.beyond - Outside the law's range of Reynolds number or shape: `"throw"` (default) or `"extend"`.
 * @returns Velocity [m/s], positive downwards, and Reynolds number.
 * @throws CalculationError `input` where an argument is out of range, `range` outside the range of the law.
 * @source perry-2008 section 6, as for `dragCoefficient`
 * @example
 * ```ts
 * import { terminalVelocity } from "gelwright/particles";
 * const grain = { diameter: 2e-3, densityParticle: 2650, densityFluid: 880, viscosity: 0.01 };
 * terminalVelocity({ ...grain, drag: { law: "schiller-naumann" } }).velocity; // => 0.15655534954674363
 * ```
 */
export function terminalVelocity(input: {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
  readonly viscosity: number;
  readonly drag: DragLaw;
  readonly beyond?: Beyond;
}): { readonly velocity: number; readonly reynolds: number } {
  const { diameter, densityParticle, densityFluid, viscosity, drag, beyond } = record(
    input,
    "input",
    known.terminalVelocity,
  );
  const extended = extending(beyond);
  const width = positive(diameter, "diameter");
  const fluid = positive(densityFluid, "densityFluid");
  const thickness = positive(viscosity, "viscosity");
  const excess = positive(densityParticle, "densityParticle") - fluid;
  const stokes = result((gravity * width * width * excess) / (18 * thickness), "velocity");
  const reynolds = result((fluid * Math.abs(stokes) * width) / thickness, "reynolds");
  const share = shareOfStokes(compileDrag(drag, extended), reynolds, extended);
  return { velocity: result(share * stokes, "velocity"), reynolds: result(share * reynolds, "reynolds") };
}
