import { positive, record, result, temperature } from "../guards.js";
import { kelvin } from "../laws/compile-viscosity.js";
import * as known from "./known.js";

/** Diffusivity of water vapour in air at 0 °C and one atmosphere [m²/s]: 0.083 m²/h. */
const diffusivity = 0.083 / 3600;

/**
 * How fast water vapour passes through still air over a gel: the head space of an open jar, a quiet room.
 *
 * $$k = \frac{D}{h} \qquad D = 0.083\;\tfrac{\mathrm{m^2}}{\mathrm h}\left(\frac{T}{273.15\,\mathrm K}\right)^{1.81}$$
 *
 * By diffusion alone, at one atmosphere. A draught carries more: then take `evaporationCoefficient` of the room `heat`.
 * Over an open dish in a quiet room some 10 to 20 mm of air count as still: common practice, no source.
 *
 * @param input.gap - Depth of the still air [m], above 0.
 * @param input.temperature - Temperature [°C].
 * @returns The mass-transfer coefficient [m/s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source schirmer-1938 second-hand
 * @example
 * ```ts
 * import { stillAirCoefficient } from "gelwright/gel";
 * stillAirCoefficient({ gap: 0.01, temperature: 0 }); // => 0.0023055555555555555
 * ```
 */
export function stillAirCoefficient(input: { readonly gap: number; readonly temperature: number }): number {
  const { gap, temperature: warmth } = record(input, "input", known.stillAirCoefficient);
  const relative = (temperature(warmth, "temperature") + kelvin) / 273.15;
  return result((diffusivity * relative ** 1.81) / positive(gap, "gap"), "coefficient");
}
