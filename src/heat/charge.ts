import { list, positive, record, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { type CompiledSpecificHeat, compileSpecificHeat, type SpecificHeatLaw } from "../laws/compile-specific-heat.js";

/** A part of a charge. */
export interface Part {
  /** Mass [kg], above 0. */
  readonly mass: number;
  /** Specific heat [J/(kg·K)], above 0; or a law against temperature, latent heat included where the part melts over a range. */
  readonly specificHeat: number | SpecificHeatLaw;
}

/** A mass that brings its own temperature to a mix. */
export interface Charge extends Part {
  /** Temperature before mixing [°C]. */
  readonly temperature: number;
}

/** A part that has been checked. */
export interface CompiledPart extends Pick<CompiledSpecificHeat, "specificHeatOf" | "breakpoints"> {
  readonly mass: number;
  /** Heat that the whole part takes up from one temperature to another [J], negative downwards. */
  readonly heatBetween: (from: number, to: number) => number;
}

/** Whether the specific heat of any part is a law, so that a balance has no closed form. */
export function anyLaw(parts: readonly Pick<Part, "specificHeat">[]): boolean {
  return parts.some((part) => typeof (part as Partial<Part> | null | undefined)?.specificHeat === "object");
}

/** Checks a part, which faults call `path`. */
export function compilePart(part: Part, path: string, beyond?: Beyond): CompiledPart {
  const { mass, specificHeat } = record(part, path);
  const at = `${path}.specificHeat`;
  positive(mass, `${path}.mass`);
  if (typeof specificHeat === "object") {
    const { heatBetween, ...law } = compileSpecificHeat(specificHeat, at, beyond);
    return { ...law, mass, heatBetween: (from, to) => mass * heatBetween(from, to) };
  }
  const capacity = mass * positive(specificHeat, at);
  return {
    mass,
    specificHeatOf: () => specificHeat,
    breakpoints: [],
    heatBetween: (from, to) => capacity * (to - from),
  };
}

/** Heat that charges give off in coming to a common temperature [J], negative where they take it up. */
export function heatGiven(charges: readonly Charge[], path: string, beyond?: Beyond): (common: number) => number {
  const each = list(charges, path, 1).map((charge, i) => {
    const at = `${path}[${i}]`;
    const { heatBetween } = compilePart(charge, at, beyond);
    return { heatBetween, own: temperature(charge.temperature, `${at}.temperature`) };
  });
  return (common) => each.reduce((sum, { heatBetween, own }) => sum + heatBetween(common, own), 0);
}
