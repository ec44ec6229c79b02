import { notNegative, record, result } from "../guards.js";
import * as known from "./known.js";
import { type CoolingPack, compilePack } from "./pack.js";

/**
 * The temperature inside a filled pack after a time: at its centre, at another place, or on average over its volume.
 *
 * $$T = T_\mathrm{amb} + (T_0 - T_\mathrm{amb})\,\theta \qquad \theta_\text{jar} = \theta_\text{cylinder}(r, t)\;\theta_\text{slab}(z, t)$$
 *
 * Conduction alone, with constant properties. Two things are left out: the latent heat of gelling or
 * melting, which keeps the content warm for longer, and the convection before it sets, which cools it faster.
 *
 * @param input - The pack and its content: shape and dimensions [m], conductivity [W/(m·K)], density [kg/m³], specific
 *   heat [J/(kg·K)], heat transfer coefficient [W/(m²·K)] or `"infinite"`, start and surroundings [°C], where (default
 *   the centre); and `duration` [s], 0 or more.
 * @returns Temperature [°C], between start and surroundings.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source bergman-2011 sections 5.5, 5.6 and 5.8
 * @example
 * ```ts
 * import { packTemperature } from "gelwright/heat";
 * const jar = {
 *   pack: { shape: "cylinder", diameter: 0.07, height: 0.06 },
 *   conductivity: 0.17,
 *   density: 910,
 *   specificHeat: 2050,
 *   heatTransferCoefficient: 10,
 *   temperatureStart: 60,
 *   temperatureAmbient: 20,
 * } as const;
 * packTemperature({ ...jar, duration: 3600 }); // => 40.93599393372035
 * packTemperature({ ...jar, duration: 3600, where: { radial: 0.035 } }); // => 29.462123610206724
 * packTemperature({ ...jar, duration: 3600, where: "mean" }); // => 32.4054278955983
 * ```
 */
export function packTemperature(input: CoolingPack & { readonly duration: number }): number {
  const { start, ambient, leftAt } = compilePack(input);
  const left = leftAt(notNegative(record(input, "input", known.packTemperature).duration, "duration"));
  return result(ambient + (start - ambient) * left, "pack temperature");
}
