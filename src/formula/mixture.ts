import { list, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** A part of a mixture with one property of it. */
export interface MixturePart {
  /** Mass [kg] or mass fraction, above 0; only the proportions count. */
  readonly mass: number;
}

/**
 * Density of a mixture whose volumes add up.
 *
 * $$\frac{1}{\rho} = \frac{\sum_i m_i/\rho_i}{\sum_i m_i}$$
 *
 * @param input.parts - Mass [kg] (or share) and density [kg/m³] of each part, at one temperature; at least one.
 * @returns The density [kg/m³] at that temperature.
 * @throws CalculationError `input` for an argument out of range.
 * @source definition
 * @example
 * ```ts
 * import { densityOfMixture } from "gelwright/formula";
 * densityOfMixture({ parts: [{ mass: 0.6, density: 920 }, { mass: 0.4, density: 950 }] }); // => 931.7697228144989
 * ```
 */
export function densityOfMixture(input: {
  readonly parts: readonly (MixturePart & { readonly density: number })[];
}): number {
  record(input, "input", known.densityOfMixture);
  let mass = 0;
  let volume = 0;
  eachPart(input, (part, at) => {
    mass += part.mass;
    volume += part.mass / positive(part.density, `${at}.density`);
  });
  return positiveResult(mass / volume, "density of the mixture");
}

/**
 * Specific heat of a mixture without heat of mixing.
 *
 * $$c = \frac{\sum_i m_i\,c_i}{\sum_i m_i}$$
 *
 * @param input.parts - Mass [kg] (or share) and specific heat [J/(kg·K)] of each part; at least one.
 * @returns The specific heat [J/(kg·K)].
 * @throws CalculationError `input` for an argument out of range.
 * @source perry-2008 section 2, enthalpy balance without heat of mixing
 * @example
 * ```ts
 * import { specificHeatOfMixture } from "gelwright/formula";
 * specificHeatOfMixture({ parts: [{ mass: 9, specificHeat: 2000 }, { mass: 1, specificHeat: 2400 }] }); // => 2040
 * ```
 */
export function specificHeatOfMixture(input: {
  readonly parts: readonly (MixturePart & { readonly specificHeat: number })[];
}): number {
  record(input, "input", known.specificHeatOfMixture);
  let mass = 0;
  let capacity = 0;
  eachPart(input, (part, at) => {
    mass += part.mass;
    capacity += part.mass * positive(part.specificHeat, `${at}.specificHeat`);
  });
  return positiveResult(capacity / mass, "specific heat of the mixture");
}

/**
 * Thermal conductivity of a mixture whose parts lie side by side, each by the share of the volume that it fills.
 *
 * $$k = \frac{\sum_i (m_i/\rho_i)\,k_i}{\sum_i m_i/\rho_i}$$
 *
 * The highest that a mixture can have; parts in series, the lowest, take 1/k in the same proportions. Oils differ so
 * little that it hardly matters.
 *
 * @param input.parts - Mass [kg] (or share), density [kg/m³] and conductivity [W/(m·K)] of each part, at one temperature; at least one.
 * @returns The conductivity [W/(m·K)] at that temperature.
 * @throws CalculationError `input` for an argument out of range.
 * @source choi-okos-1986 for the rule, from memory
 * @example
 * ```ts
 * import { conductivityOfMixture } from "gelwright/formula";
 * conductivityOfMixture({
 *   parts: [
 *     { mass: 90, density: 900, conductivity: 0.17 },
 *     { mass: 25, density: 1250, conductivity: 0.29 },
 *   ],
 * }); // => 0.19
 * ```
 */
export function conductivityOfMixture(input: {
  readonly parts: readonly (MixturePart & { readonly density: number; readonly conductivity: number })[];
}): number {
  record(input, "input", known.conductivityOfMixture);
  let volume = 0;
  let passed = 0;
  eachPart(input, (part, at) => {
    const own = part.mass / positive(part.density, `${at}.density`);
    volume += own;
    passed += own * positive(part.conductivity, `${at}.conductivity`);
  });
  return positiveResult(passed / volume, "conductivity of the mixture");
}

/** Visits the parts of a mixture, each with its place for the faults; their masses are above 0. */
export function eachPart<P extends MixturePart>(
  input: { readonly parts: readonly P[] },
  visit: (part: P, at: string) => void,
): void {
  list(record(input, "input").parts, "parts", 1).forEach((part, i) => {
    const at = `parts[${i}]`;
    positive(record(part, at).mass, `${at}.mass`);
    visit(part, at);
  });
}

function positiveResult(value: number, path: string): number {
  if (value === 0) refuse("range", path, value, "inputs whose result a double can hold");
  return result(value, path);
}
