import { record, result, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { viscosityFunction } from "../laws/viscosity.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { compileStirred, type StirredHeatTransfer } from "./inside-coefficient.js";
import { type JacketedWall, jacketedWall } from "./jacketed-wall.js";
import * as known from "./known.js";

/** The wall between a stirred batch and its jacket. */
export interface StirredWall extends JacketedWall {
  /** Heat from the wall into the batch [W/m²]; negative in cooling. */
  readonly heatFlux: number;
  /** Reynolds number of the impeller. */
  readonly reynolds: number;
}

/**
 * The temperature of a jacketed wall with a stirred batch behind it, where the viscosity at the wall is that of the wall's own temperature.
 *
 * $$h(\mu_\mathrm{wall})\,(T_\mathrm{wall} - T) = h_\mathrm{jacket}\,(T_\mathrm{jacket} - T_\mathrm{wall}) \qquad \mu_\mathrm{wall} = \mu(T_\mathrm{wall})$$
 *
 * When heating, compare the wall with the temperature that the oils withstand and with the lowest flash point, and with the setting
 * temperature when cooling: a skin sets on a wall below it, which insulates and which this does not follow.
 *
 * @param input - The stirred vessel as for `insideCoefficient`, and:
 * @param input.viscosity - Viscosity law of the batch, which has to cover batch and wall.
 * @param input.temperatureBulk - Temperature of the batch [°C].
 * @param input.temperatureJacket - Temperature of the medium in the jacket [°C].
 * @param input.heatTransferCoefficientJacket - From the inner face of the wall to the medium, through the wall [W/(m²·K)], above 0.
 * @param input.beyond - Outside readings and Reynolds numbers: `"throw"` (default) or `"extend"`.
 * @returns The wall [°C], coefficients [W/(m²·K)], heat flux into the batch [W/m²], Reynolds number.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` outside the correlation or the law.
 * @source penney-2004 chapter 14.4 for the correlation; definition of resistances in series
 * @example
 * ```ts
 * import { stirredCorrelations, stirredWall } from "gelwright/heat";
 * stirredWall({
 *   correlation: stirredCorrelations.anchor,
 *   vessel: { diameter: 0.4 },
 *   impeller: { diameter: 0.36 },
 *   speed: 1,
 *   density: 900,
 *   specificHeat: 2100,
 *   conductivity: 0.16,
 *   viscosity: { law: "andrade", factor: 1.3e-6, activationEnergy: 32000 },
 *   temperatureBulk: 70,
 *   temperatureJacket: 15,
 *   heatTransferCoefficientJacket: 400,
 * }).temperatureWall; // => 28.20293210204539
 * ```
 */
export function stirredWall(
  input: StirredHeatTransfer & {
    readonly viscosity: ViscosityLaw;
    readonly temperatureBulk: number;
    readonly temperatureJacket: number;
    readonly heatTransferCoefficientJacket: number;
    readonly beyond?: Beyond;
  },
): StirredWall {
  const { beyond } = record(input, "input", known.stirredWall);
  const viscosityOf = viscosityFunction(input.viscosity, beyond === undefined ? {} : { beyond });
  const insideAt = compileStirred(input, beyond);
  const temperatureBulk = temperature(input.temperatureBulk, "temperatureBulk");
  const viscosity = viscosityOf(temperatureBulk);
  const wall = jacketedWall({
    temperatureBulk,
    temperatureJacket: input.temperatureJacket,
    heatTransferCoefficient: (at) => insideAt(viscosity, viscosityOf(at)).heatTransferCoefficient,
    heatTransferCoefficientJacket: input.heatTransferCoefficientJacket,
  });
  return {
    ...wall,
    heatFlux: result(wall.heatTransferCoefficientOverall * (input.temperatureJacket - temperatureBulk), "heatFlux"),
    reynolds: insideAt(viscosity, viscosity).reynolds,
  };
}
