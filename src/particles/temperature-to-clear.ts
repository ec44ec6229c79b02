import { positive, record, result } from "../guards.js";
import { temperatureAtViscosity } from "../laws/temperature-at-viscosity.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { type Bubble, driveOf, reynoldsOf } from "./bubble-rise.js";
import * as known from "./known.js";

/** How deep a layer is and how soon it is to be clear. */
export interface ClearingTarget {
  /** Depth of the layer [m], above 0. */
  readonly depth: number;
  /** Time within which bubbles from the bottom are to reach the surface [s], above 0. */
  readonly duration: number;
}

/**
 * The most viscous that a layer may be, if bubbles are to leave it in the time wanted.
 *
 * $$\mu = f\,\frac{g\,d^2\,(\rho - \rho_\mathrm{gas})}{18}\cdot\frac{t}{H}$$
 *
 * @param input - The bubble (diameter [m], densities [kg/m³], surface), `depth` [m] and `duration` [s], above 0.
 * @returns Viscosity [Pa·s].
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more.
 * @source hadamard-1911, rybczynski-1911
 * @example
 * ```ts
 * import { viscosityToClear } from "gelwright/particles";
 * viscosityToClear({ diameter: 200e-6, densityFluid: 910, depth: 0.3, duration: 3600 }); // => 0.23797470666666665
 * ```
 */
export function viscosityToClear(input: Bubble & ClearingTarget): number {
  const { depth, duration } = record(input, "input", known.viscosityToClear);
  const velocity = positive(depth, "depth") / positive(duration, "duration");
  const viscosity = result(driveOf(input) / velocity, "viscosity");
  reynoldsOf(input, velocity, positive(viscosity, "viscosity"));
  return viscosity;
}

/**
 * The temperature at which a melt that is kept warm clears in the time wanted.
 *
 * $$\mu(T) = f\,\frac{g\,d^2\,(\rho - \rho_\mathrm{gas})}{18}\cdot\frac{t}{H}$$
 *
 * The density of the liquid is that near this temperature: 3 % off moves the answer by a kelvin or less.
 *
 * @param input - The bubble (diameter [m], densities [kg/m³], surface), `depth` [m] and `duration` [s], above 0, and
 *   `viscosity`: the viscosity law of the melt.
 * @returns Temperature [°C]; a warmer melt clears sooner.
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more or the
 *   temperature lies outside the readings, `unreachable` where no heat makes the melt thin enough.
 * @source hadamard-1911, rybczynski-1911
 * @example
 * ```ts
 * import { temperatureToClear } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * temperatureToClear({ diameter: 60e-6, densityFluid: 880, depth: 0.3, duration: 3600, viscosity: melt }); // => 50.0585938561814
 * ```
 */
export function temperatureToClear(input: Bubble & ClearingTarget & { readonly viscosity: ViscosityLaw }): number {
  const { viscosity: law, ...target } = record(input, "input", known.temperatureToClear);
  const { beyond } = target;
  return temperatureAtViscosity({ law, viscosity: viscosityToClear(target), ...(beyond && { beyond }) });
}
