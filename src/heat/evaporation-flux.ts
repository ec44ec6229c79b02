import { fraction, notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import * as known from "./known.js";

/** How fast air carries vapour off, and the numbers it was found from. */
export interface EvaporationCoefficient {
  /** [m/s]. */
  readonly coefficient: number;
  /** Sherwood number over the length. */
  readonly sherwood: number;
  /** Reynolds number of the air over the length. */
  readonly reynolds: number;
  /** Schmidt number of the vapour in air. */
  readonly schmidt: number;
}

/**
 * The mass-transfer coefficient of an open surface that air passes over without turbulence.
 *
 * $$\mathrm{Sh} = \frac{k_c L}{D} = 0.664\,\mathrm{Re}^{1/2}\,\mathrm{Sc}^{1/3} \qquad \mathrm{Re} = \frac{u L}{\nu} \qquad \mathrm{Sc} = \frac{\nu}{D}$$
 *
 * For a flat plate flush with its surroundings: a rim above the surface lowers it. In nearly still air, a few
 * centimetres a second, natural convection removes more vapour than this gives.
 *
 * @param input.airVelocity - Of the air over the surface [m/s], above 0.
 * @param input.length - Of the surface in the direction of the air [m], above 0.
 * @param input.kinematicViscosity - Of air [m²/s], above 0.
 * @param input.diffusivity - Of the vapour in air [m²/s], above 0.
 * @returns The coefficient [m/s], and the Sherwood, Reynolds and Schmidt numbers.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where Re is 5e5 or more, or Sc below 0.6.
 * @source bergman-2011 equation 7.31
 * @example
 * ```ts
 * import { evaporationCoefficient } from "gelwright/heat";
 * evaporationCoefficient({
 *   airVelocity: 0.2,
 *   length: 0.5,
 *   kinematicViscosity: 1.9e-5,
 *   diffusivity: 7.5e-6,
 * }).coefficient; // => 0.0009850236332582022
 * ```
 */
export function evaporationCoefficient(input: {
  readonly airVelocity: number;
  readonly length: number;
  readonly kinematicViscosity: number;
  readonly diffusivity: number;
}): EvaporationCoefficient {
  const { airVelocity, length, kinematicViscosity, diffusivity } = record(input, "input", known.evaporationCoefficient);
  const along = positive(length, "length");
  const viscosity = positive(kinematicViscosity, "kinematicViscosity");
  const spread = positive(diffusivity, "diffusivity");
  const reynolds = result((positive(airVelocity, "airVelocity") * along) / viscosity, "Reynolds number");
  const schmidt = result(viscosity / spread, "Schmidt number");
  if (reynolds >= 5e5) refuse("range", "Reynolds number", reynolds, "below 500000, where the air turns turbulent");
  if (schmidt < 0.6) refuse("range", "Schmidt number", schmidt, "0.6 or more");
  const sherwood = 0.664 * Math.sqrt(reynolds) * Math.cbrt(schmidt);
  return { coefficient: result((sherwood * spread) / along, "coefficient"), sherwood, reynolds, schmidt };
}

/** A surface from which something evaporates. */
export interface Surface {
  /** Temperature of the surface [°C]. */
  readonly temperature: number;
  /** Pressure of the vapour over the liquid [Pa], 0 or more. */
  readonly vapourPressure: number;
  /** Pressure of the same vapour in the room [Pa], 0 or more; default 0. */
  readonly vapourPressureRoom?: number;
  /** Of what evaporates [kg/mol], above 0. */
  readonly molarMass: number;
}

/**
 * How fast something evaporates where air carries its vapour off.
 *
 * $$J = k_c\,\frac{M\,(p - p_\mathrm{room})}{R\,T}$$
 *
 * @param input.temperature - Temperature of the surface [°C].
 * @param input.vapourPressure - Of the vapour over the liquid [Pa], 0 or more: of a solution, mole fraction times that of the pure substance.
 * @param input.vapourPressureRoom - Of the same vapour in the room [Pa], 0 or more; default 0.
 * @param input.molarMass - Of what evaporates [kg/mol], above 0.
 * @param input.coefficient - Mass-transfer coefficient [m/s], 0 or more.
 * @returns Mass per time and area [kg/(m²·s)]; negative if vapour condenses on the surface.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source bergman-2011 section 6.7, convection mass transfer
 * @example
 * ```ts
 * import { evaporationFlux } from "gelwright/heat";
 * evaporationFlux({
 *   temperature: 65,
 *   vapourPressure: 30,
 *   molarMass: 0.136234,
 *   coefficient: 0.000985,
 * }); // => 0.000001431856240423248
 * ```
 */
export function evaporationFlux(input: Surface & { readonly coefficient: number }): number {
  const { molarMass, coefficient } = record(input, "input", known.evaporationFlux);
  const { excess, thermal } = drive(input);
  return result(
    (notNegative(coefficient, "coefficient") * positive(molarMass, "molarMass") * excess) / thermal,
    "evaporation flux",
  );
}

/**
 * The maximum evaporation: what leaves a surface if nothing returns, as into a vacuum.
 *
 * $$J = \alpha\,(p - p_\mathrm{room}) \sqrt{\frac{M}{2\pi R T}}$$
 *
 * An upper limit by kinetic theory; through a film of air a thousand to a hundred thousand times less evaporates.
 *
 * @param input.temperature - Temperature of the surface [°C].
 * @param input.vapourPressure - Of the vapour over the liquid [Pa], 0 or more.
 * @param input.vapourPressureRoom - Of the same vapour in the room [Pa], 0 or more; default 0.
 * @param input.molarMass - Of what evaporates [kg/mol], above 0.
 * @param input.accommodation - Share of the molecules that the surface lets go, 0 to 1; default 1.
 * @returns Mass per time and area [kg/(m²·s)].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source knudsen-1915
 * @example
 * ```ts
 * import { evaporationFluxMax } from "gelwright/heat";
 * evaporationFluxMax({ temperature: 25, vapourPressure: 3169, molarMass: 0.018015 }); // => 3.4081204785657935
 * ```
 */
export function evaporationFluxMax(input: Surface & { readonly accommodation?: number }): number {
  const { molarMass, accommodation = 1 } = record(input, "input", known.evaporationFluxMax);
  const { excess, thermal } = drive(input);
  return result(
    fraction(accommodation, "accommodation") *
      excess *
      Math.sqrt(positive(molarMass, "molarMass") / (2 * Math.PI * thermal)),
    "largest evaporation flux",
  );
}

/** The pressure that drives the vapour off [Pa], and RT [J/mol]. */
function drive(surface: Surface): { readonly excess: number; readonly thermal: number } {
  return {
    excess:
      notNegative(surface.vapourPressure, "vapourPressure") -
      notNegative(surface.vapourPressureRoom ?? 0, "vapourPressureRoom"),
    thermal: gasConstant * (temperature(surface.temperature, "temperature") + kelvin),
  };
}
