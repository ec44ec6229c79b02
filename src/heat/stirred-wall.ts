import { positive, record, result, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { viscosityFunction } from "../laws/viscosity.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { root } from "../numeric/root.js";
import { compileStirred, type StirredVessel } from "./inside-coefficient.js";

/** The wall between a stirred batch and its jacket. */
export interface StirredWall {
  /** Temperature of the wall on the side of the batch [°C]. */
  readonly temperatureWall: number;
  /** Between batch and wall [W/(m²·K)]. */
  readonly heatTransferCoefficient: number;
  /** Between batch and jacket [W/(m²·K)]. */
  readonly heatTransferCoefficientOverall: number;
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
 * Compare the wall with what the oils stand and with the lowest flash point when heating, and with the setting
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
 *   diameterVessel: 0.4,
 *   diameterImpeller: 0.36,
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
  input: StirredVessel & {
    readonly viscosity: ViscosityLaw;
    readonly temperatureBulk: number;
    readonly temperatureJacket: number;
    readonly heatTransferCoefficientJacket: number;
    readonly beyond?: Beyond;
  },
): StirredWall {
  const { beyond } = record(input, "input");
  const viscosityOf = viscosityFunction(input.viscosity, beyond === undefined ? {} : { beyond });
  const insideAt = compileStirred(input, beyond);
  const bulk = temperature(input.temperatureBulk, "temperatureBulk");
  const jacket = temperature(input.temperatureJacket, "temperatureJacket");
  const outside = positive(input.heatTransferCoefficientJacket, "heatTransferCoefficientJacket");
  const viscosity = viscosityOf(bulk);
  const inside = (wall: number) => insideAt(viscosity, viscosityOf(wall));
  const imbalance = (wall: number): number =>
    inside(wall).heatTransferCoefficient * (wall - bulk) - outside * (jacket - wall);
  const temperatureWall = bulk === jacket ? bulk : root(imbalance, bulk, jacket, "wall temperature", 1e-12);
  const { heatTransferCoefficient, reynolds } = inside(temperatureWall);
  const heatTransferCoefficientOverall = 1 / (1 / heatTransferCoefficient + 1 / outside);
  return {
    temperatureWall,
    heatTransferCoefficient,
    heatTransferCoefficientOverall,
    heatFlux: result(heatTransferCoefficientOverall * (jacket - bulk), "heatFlux"),
    reynolds,
  };
}
