import { positive, record, result } from "../guards.js";
import * as known from "./known.js";
import { type ImpellerSize, impellerDiameter } from "./sizes.js";

/** What turns, how fast, and in what: the arguments that most of stirring asks for. */
export interface Stirring {
  /** Speed of the impeller [rev/s], above 0. */
  readonly speed: number;
  /** The impeller: its diameter [m], above 0. */
  readonly impeller: ImpellerSize;
  /** Density of the batch [kg/m³], above 0. */
  readonly density: number;
  /** Viscosity of the batch [Pa·s], above 0; of a gel, that at the shear rate of the impeller. */
  readonly viscosity: number;
}

/**
 * The Reynolds number of an impeller: below about 10 the flow creeps, above about 10,000 it is turbulent.
 *
 * $$\mathrm{Re} = \frac{\rho N D^2}{\mu}$$
 *
 * The speed is in revolutions and not in radians, and the length is the diameter: published curves mean this number.
 *
 * @param input.speed - Speed of the impeller [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @param input.density - Density of the batch [kg/m³], above 0.
 * @param input.viscosity - Viscosity of the batch [Pa·s], above 0; of a gel, that at the shear rate of the impeller.
 * @returns Reynolds number.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition; steffe-1996, page 188, for the ends of the regimes
 * @example
 * ```ts
 * import { impellerReynolds } from "gelwright/mixing";
 * impellerReynolds({ speed: 5, impeller: { diameter: 0.1 }, density: 910, viscosity: 0.05 }); // => 910
 * ```
 */
export function impellerReynolds(input: Stirring): number {
  const { speed, impeller, density, viscosity } = record(input, "input", known.impellerReynolds);
  return result(
    (positive(density, "density") * positive(speed, "speed") * impellerDiameter(impeller) ** 2) /
      positive(viscosity, "viscosity"),
    "Reynolds number",
  );
}
