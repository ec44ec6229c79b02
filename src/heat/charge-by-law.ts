import { list, positive, record, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { type CompiledSpecificHeat, compileSpecificHeat, type SpecificHeatLaw } from "../laws/compile-specific-heat.js";

/** A mass whose specific heat depends on temperature, or which melts over a range. */
export interface PartByLaw {
  /** Mass [kg], above 0. */
  readonly mass: number;
  /** Specific heat against temperature, latent heat included where it melts. */
  readonly specificHeat: SpecificHeatLaw;
}

/** Such a mass, with the temperature that it brings to a mix. */
export interface ChargeByLaw extends PartByLaw {
  /** Temperature before mixing [°C]. */
  readonly temperature: number;
}

/** A part that has been checked. */
export interface CompiledPart extends CompiledSpecificHeat {
  readonly mass: number;
}

/** Checks a part, which faults call `path`. */
export function compilePart(part: PartByLaw, path: string, beyond?: Beyond): CompiledPart {
  const { mass, specificHeat } = record(part, path);
  return { ...compileSpecificHeat(specificHeat, `${path}.specificHeat`, beyond), mass: positive(mass, `${path}.mass`) };
}

/** Heat that charges give off in coming to a common temperature [J], negative where they take it up. */
export function heatGiven(charges: readonly ChargeByLaw[], path: string, beyond?: Beyond): (common: number) => number {
  const each = list(charges, path, 1).map((charge, i) => {
    const at = `${path}[${i}]`;
    const part = compilePart(charge, at, beyond);
    return { ...part, own: temperature(charge.temperature, `${at}.temperature`) };
  });
  return (common) => each.reduce((sum, { mass, heatBetween, own }) => sum + mass * heatBetween(common, own), 0);
}
