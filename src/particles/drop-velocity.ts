import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";
import { stokes } from "./stokes-velocity.js";

/**
 * How fast a drop of another liquid sinks or rises, with the flow inside it: oil in gel former, glycerin in oil.
 *
 * $$v = \frac{g\,d^2\,(\rho_d - \rho_f)}{18\,\mu}\cdot\frac{3(1 + k)}{2 + 3k} \qquad k = \frac{\mu_d}{\mu}$$
 *
 * It holds for a clean surface. Surfactant makes the surface stiff, and the drop as slow as a sphere: `stokesVelocity`.
 *
 * @param input.diameter - Diameter of the drop [m], above 0.
 * @param input.densityDrop - Density of the drop [kg/m³], above 0.
 * @param input.densityFluid - Density of the liquid around it [kg/m³], above 0.
 * @param input.viscosityDrop - Viscosity of the drop [Pa·s], above 0.
 * @param input.viscosity - Viscosity of the liquid around it [Pa·s], above 0.
 * @param input.beyond - At a Reynolds number of 0.1 or more: `"throw"` (default) or `"extend"`.
 * @returns Velocity [m/s], positive downwards, and Reynolds number.
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more.
 * @source hadamard-1911, rybczynski-1911
 * @example
 * ```ts
 * import { dropVelocity } from "gelwright/particles";
 * const glycerin = { diameter: 100e-6, densityDrop: 1250, viscosityDrop: 1 };
 * dropVelocity({ ...glycerin, densityFluid: 915, viscosity: 0.06 }).velocity; // => 0.00003100375191417379
 * ```
 */
export function dropVelocity(input: {
  readonly diameter: number;
  readonly densityDrop: number;
  readonly densityFluid: number;
  readonly viscosityDrop: number;
  readonly viscosity: number;
  readonly beyond?: Beyond;
}): { readonly velocity: number; readonly reynolds: number } {
  const { diameter, densityDrop, densityFluid, viscosityDrop, viscosity, beyond } = record(
    input,
    "input",
    known.dropVelocity,
  );
  const width = positive(diameter, "diameter");
  const fluid = positive(densityFluid, "densityFluid");
  const outside = positive(viscosity, "viscosity");
  const inside = positive(viscosityDrop, "viscosityDrop");
  const excess = positive(densityDrop, "densityDrop") - fluid;
  const faster = (3 * (outside + inside)) / (2 * outside + 3 * inside);
  const velocity = result((faster * gravity * width * width * excess) / (18 * outside), "velocity");
  const reynolds = result((fluid * Math.abs(velocity) * width) / outside, "reynolds");
  return { velocity, reynolds: withinReynolds(reynolds, stokes.limit, stokes.name, extending(beyond)) };
}
