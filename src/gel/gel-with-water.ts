import { notNegative, record } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { type Diluted, diluting, type EmulsionGel, indicesOf } from "./emulsion-gel.js";
import * as known from "./known.js";
import { yieldFrom, yieldStressOfDroplets } from "./packed-strength.js";
import { randomPacking } from "./packing.js";
import { turbidity } from "./turbidity.js";

/** By how much the table of glycerin and water and its change with temperature miss measurements up to 75 % of glycerin. */
const uncertaintyOfTable = 6e-4;

/** How far the difference of the indices may be off. */
export interface MismatchDoubt {
  /** How far the difference of the indices may be off, 0 or more; 0.0006, the table's own, by default. */
  readonly mismatchUncertainty?: number;
}

/** A gel into which water has gone. */
export interface GelWithWater {
  /** Glycerin in glycerin and water, by mass. */
  readonly massFractionGlycerin: number;
  /** Of the outer phase, with its solids. */
  readonly refractiveIndexOuter: number;
  /** Index of the oil less that of the outer phase. */
  readonly mismatch: number;
  /** Volume fraction of oil. */
  readonly volumeFractionOil: number;
  /** Turbidity between the two pictures of the droplets, each with the mismatch at either end of its uncertainty [1/m]. */
  readonly turbidity: { readonly min: number; readonly max: number };
  /**
   * Yield stress [Pa], if an interfacial tension is given. `value` is missing between the packing at which droplets touch
   * and the oil fraction from which the law was measured; below that packing it is 0.
   */
  readonly yieldStress?: { readonly min: number; readonly value?: number; readonly max: number };
}

/** The turbidity of a gel at some water, between the two pictures of the droplets and the ends of the mismatch. */
export function hazing(gel: EmulsionGel & MismatchDoubt): (diluted: Diluted) => { min: number; max: number } {
  const { diameter, mismatchUncertainty } = gel;
  const uncertainty = notNegative(mismatchUncertainty ?? uncertaintyOfTable, "mismatchUncertainty");
  const indicesAt = indicesOf(gel);
  return (diluted) => {
    const { outer, oil } = indicesAt(diluted);
    const apart = Math.abs(oil - outer);
    const side = oil < outer ? -1 : 1;
    const all = [Math.max(0, apart - uncertainty), apart + uncertainty].flatMap((mismatch) => {
      const { independent, twoPhase } = turbidity({
        volumeFractionOil: diluted.oil,
        diameter,
        refractiveIndexDroplet: outer + side * mismatch,
        refractiveIndexOuter: outer,
      });
      return [independent, twoPhase];
    });
    return { min: minOf(all), max: maxOf(all) };
  };
}

/**
 * How a gel of the cold route changes as water goes into its outer phase, on wet skin or under the tap.
 *
 * $$w = \frac{m_g}{m_g + m_w + m} \qquad \varphi = \frac{V_\mathrm{oil}}{V_\mathrm{oil} + (m_g + m_w + m)/\rho(w) + V_s} \qquad n_\mathrm{oil} - n_\mathrm{outer}(w)$$
 *
 * Water lowers the outer phase's index, so that the match is lost and the gel turns to milk; and it moves the droplets
 * apart, so that they press on one another less and the gel loses its strength. The strength is the packed droplets' law
 * where that was measured, down to 0.83 of oil; from there to 0.64, where disordered droplets stop touching, it lies
 * between nothing and what it was at 0.83; below it is nothing. Droplets of many sizes stop touching sooner. The water is taken to be mixed in evenly and the droplets
 * to stay as they are: how soon it goes in, creaming, droplets that run together or stick to one another, and air, are
 * left out.
 *
 * @param input.massWaterAdded - Water that has gone in [kg], 0 or more.
 * @param input.massOil - Oil [kg], above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.oil - Refractive index of the oil, with its temperature.
 * @param input.massGlycerin - Glycerin in the outer phase [kg], 0 or more.
 * @param input.massWater - Water in the outer phase [kg], 0 or more.
 * @param input.solids - Solids of the surfactant: mass [kg], density [kg/m³] and refractive index; default none.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.temperature - Temperature [°C], 20 to 30.
 * @param input.beyond - From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @param input.interfacialTension - Of oil against gel former [N/m], above 0; without it there is no strength.
 * @param input.mismatchUncertainty - How far the mismatch may be off, 0 or more; default 0.0006.
 * @returns Share of glycerin, index and mismatch, oil fraction, turbidity [1/m] and yield stress [Pa].
 * @throws CalculationError `input` where an argument is out of range; `range` outside the temperatures, and for a
 *   strength where there is more oil than the law was measured with.
 * @source glycerine-producers-1963 second-hand, the index
 * @source volk-kahler-2018 second-hand, the density
 * @source princen-kiss-1989 from memory, the strength
 * @source mason-1995 abstract: the packing at which strength ends
 * @source gerke-2024 the uncertainty of the index
 * @example
 * ```ts
 * import { gelWithWater } from "gelwright/gel";
 * const gel = {
 *   massOil: 0.82,
 *   densityOil: 915,
 *   oil: { refractiveIndex: 1.4509, temperature: 20 },
 *   massGlycerin: 0.153,
 *   massWater: 0.027,
 *   diameter: 4e-6,
 *   temperature: 20,
 *   interfacialTension: 0.005,
 * };
 * const [asIs, wet] = [0, 0.05].map((massWaterAdded) => gelWithWater({ ...gel, massWaterAdded }));
 * [asIs?.mismatch.toFixed(4), wet?.mismatch.toFixed(4)]; // => ["0.0001", "0.0282"]
 * [asIs?.yieldStress?.value?.toFixed(0), wet?.yieldStress?.max.toFixed(0)]; // => ["40", "18"]
 * ```
 */
export function gelWithWater(
  input: EmulsionGel & MismatchDoubt & { readonly massWaterAdded: number; readonly interfacialTension?: number },
): GelWithWater {
  const { massWaterAdded, diameter, interfacialTension } = record(input, "input", known.gelWithWater);
  const diluted = diluting(input)(notNegative(massWaterAdded, "massWaterAdded"));
  const indices = indicesOf(input)(diluted);
  return {
    massFractionGlycerin: diluted.share,
    refractiveIndexOuter: indices.outer,
    mismatch: indices.oil - indices.outer,
    volumeFractionOil: diluted.oil,
    turbidity: hazing(input)(diluted),
    ...(interfacialTension !== undefined && { yieldStress: strengthOf(diluted.oil, { diameter, interfacialTension }) }),
  };
}

/** The strength of droplets at any oil fraction that they are diluted to. */
export function strengthOf(
  oil: number,
  droplets: { readonly diameter: number; readonly interfacialTension: number },
): { readonly min: number; readonly value?: number; readonly max: number } {
  const value = yieldStressOfDroplets({ ...droplets, volumeFractionOil: Math.max(oil, yieldFrom) });
  if (oil >= yieldFrom) return { min: value, value, max: value };
  return oil >= randomPacking ? { min: 0, max: value } : { min: 0, value: 0, max: 0 };
}
