import { positive, record, result } from "../guards.js";
import * as known from "./known.js";

/**
 * The pressure inside a droplet above that around it, which keeps it round.
 *
 * $$\Delta p = \frac{4\,\sigma}{d}$$
 *
 * Half the diameter, twice the pressure: fine droplets are stiff. Steady shear breaks a droplet where its stress
 * reaches half the critical capillary number times this pressure; a stress far below leaves it round. It holds for an air
 * bubble too, with the surface tension.
 *
 * @param input.interfacialTension - Interfacial tension of oil against gel former, with its surfactant [N/m], above 0.
 * @param input.diameter - Diameter of the droplet [m], above 0.
 * @returns The pressure difference [Pa].
 * @throws CalculationError `input` where an argument is no number above 0.
 * @source definition (the pull of the interface round the middle, over the area of the section)
 * @example
 * ```ts
 * import { laplacePressure } from "gelwright/gel";
 * laplacePressure({ interfacialTension: 0.005, diameter: 10e-6 }); // => 2000
 * ```
 */
export function laplacePressure(input: { readonly interfacialTension: number; readonly diameter: number }): number {
  const { interfacialTension, diameter } = record(input, "input", known.laplacePressure);
  const tension = positive(interfacialTension, "interfacialTension");
  return result((4 * tension) / positive(diameter, "diameter"), "pressure difference");
}
