import { fraction, positive, record, refuse, result, show, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { type AntoineLaw, compileVapourPressure } from "../laws/vapour-pressure.js";
import * as known from "./known.js";

/** The volatile part of a liquid. */
export interface VolatilePart {
  /** Its vapour pressure when pure. */
  readonly vapourPressure: AntoineLaw;
  /** Moles of it per mole of the liquid, above 0 and up to 1; default 1. */
  readonly moleFraction?: number;
  /** Outside the temperatures of the fit: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

function compile(input: VolatilePart): {
  readonly share: number;
  readonly pressureAt: (temperature: number) => number;
} {
  const { vapourPressure, moleFraction = 1, beyond } = record(input, "input");
  const pressureAt = compileVapourPressure(vapourPressure, beyond, "vapourPressure");
  if (vapourPressure.law !== "antoine") refuse("input", "vapourPressure.law", show(vapourPressure.law), '"antoine"');
  return { share: positive(fraction(moleFraction, "moleFraction"), "moleFraction"), pressureAt };
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
 * const vapourPressure = { ...water, temperatureMin: 0.05, temperatureMax: 200.05 };
 * boilingPressure({ vapourPressure, temperature: 60 }); // => 19950.60593762218
 * ```
 */
export function boilingPressure(input: VolatilePart & { readonly temperature: number }): number {
  record(input, "input", known.boilingPressure);
  const { share, pressureAt } = compile(input);
  return result(share * pressureAt(input.temperature), "pressure");
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
 * const vapourPressure = { ...water, temperatureMin: 0.05, temperatureMax: 200.05 };
 * boilingTemperature({ vapourPressure, pressure: 5000 }); // => 32.822642778940065
 * ```
 */
export function boilingTemperature(input: VolatilePart & { readonly pressure: number }): number {
  record(input, "input", known.boilingTemperature);
  const { share, pressureAt } = compile(input);
  const { logarithm, constantA, constantB, constantC } = input.vapourPressure;
  const natural = Math.log(positive(input.pressure, "pressure") / share);
  const wanted = logarithm === "decimal" ? natural / Math.LN10 : natural;
  if (!(wanted < constantA))
    refuse(
      "unreachable",
      "pressure",
      input.pressure,
      "less than the pressure that the constants reach at no temperature",
    );
  const found = temperature(constantB / (constantA - wanted) - constantC - kelvin, "temperature");
  // Refuses what lies outside the fit.
  pressureAt(found);
  return found;
}
