import { fraction, record, refuse, result, temperature } from "../guards.js";
import type { Band } from "../laws/band.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { curveAt, type MonotoneCurve, monotoneCurve } from "../numeric/monotone-curve.js";
import * as known from "./known.js";

/** Refractive index at 20 °C and the sodium D line, by steps of 5 % of glycerin by mass from none. */
const table: readonly number[] = [
  1.33303, 1.3388, 1.34481, 1.35106, 1.35749, 1.36404, 1.3707, 1.3774, 1.38413, 1.39089, 1.39809, 1.40554, 1.41299,
  1.42044, 1.42789, 1.43534, 1.4429, 1.45085, 1.45839, 1.46597, 1.47399,
];
let curve: MonotoneCurve | undefined;

/** How sure index and density of glycerin and water are: against the handbook's table at 20 °C, and 88 densities from 15 to 30 °C. */
export const glycerinWaterBands: Readonly<Record<"refractiveIndex" | "density", Band>> = {
  refractiveIndex: { by: "difference", min: -0.0006, max: 0.0006, basis: "spread", sources: ["rumble-2021"] },
  density: { by: "factor", min: 0.9992, max: 1.0008, basis: "spread", sources: ["egorov-2013", "rumble-2021"] },
};

/** The index of glycerin and water at a temperature, unguarded; its change with temperature was fitted to nine mixtures. */
export function indexOfGlycerinWater(share: number, warmth: number): number {
  curve ??= monotoneCurve(
    table.map((_, k) => k / 20),
    table,
  );
  const perKelvin = -1e-4 * (1 + 2.34 * share - 0.94 * share * share);
  return curveAt(curve, share) + perKelvin * (warmth - 20);
}

/** How far either law may be carried on [°C]. */
const carriedOn: readonly [min: number, max: number] = [0, 60];

/** Where the change with temperature was measured, and how far it may be carried on. */
export function indexRange(beyond: Beyond | undefined): readonly [min: number, max: number] {
  return extending(beyond) ? carriedOn : [20, 30];
}

/**
 * The refractive index of glycerin and water.
 *
 * $$n(w, T) = n_{20}(w) - 10^{-4}\,(1 + 2.34\,w - 0.94\,w^2)\,(T - 20)$$
 *
 * The table at 20 °C is the Glycerine Producers' Association's, with a monotone curve through it. The change with
 * temperature is our fit to measurements at 20, 25 and 30 °C, which it meets to 0.0004, and water's own.
 *
 * @param input.massFractionGlycerin - Glycerin in glycerin and water, by mass, 0 to 1.
 * @param input.temperature - Temperature [°C], 20 to 30.
 * @param input.beyond - From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @returns The refractive index at the sodium D line.
 * @throws CalculationError `input` where an argument is no number or no fraction; `range` outside the temperatures.
 * @source glycerine-producers-1963 second-hand, the table
 * @source gerke-2024 the measurements at 20 to 30 °C
 * @example
 * ```ts
 * import { refractiveIndexGlycerinWater } from "gelwright/gel";
 * refractiveIndexGlycerinWater({ massFractionGlycerin: 0.85, temperature: 20 }); // => 1.45085
 * ```
 */
export function refractiveIndexGlycerinWater(input: {
  readonly massFractionGlycerin: number;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const {
    massFractionGlycerin,
    temperature: warmth,
    beyond,
  } = record(input, "input", known.refractiveIndexGlycerinWater);
  const [min, max] = indexRange(beyond);
  const at = temperature(warmth, "temperature");
  if (at < min || at > max)
    refuse("range", "temperature", at, `${min} to ${max} °C${min ? ', or beyond: "extend"' : ""}`);
  return result(indexOfGlycerinWater(fraction(massFractionGlycerin, "massFractionGlycerin"), at), "refractive index");
}

/**
 * The density of glycerin and water.
 *
 * $$\rho = \kappa\,\left(\rho_w + \frac{w\,(\rho_g - \rho_w)}{w + (\rho_g/\rho_w)(1 - w)}\right) \qquad \kappa = 1 + a(T)\,\sin^{0.81}(\pi w^{1.31})$$
 *
 * The volume shrinks on mixing, by up to 1 %; κ describes that.
 *
 * @param input.massFractionGlycerin - Glycerin in glycerin and water, by mass, 0 to 1.
 * @param input.temperature - Temperature [°C], 15 to 30.
 * @param input.beyond - From 0 to 60 °C but outside 15 to 30: `"throw"` (default) or `"extend"`.
 * @returns The density [kg/m³].
 * @throws CalculationError `input` where an argument is no number or no fraction; `range` outside the temperatures.
 * @source volk-kahler-2018 second-hand: the constants as public libraries carry them
 * @example
 * ```ts
 * import { densityGlycerinWater } from "gelwright/gel";
 * Math.round(densityGlycerinWater({ massFractionGlycerin: 0.85, temperature: 20 })); // => 1222
 * ```
 */
export function densityGlycerinWater(input: {
  readonly massFractionGlycerin: number;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { massFractionGlycerin, temperature: warmth, beyond } = record(input, "input", known.densityGlycerinWater);
  const share = fraction(massFractionGlycerin, "massFractionGlycerin");
  const at = temperature(warmth, "temperature");
  const [min, max] = extending(beyond) ? carriedOn : [15, 30];
  if (at < min || at > max)
    refuse("range", "temperature", at, `${min} to ${max} °C${min ? ', or beyond: "extend"' : ""}`);
  const glycerin = 1273.3 - 0.6121 * at;
  const water = 1000 * (1 - (Math.abs(at - 3.98) / 615) ** 1.71);
  const contraction = 1.78e-6 * at * at - 1.82e-4 * at + 1.41e-2;
  const mixed = water + (share * (glycerin - water)) / (share + (glycerin / water) * (1 - share));
  return mixed * (1 + contraction * Math.sin(Math.PI * share ** 1.31) ** 0.81);
}
