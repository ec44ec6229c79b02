import { list, record, result, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import type { SpecificHeatLaw } from "../laws/compile-specific-heat.js";
import { type CompiledPart, compilePart, type Part } from "./charge.js";
import * as known from "./known.js";

/**
 * The heat capacity of a charge as a function of temperature, for a segment; melting is included.
 *
 * $$C(T) = \sum_i m_i\,c_i(T)$$
 *
 * Give the segment the breakpoints of `heatCapacityBreakpoints` as well.
 *
 * @param input.parts - The parts of the charge: mass [kg] and specific heat [J/(kg·K)] or specific-heat law of each, at least one; count the vessel as a part if it warms with the charge.
 * @param input.beyond - Outside the range of a law: `"throw"` (default) or `"extend"`.
 * @returns A function of temperature [°C] that gives heat capacity [J/K], and throws `range` outside the range of a law.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { heatCapacityFunction } from "gelwright/heat";
 * const capacity = heatCapacityFunction({
 *   parts: [
 *     { mass: 80, specificHeat: { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } },
 *     { mass: 12, specificHeat: { law: "constant", specificHeat: 2100 } },
 *   ],
 * });
 * capacity(60); // => 189625.2096
 * ```
 */
export function heatCapacityFunction(input: {
  readonly parts: readonly Part[];
  readonly beyond?: Beyond;
}): (temperature: number) => number {
  const { parts, beyond } = record(input, "input", known.heatCapacityFunction);
  // A segment asks for it at hundreds of temperatures: what is constant is summed once, and parts of one law as one.
  let constant = 0;
  const varying = new Map<SpecificHeatLaw, CompiledPart>();
  list(parts, "parts", 1).forEach((part, i) => {
    const compiled = compilePart(part, `parts[${i}]`, beyond);
    const law = part.specificHeat;
    if (typeof law === "number" || law.law === "constant") {
      const specificHeat = typeof law === "number" ? law : law.specificHeat;
      constant = result(constant + part.mass * specificHeat, "heat capacity");
      return;
    }
    const same = varying.get(law);
    varying.set(law, same ? { ...same, mass: same.mass + part.mass } : compiled);
  });
  const each = [...varying.values()];
  return (at) => {
    let capacity = constant;
    for (const part of each) capacity += part.mass * part.specificHeatOf(at);
    temperature(at, "temperature");
    return result(capacity, "heat capacity");
  };
}

/**
 * The temperatures at which the heat capacity of a charge has a breakpoint: the ends of its melting ranges.
 *
 * $$T_1 \le T_2 \le \dots$$
 *
 * @param input.parts - The parts of the charge: mass [kg] and specific heat [J/(kg·K)] or specific-heat law of each, at least one.
 * @returns Temperatures [°C], rising; empty where nothing melts.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { heatCapacityBreakpoints } from "gelwright/heat";
 * const liquid = { law: "constant", specificHeat: 2100 } as const;
 * const wax = {
 *   law: "melting",
 *   solid: liquid,
 *   liquid,
 *   latentHeat: 185000,
 *   temperatureOnset: 58,
 *   temperatureEnd: 68,
 * } as const;
 * heatCapacityBreakpoints({ parts: [{ mass: 12, specificHeat: wax }] }); // => [58, 68]
 * ```
 */
export function heatCapacityBreakpoints(input: { readonly parts: readonly Part[] }): readonly number[] {
  return list(record(input, "input", known.heatCapacityBreakpoints).parts, "parts", 1)
    .flatMap((part, i) => compilePart(part, `parts[${i}]`).breakpoints)
    .sort((one, other) => one - other);
}
