import { positive, record, result, temperature } from "../guards.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import { temperatureNominal } from "../laws/nominal-temperature.js";
import * as known from "./known.js";

/**
 * The mass that a nominal volume stands for: volume times density at 20 °C, whatever the temperature of filling.
 *
 * $$m = V_n\,\rho(20\ ^\circ\mathrm C)$$
 *
 * @param input.volume - Nominal volume [m³], above 0.
 * @param input.density - Density of the product over temperature, the air in it included.
 * @param input.temperature - To which the volume refers [°C]; default 20.
 * @returns Mass [kg].
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where the density law ends.
 * @source eec-76-211 Annex I 2.2
 * @example
 * ```ts
 * import { fillMass } from "gelwright/packing";
 * const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * (1000 * fillMass({ volume: 50e-6, density })).toFixed(2); // => "45.75"
 * ```
 */
export function fillMass(input: {
  readonly volume: number;
  readonly density: DensityLaw;
  readonly temperature?: number;
}): number {
  const { volume, density, temperature: at = temperatureNominal } = record(input, "input", known.fillMass);
  const densityOf = compileDensity(density, "density");
  return result(positive(volume, "volume") * densityOf(temperature(at, "temperature")), "mass");
}

/**
 * What a volumetric filler is set to, so that a mass comes out at the temperature of filling.
 *
 * $$V = \frac{m}{\rho(T_\mathrm{fill})}$$
 *
 * Hot product is thinner: the same mass takes more volume. The setting is a start, which weighed packs then correct: fillers
 * draw air, and lines hold product of another temperature.
 *
 * @param input.mass - Mass to fill [kg], above 0: the target of `targetFill`.
 * @param input.density - Density of the product over temperature, the air in it included.
 * @param input.temperatureFill - Temperature of the product in the filler [°C].
 * @returns Volume [m³].
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where the density law ends.
 * @source definition
 * @example
 * ```ts
 * import { fillerVolume } from "gelwright/packing";
 * const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * (1e6 * fillerVolume({ mass: 0.04575, density, temperatureFill: 70 })).toFixed(2); // => "51.81"
 * ```
 */
export function fillerVolume(input: {
  readonly mass: number;
  readonly density: DensityLaw;
  readonly temperatureFill: number;
}): number {
  const { mass, density, temperatureFill } = record(input, "input", known.fillerVolume);
  const densityOf = compileDensity(density, "density");
  return result(positive(mass, "mass") / densityOf(temperature(temperatureFill, "temperatureFill")), "volume");
}

/**
 * How much a product expands from one temperature to another, as a share of its volume at the first.
 *
 * $$\frac{\Delta V}{V} = \frac{\rho(T_1)}{\rho(T_2)} - 1$$
 *
 * @param input.density - Density of the product over temperature; across a melting range, one that was measured across it.
 * @param input.temperatureStart - [°C].
 * @param input.temperatureEnd - [°C].
 * @returns Share of the volume, below 0 where it shrinks.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where the density law ends.
 * @source definition, conservation of mass
 * @example
 * ```ts
 * import { volumeExpansion } from "gelwright/packing";
 * const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * (100 * volumeExpansion({ density, temperatureStart: 20, temperatureEnd: 45 })).toFixed(2); // => "1.78"
 * ```
 */
export function volumeExpansion(input: {
  readonly density: DensityLaw;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
}): number {
  const { density, temperatureStart, temperatureEnd } = record(input, "input", known.volumeExpansion);
  const densityOf = compileDensity(density, "density");
  const before = densityOf(temperature(temperatureStart, "temperatureStart"));
  const after = densityOf(temperature(temperatureEnd, "temperatureEnd"));
  return result((before - after) / after, "expansion");
}
