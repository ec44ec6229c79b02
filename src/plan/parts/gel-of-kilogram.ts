import { refractiveIndexOfMixture } from "../../formula/index.js";
import { type EmulsionGel, glycerinWaterBands, type MismatchDoubt } from "../../gel/index.js";
import type { Charge } from "../charge.js";
import { type Content, densityOf, isGlycerin, massOf } from "../contents.js";
import { otherwise } from "../unknown.js";
import { indexOfGelFormer, indexOfOil, indicesAt, measuredIndex, type Part, pairIn, partsOf } from "./clarity.js";
import { dropletsOf } from "./droplets.js";

/** How far the difference of the indices may be off, where the table of glycerin and water gives one of them. */
export const doubtOfTable: number = glycerinWaterBands.refractiveIndex.max;

/** What is dissolved in an outer phase beside glycerin and water, as one part; none where nothing is. Traces without an index bend light as the whole does. */
function solidsOf(outer: readonly Content[], temperature: number): Part | undefined {
  const { rest } = pairIn(outer);
  const known = partsOf(rest, temperature, massOf(outer));
  const mass = massOf(rest) - massOf(known);
  const traces = otherwise(
    (): readonly Part[] => {
      const volume = massOf(rest) / densityOf(rest, temperature) - volumeOf(known);
      const refractiveIndex = indexOfGelFormer(outer, temperature);
      return mass > 0 && volume > 0 ? [{ mass, density: mass / volume, refractiveIndex }] : [];
    },
    () => [],
  );
  const parts = [...known, ...traces];
  if (parts.length === 0) return undefined;
  const whole = massOf(parts);
  return {
    mass: whole,
    density: whole / volumeOf(parts),
    refractiveIndex: refractiveIndexOfMixture({ temperature, parts }),
  };
}

function volumeOf(parts: readonly Part[]): number {
  return parts.reduce((sum, part) => sum + part.mass / part.density, 0);
}

/**
 * One kilogram of the finished gel, as the kernels take it that put water in. The index along the way is that of its
 * glycerin and water; a measured one differs from it by what then counts as doubt.
 */
export function gelOfKilogram(charge: Charge, temperature: number): EmulsionGel & MismatchDoubt {
  const gelFormerIndex = measuredIndex(charge);
  const [outer, oil] = [charge.outer(), charge.oil()];
  const whole = massOf(outer) + massOf(oil);
  const { pair } = pairIn(outer);
  const solids = solidsOf(outer, temperature);
  const glycerin = massOf(pair.filter(isGlycerin));
  const off = gelFormerIndex
    ? otherwise(
        () => Math.abs(indicesAt(charge, temperature).gelFormer - indexOfGelFormer(outer, temperature)),
        () => 0,
      )
    : 0;
  return {
    massOil: massOf(oil) / whole,
    densityOil: charge.phaseDensities().densityOil,
    oil: { refractiveIndex: indexOfOil(oil, temperature), temperature },
    massGlycerin: glycerin / whole,
    massWater: (massOf(pair) - glycerin) / whole,
    ...(solids && { solids: { ...solids, mass: solids.mass / whole } }),
    diameter: dropletsOf(charge).diameter,
    temperature,
    beyond: "extend",
    mismatchUncertainty: Math.max(doubtOfTable, off),
  };
}
