import { positive, record, refuse, result, temperature } from "../guards.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";

/** Boltzmann constant [J/K], exact since 2019. */
const boltzmann = 1.380649e-23;

/**
 * How fast a small sphere wanders off by Brownian motion.
 *
 * $$D = \frac{k_B T}{3\pi\,\mu\,d}$$
 *
 * @param input.diameter - Diameter of the sphere [m], above 0.
 * @param input.viscosity - Viscosity of the liquid [Pa·s], above 0.
 * @param input.temperature - Temperature [°C].
 * @returns Diffusivity [m²/s]; in a time t it wanders √(2 D t) along each axis.
 * @throws CalculationError `input` where an argument is out of range.
 * @source einstein-1905
 * @example
 * ```ts
 * import { brownianDiffusivity } from "gelwright/particles";
 * brownianDiffusivity({ diameter: 1e-6, viscosity: 0.05, temperature: 25 }) * 1e15; // => 8.735282699782486
 * ```
 */
export function brownianDiffusivity(input: {
  readonly diameter: number;
  readonly viscosity: number;
  readonly temperature: number;
}): number {
  const { diameter, viscosity, temperature: warmth } = record(input, "input", known.brownianDiffusivity);
  const resistance = 3 * Math.PI * positive(viscosity, "viscosity") * positive(diameter, "diameter");
  return result((boltzmann * (temperature(warmth, "temperature") + kelvin)) / resistance, "diffusivity");
}

/** A sphere in a liquid, and how warm it is. */
interface Wanderer {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
  readonly temperature: number;
}

/** Weight less buoyancy [N], without its sign, and thermal energy [J]. */
function forces(input: Wanderer): { readonly weight: number; readonly energy: number; readonly diameter: number } {
  const { diameter, densityParticle, densityFluid, temperature: warmth } = record(input, "input");
  const difference = Math.abs(positive(densityParticle, "densityParticle") - positive(densityFluid, "densityFluid"));
  return {
    weight: (Math.PI / 6) * positive(diameter, "diameter") ** 3 * difference * gravity,
    energy: boltzmann * (temperature(warmth, "temperature") + kelvin),
    diameter,
  };
}

/**
 * Settling against Brownian motion: far above 1 a particle settles as if there were none, far below 1 it stays up.
 *
 * $$\mathrm{Pe} = \frac{\tfrac43\pi\,a^4\,|\rho_p - \rho_f|\,g}{k_B T} \qquad a = \tfrac12 d$$
 *
 * The viscosity slows both alike and does not come in.
 *
 * @param input.diameter - Diameter of the sphere [m], above 0.
 * @param input.densityParticle - Density of the particle [kg/m³], above 0.
 * @param input.densityFluid - Density of the liquid [kg/m³], above 0.
 * @param input.temperature - Temperature [°C].
 * @returns Péclet number, 0 or more.
 * @throws CalculationError `input` where an argument is out of range.
 * @source russel-1989
 * @example
 * ```ts
 * import { pecletNumber } from "gelwright/particles";
 * pecletNumber({ diameter: 1e-6, densityParticle: 1400, densityFluid: 900, temperature: 25 }); // => 0.31184674132095064
 * ```
 */
export function pecletNumber(input: {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
  readonly temperature: number;
}): number {
  record(input, "input", known.pecletNumber);
  const { weight, energy, diameter } = forces(input);
  return result((weight * diameter) / (2 * energy), "Péclet number");
}

/**
 * The height over which a sediment of small particles thins out by itself: where it is more than the jar, they stay up.
 *
 * $$\ell = \frac{k_B T}{\tfrac{\pi}{6}\,d^3\,|\rho_p - \rho_f|\,g}$$
 *
 * @param input.diameter - Diameter of the sphere [m], above 0.
 * @param input.densityParticle - Density of the particle [kg/m³], above 0.
 * @param input.densityFluid - Density of the liquid [kg/m³], above 0 and another than that of the particle.
 * @param input.temperature - Temperature [°C].
 * @returns Height [m] at which the concentration has fallen to 1/e.
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the densities are equal.
 * @source russel-1989
 * @example
 * ```ts
 * import { sedimentationLength } from "gelwright/particles";
 * const pigment = { diameter: 200e-9, densityParticle: 3900, densityFluid: 900, temperature: 25 };
 * sedimentationLength(pigment); // => 0.00003340316022717679
 * ```
 */
export function sedimentationLength(input: {
  readonly diameter: number;
  readonly densityParticle: number;
  readonly densityFluid: number;
  readonly temperature: number;
}): number {
  record(input, "input", known.sedimentationLength);
  const { weight, energy } = forces(input);
  if (weight === 0)
    refuse("unreachable", "densityParticle", input.densityParticle, "a density other than the liquid's");
  return result(energy / weight, "sedimentation length");
}
