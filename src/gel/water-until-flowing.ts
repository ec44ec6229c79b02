import { positive, record, result } from "../guards.js";
import { root } from "../numeric/root.js";
import { diluting, type EmulsionPhases } from "./emulsion-gel.js";
import { strengthOf } from "./gel-with-water.js";
import * as known from "./known.js";
import { oilFractionForYieldStress, type PackedDroplets, yieldFrom } from "./packed-strength.js";
import { randomPacking } from "./packing.js";

/**
 * How much water makes a gel of the cold route flow off: its strength falls below a stress.
 *
 * $$\varphi(m) = \varphi_y \qquad \tau_y(\varphi_y) = \tau$$
 *
 * The stress is what pulls at the film: its own weight, ρ g h on a wall, or the water that runs over it. The packed
 * droplets' law ends at 0.83 of oil. If the gel still withstands the stress there, it yields somewhere between there and 0.64, where
 * disordered droplets stop touching: then only the two ends are known.
 *
 * @param input.stress - Stress that pulls at the film [Pa], above 0.
 * @param input.interfacialTension - Of oil against gel former [N/m], above 0.
 * @param input.massOil - Oil [kg], above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.massGlycerin - Glycerin in the outer phase [kg], 0 or more.
 * @param input.massWater - Water in the outer phase [kg], 0 or more.
 * @param input.solids - Solids of the surfactant: mass [kg] and density [kg/m³]; default none.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.temperature - Temperature [°C], 20 to 30.
 * @param input.beyond - From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @returns The water [kg], with `value` where the law gives it; all 0 where the stress moves the gel as it is.
 * @throws CalculationError `input` where an argument is out of range; `range` outside the temperatures, and where there is
 *   more oil than the law was measured with.
 * @source princen-kiss-1989 from memory
 * @source mason-1995 abstract: the packing at which strength ends
 * @example
 * ```ts
 * import { waterUntilFlowing } from "gelwright/gel";
 * const gel = {
 *   massOil: 0.82,
 *   densityOil: 915,
 *   massGlycerin: 0.153,
 *   massWater: 0.027,
 *   diameter: 4e-6,
 *   temperature: 20,
 *   interfacialTension: 0.005,
 * };
 * const { min, max } = waterUntilFlowing({ ...gel, stress: 5 });
 * [min, max].map((water) => `${(1000 * water).toFixed(0)} g`); // => ["37 g", "359 g"]
 * ```
 */
export function waterUntilFlowing(
  input: EmulsionPhases & Omit<PackedDroplets, "volumeFractionOil"> & { readonly stress: number },
): { readonly min: number; readonly value?: number; readonly max: number } {
  const { diameter, interfacialTension, stress, massOil, densityOil } = record(input, "input", known.waterUntilFlowing);
  const pull = positive(stress, "stress");
  const at = diluting(input);
  const droplets = { diameter, interfacialTension };
  const { oil } = at(0);
  if (strengthOf(oil, droplets).max <= pull) return { min: 0, value: 0, max: 0 };
  const waterFor = (volumeFractionOil: number): number => {
    if (oil <= volumeFractionOil) return 0;
    // A kilogram of water takes up more than 1/1200 m³ in any mixture, so that this much is more than enough.
    const enough = result((1200 * massOil * (1 / volumeFractionOil - 1)) / densityOil, "water");
    return root((added) => at(added).oil - volumeFractionOil, 0, enough, "water");
  };
  if (pull < strengthOf(yieldFrom, droplets).max) return { min: waterFor(yieldFrom), max: waterFor(randomPacking) };
  const value = waterFor(oilFractionForYieldStress({ ...droplets, yieldStress: pull }));
  return { min: value, value, max: value };
}
