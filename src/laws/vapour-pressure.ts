import { finite, list, record, refuse, result, show, temperature, variant } from "../guards.js";
import { type Beyond, extending } from "./beyond.js";
import { kelvin } from "./compile-viscosity.js";
import * as known from "./known.js";

/** Between which temperatures the constants of a vapour pressure were fitted. */
export interface FittedRange {
  /** [°C]. */
  readonly temperatureMin: number;
  /** [°C], above the least. */
  readonly temperatureMax: number;
}

/** Antoine's law, log p = A − B/(T + C), for pascals and kelvins. */
export interface AntoineLaw extends FittedRange {
  readonly law: "antoine";
  /** Which logarithm the constants are for. */
  readonly logarithm: "decimal" | "natural";
  /** Logarithm of a pressure in pascals. */
  readonly constantA: number;
  /** [K]. */
  readonly constantB: number;
  /** [K]. */
  readonly constantC: number;
}

/** The vapour pressure of a pure substance, as plain data; constants for pascals and kelvins. */
export type VapourPressureLaw =
  | AntoineLaw
  | ({
      /** ln p = C₁ + C₂/T + C₃ ln T + C₄ T^C₅. */
      readonly law: "dippr-101";
      /** C₁ to C₅, for pascals and kelvins. */
      readonly coefficients: readonly number[];
    } & FittedRange);

/** The logarithm of the pressure as a function of the temperature [K], to the base e. */
function logarithmOf(law: VapourPressureLaw, path: string): (kelvins: number) => number {
  switch (law.law) {
    case "antoine": {
      const { logarithm } = law;
      if (logarithm !== "decimal" && logarithm !== "natural")
        refuse("input", `${path}.logarithm`, show(logarithm), '"decimal" or "natural"');
      const factor = logarithm === "decimal" ? Math.LN10 : 1;
      const a = finite(law.constantA, `${path}.constantA`);
      const b = finite(law.constantB, `${path}.constantB`);
      const c = finite(law.constantC, `${path}.constantC`);
      return (kelvins) =>
        kelvins + c > 0
          ? factor * (a - b / (kelvins + c))
          : refuse("range", "temperature", kelvins - kelvin, `above the law's pole at ${-c - kelvin} °C`);
    }
    case "dippr-101": {
      const [c1 = 0, c2 = 0, c3 = 0, c4 = 0, c5 = 0] = list(law.coefficients, `${path}.coefficients`, 5).map(
        (value, i) => finite(value, `${path}.coefficients[${i}]`),
      );
      return (kelvins) => c1 + c2 / kelvins + c3 * Math.log(kelvins) + c4 * kelvins ** c5;
    }
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), '"antoine" or "dippr-101"');
  }
}

/** Checks a law, which faults call `path`, and makes it a function that gives a pressure or throws. */
export function compileVapourPressure(
  law: VapourPressureLaw,
  beyond: Beyond | undefined,
  path: string,
): (temperature: number) => number {
  const extended = extending(beyond);
  const { temperatureMin, temperatureMax } = variant(law, path, "law", known.vapourPressure);
  const min = temperature(temperatureMin, `${path}.temperatureMin`);
  const max = temperature(temperatureMax, `${path}.temperatureMax`);
  if (max <= min) refuse("input", `${path}.temperatureMax`, max, `above temperatureMin (${min} °C)`);
  const logarithm = logarithmOf(law, path);
  return (at) =>
    extended || (temperature(at, "temperature") >= min && at <= max)
      ? result(Math.exp(logarithm(temperature(at, "temperature") + kelvin)), "vapour pressure")
      : refuse("range", "temperature", at, `${min} to ${max} °C, as fitted, or beyond: "extend"`);
}

/**
 * The vapour pressure of a pure substance.
 *
 * $$\log p = A - \frac{B}{T + C} \qquad \ln p = C_1 + \frac{C_2}{T} + C_3 \ln T + C_4\,T^{C_5}$$
 *
 * @param input.law - The law, as plain data; `vapourPressures` has a few.
 * @param input.temperature - Temperature [°C].
 * @param input.beyond - Outside the temperatures of the fit: `"throw"` (default) or `"extend"`.
 * @returns Pressure [Pa].
 * @throws CalculationError `input` for a law that is not whole; `range` outside the temperatures of the fit.
 * @source chemicals-2025 for both forms
 * @example
 * ```ts
 * import { vapourPressureAt, vapourPressures } from "gelwright/laws";
 * vapourPressureAt({ law: vapourPressures.water, temperature: 100 }); // => 101047.25357066655
 * ```
 */
export function vapourPressureAt(input: {
  readonly law: VapourPressureLaw;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperature: at, beyond } = record(input, "input", known.vapourPressureAt);
  return compileVapourPressure(law, beyond, "law")(at);
}
