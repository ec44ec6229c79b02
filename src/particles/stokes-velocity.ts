import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";

/** Stokes' law is used below this Reynolds number, and a fault calls it by this name. */
export const stokes = { limit: 0.1, name: "Stokes' law (5 % off near 0.3)" };

/**
 * How fast one sphere sinks or rises in a liquid, with the Reynolds number that says whether Stokes' law holds.
 *
 * $$v = \frac{g\,d^2\,(\rho_p - \rho_f)}{18\,\mu} \qquad \mathrm{Re} = \frac{\rho_f\,|v|\,d}{\mu}$$
 *
 * Stokes' law overstates the velocity as Re grows: by some 2 % at 0.1 and 5 % near 0.3. A flake is slower than the
 * sphere of its diameter. A yield stress that holds the particle is not in this law. For both see `terminalVelocity`
 * and `yieldStressToSuspend`.
 *
 * @param input.diameter - Diameter of the sphere [m], above 0.
 * @param input.densityParticle - Density of the particle [kg/m³], above 0.
 * @param input.densityFluid - Density of the liquid [kg/m³], above 0.
 * @param input.viscosity - Viscosity of the liquid [Pa·s], above 0.
 * @param input.beyond - At a Reynolds number of 0.1 or more: `"throw"` (default) or `"extend"`.
 * @returns Velocity [m/s], positive downwards, and Reynolds number.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where Re is 0.1 or more.
 * @source stokes-1851, the error at Re 0.1 and 0.3 by Oseen's 1 + 3/16 Re, from memory
 * @example
 * ```ts
 * import { stokesVelocity } from "gelwright/particles";
 * const glitter = { diameter: 100e-6, densityParticle: 1400, densityFluid: 910, viscosity: 0.05 };
 * stokesVelocity(glitter).velocity; // => 0.00005339176111111111
 * ```
 */
export function stokesVelocity(input: {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
  readonly viscosity: number;
  readonly beyond?: Beyond;
}): { readonly velocity: number; readonly reynolds: number } {
  const { diameter, densityParticle, densityFluid, viscosity, beyond } = record(input, "input", known.stokesVelocity);
  const width = positive(diameter, "diameter");
  const fluid = positive(densityFluid, "densityFluid");
  const thickness = positive(viscosity, "viscosity");
  const excess = positive(densityParticle, "densityParticle") - fluid;
  const velocity = result((gravity * width * width * excess) / (18 * thickness), "velocity");
  const reynolds = result((fluid * Math.abs(velocity) * width) / thickness, "reynolds");
  return { velocity, reynolds: withinReynolds(reynolds, stokes.limit, stokes.name, extending(beyond)) };
}
