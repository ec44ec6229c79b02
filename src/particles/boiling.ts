import { finite, fraction, positive, record, refuse, result, show, temperature } from "../error.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { kelvin } from "../laws/compile-viscosity.js";

/** Antoine's constants of a pure substance, for pascals and kelvins: log p = A − B/(T + C). */
export interface AntoineLaw {
  readonly law: "antoine";
  /** Which logarithm the constants are for. */
  readonly logarithm: "decimal" | "natural";
  /** Logarithm of a pressure in pascals. */
  readonly constantA: number;
  /** [K], above 0. */
  readonly constantB: number;
  /** [K]. */
  readonly constantC: number;
  /** Coldest temperature of the fit [°C]. */
  readonly temperatureLeast: number;
  /** Warmest temperature of the fit [°C], above the coldest. */
  readonly temperatureMost: number;
}

/** The volatile part of a liquid. */
export interface Volatile {
  /** Its vapour pressure when pure. */
  readonly vapourPressure: AntoineLaw;
  /** Moles of it per mole of the liquid, above 0 and up to 1; 1 where it is left out. */
  readonly moleFraction?: number;
  /** Outside the temperatures of the fit: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

function compile(input: Volatile): {
  readonly share: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly within: (at: number) => number;
} {
  const { vapourPressure, moleFraction = 1, beyond } = record(input, "input");
  const { law, logarithm, constantA, constantB, constantC, temperatureLeast, temperatureMost } = record(
    vapourPressure,
    "vapourPressure",
  );
  if (law !== "antoine") refuse("input", "vapourPressure.law", show(law), '"antoine"');
  if (logarithm !== "decimal" && logarithm !== "natural")
    refuse("input", "vapourPressure.logarithm", show(logarithm), '"decimal" or "natural"');
  const factor = logarithm === "decimal" ? Math.LN10 : 1;
  const least = temperature(temperatureLeast, "vapourPressure.temperatureLeast");
  const most = temperature(temperatureMost, "vapourPressure.temperatureMost");
  const extended = extending(beyond);
  return {
    share: positive(fraction(moleFraction, "moleFraction"), "moleFraction"),
    a: factor * finite(constantA, "vapourPressure.constantA"),
    b: factor * positive(constantB, "vapourPressure.constantB"),
    c: finite(constantC, "vapourPressure.constantC"),
    within: (at) =>
      extended || (at >= least && at <= most)
        ? temperature(at, "temperature")
        : refuse("range", "temperature", at, `${least} to ${most} °C, as fitted, or beyond: "extend"`),
  };
}

/**
 * The pressure at which a volatile part boils out of a liquid at its temperature: the vacuum may not be stronger.
 *
 * $$p = x\,p_\mathrm{sat}(T) \qquad \log p_\mathrm{sat} = A - \frac{B}{T + C}$$
 *
 * In an oil, x is the share by moles and not by mass: a triglyceride is heavy. Water hardly dissolves in oil: where it
 * is there as drops, x is 1. Each volatile part has a limit of its own, and the highest one counts.
 *
 * @param input - The volatile part (`vapourPressure`, `moleFraction`) and the `temperature` of the liquid [°C].
 * @returns Absolute pressure [Pa].
 * @throws CalculationError `input` where an argument is out of range, `range` outside the temperatures of the fit.
 * @source chemicals-2025 for the form; Raoult's law
 * @example
 * ```ts
 * import { boilingPressure } from "gelwright/particles";
 * const antoine = { law: "antoine", logarithm: "decimal" } as const;
 * const water = { ...antoine, constantA: 10.11564, constantB: 1687.537, constantC: -42.98 };
 * const vapourPressure = { ...water, temperatureLeast: 0.05, temperatureMost: 200.05 };
 * boilingPressure({ vapourPressure, temperature: 60 }); // => 19950.60593762218
 * ```
 */
export function boilingPressure(input: Volatile & { readonly temperature: number }): number {
  const { share, a, b, c, within } = compile(input);
  const gap = within(temperature(input.temperature, "temperature")) + kelvin + c;
  if (gap <= 0) refuse("range", "temperature", input.temperature, `above the law's pole at ${-c - kelvin} °C`);
  return result(share * Math.exp(a - b / gap), "pressure");
}

/**
 * The temperature at which a volatile part boils out of a liquid under a pressure; the inverse of `boilingPressure`.
 *
 * $$T = \frac{B}{A - \log(p/x)} - C$$
 *
 * @param input - The volatile part (`vapourPressure`, `moleFraction`) and the absolute `pressure` [Pa], above 0.
 * @returns Temperature [°C].
 * @throws CalculationError `input` where an argument is out of range, `range` outside the temperatures of the fit,
 *   `unreachable` where the constants reach this pressure at no temperature.
 * @source chemicals-2025 for the form; Raoult's law
 * @example
 * ```ts
 * import { boilingTemperature } from "gelwright/particles";
 * const antoine = { law: "antoine", logarithm: "decimal" } as const;
 * const water = { ...antoine, constantA: 10.11564, constantB: 1687.537, constantC: -42.98 };
 * const vapourPressure = { ...water, temperatureLeast: 0.05, temperatureMost: 200.05 };
 * boilingTemperature({ vapourPressure, pressure: 5000 }); // => 32.822642778940065
 * ```
 */
export function boilingTemperature(input: Volatile & { readonly pressure: number }): number {
  const { share, a, b, c, within } = compile(input);
  const logarithm = Math.log(positive(input.pressure, "pressure") / share);
  if (!(logarithm < a)) refuse("unreachable", "pressure", input.pressure, `less than ${share * Math.exp(a)} Pa`);
  return within(b / (a - logarithm) - c - kelvin);
}
