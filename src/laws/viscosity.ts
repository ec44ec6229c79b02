import { record } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import type { Beyond } from "./beyond.js";
import { compileViscosity } from "./compile-viscosity.js";
import * as known from "./known.js";
import type { ViscosityLaw } from "./viscosity-law.js";

/**
 * The viscosity law as a function of temperature, checked once, for use in inner loops.
 *
 * $$\mu = \mu_0 \qquad \mu = A\,e^{E_a/RT} \qquad \ln\mu = \ln A + \frac{B}{T - T_0}$$
 *
 * Readings are joined by a monotone curve in ln μ against 1/T, and with `beyond: "extend"` continued by straight lines
 * (that is, by Andrade's law with the slope of the end). A setting law adds s (T_set − T) to the ln μ of its melt below
 * the setting temperature: an interpolation of ours, with no source.
 *
 * @param law - The law, as plain data.
 * @param options.beyond - Outside the readings: `"throw"` (default) or `"extend"`.
 * @returns A function of temperature [°C] that gives viscosity [Pa·s]. It throws `range` outside the readings, at or
 *   below the pole of a Vogel–Fulcher–Tammann law, and where a double cannot hold the viscosity.
 * @throws CalculationError `input` where the law is not whole, or where a viscosity does not fall with rising temperature.
 * @source viswanath-natarajan-1989 for two and three constants, fritsch-butland-1984 for the curve
 * @example
 * ```ts
 * import { viscosityFunction } from "gelwright/laws";
 * const viscosity = viscosityFunction({ law: "andrade", factor: 1.3e-6, activationEnergy: 26400 });
 * viscosity(45); // => 0.028072097675647074
 * ```
 */
export function viscosityFunction(
  law: ViscosityLaw,
  options: { readonly beyond?: Beyond } = {},
): (temperature: number) => number {
  return compileViscosity(law, record(options, "options", known.viscosityFunctionOptions).beyond, "law").viscosityOf;
}

/**
 * The viscosity at one temperature.
 *
 * $$\mu = \mu(T)$$
 *
 * @param input.law - The viscosity law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @param input.beyond - Outside the readings: `"throw"` (default) or `"extend"`.
 * @returns Viscosity [Pa·s].
 * @throws CalculationError `input` for a law that is not whole, `range` outside its range.
 * @source viswanath-natarajan-1989 for two and three constants, fritsch-butland-1984 for the curve
 * @example
 * ```ts
 * import { viscosityAt } from "gelwright/laws";
 * const points = [
 *   { temperature: 25, viscosity: 0.055 },
 *   { temperature: 80, viscosity: 0.0105 },
 * ];
 * viscosityAt({ law: { law: "readings", points }, temperature: 45 }); // => 0.02818871510629784
 * ```
 */
export function viscosityAt(input: {
  readonly law: ViscosityLaw;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperature, beyond } = record(input, "input", known.viscosityAt);
  return compileViscosity(law, beyond, "law").viscosityOf(temperature);
}

/**
 * The range of temperatures of the readings; empty for a law without readings.
 *
 * $$T_\mathrm{min} \le T \le T_\mathrm{max}$$
 *
 * @param law - The viscosity law, as plain data.
 * @returns Lowest and highest temperature of the readings [°C]; both fields are left out for a law without readings.
 * @throws CalculationError `input` for a law that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { viscosityRange } from "gelwright/laws";
 * const points = [
 *   { temperature: 25, viscosity: 0.055 },
 *   { temperature: 80, viscosity: 0.0105 },
 * ];
 * viscosityRange({ law: "readings", points }); // => { temperatureMin: 25, temperatureMax: 80 }
 * ```
 */
export function viscosityRange(law: ViscosityLaw): {
  readonly temperatureMin?: number;
  readonly temperatureMax?: number;
} {
  const { readings } = compileViscosity(law, undefined, "law");
  return readings.length > 0 ? { temperatureMin: minOf(readings), temperatureMax: maxOf(readings) } : {};
}

/**
 * The temperatures at which a law has a breakpoint or a reading, where an integral over temperature is split.
 *
 * $$T_1 \le T_2 \le \dots$$
 *
 * @param law - The viscosity law, as plain data.
 * @returns Temperatures [°C], rising; empty for a smooth law.
 * @throws CalculationError `input` for a law that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { viscosityBreakpoints } from "gelwright/laws";
 * const melt = { law: "andrade", factor: 1.3e-6, activationEnergy: 26400 } as const;
 * viscosityBreakpoints({ law: "setting", melt, temperatureSetting: 62, steepness: 0.4 }); // => [62]
 * ```
 */
export function viscosityBreakpoints(law: ViscosityLaw): readonly number[] {
  return compileViscosity(law, undefined, "law").breakpoints;
}
