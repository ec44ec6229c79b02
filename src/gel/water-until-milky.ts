import { fraction, positive, record, refuse, result } from "../guards.js";
import { root } from "../numeric/root.js";
import { diluting, type EmulsionGel } from "./emulsion-gel.js";
import { hazing, type MismatchDoubt } from "./gel-with-water.js";
import * as known from "./known.js";

/** Up to how many times its own mass of water a gel is followed. */
const dilution = 9;
/** Steps in which the water is gone through; each moves the outer phase's index by some 0.0007. */
const steps = 200;

/**
 * How much water turns a gel of the cold route milky: the light that passes straight through a film falls below a share.
 *
 * $$\tau(m) = \frac{-\ln T}{L}$$
 *
 * The least water is that at which the larger of the two pictures of the droplets gets there, with the mismatch at the
 * worse end of its uncertainty; the most is that of the smaller picture at the better end. An outer phase whose index lies
 * above the oil's clears before it turns milky. The film is looked through at one thickness, though water makes it thicker.
 *
 * @param input.depth - Thickness of the film that is looked through [m], above 0.
 * @param input.transmittanceMin - Light that passes straight through a film that still counts as clear, between 0 and 1.
 * @param input.massOil - Oil [kg], above 0.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.oil - Refractive index of the oil, with its temperature.
 * @param input.massGlycerin - Glycerin in the outer phase [kg], 0 or more.
 * @param input.massWater - Water in the outer phase [kg], 0 or more.
 * @param input.solids - Solids of the surfactant: mass [kg], density [kg/m³] and refractive index; default none.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.temperature - Temperature [°C], 20 to 30.
 * @param input.beyond - From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @param input.mismatchUncertainty - How far the mismatch may be off, 0 or more; default 0.0006.
 * @returns The water [kg]: 0 where it is milk without any, `max` null where 9 times its mass do not turn it by the smaller picture.
 * @throws CalculationError `input` where an argument is out of range; `range` outside the temperatures; `unreachable`
 *   where 9 times its mass do not turn it by either picture.
 * @source bohren-huffman-1983 from memory: each droplet by itself
 * @source debye-bueche-1949 from memory: two phases
 * @source gerke-2024 the uncertainty of the index
 * @example
 * ```ts
 * import { waterUntilMilky } from "gelwright/gel";
 * const gel = {
 *   massOil: 0.82,
 *   densityOil: 915,
 *   oil: { refractiveIndex: 1.4509, temperature: 20 },
 *   massGlycerin: 0.153,
 *   massWater: 0.027,
 *   diameter: 4e-6,
 *   temperature: 20,
 * };
 * const { min, max } = waterUntilMilky({ ...gel, depth: 200e-6, transmittanceMin: 0.5 });
 * [min, max ?? 1].map((water) => `${(1000 * water).toFixed(0)} g`); // => ["4 g", "14 g"]
 * ```
 */
export function waterUntilMilky(
  input: EmulsionGel & MismatchDoubt & { readonly depth: number; readonly transmittanceMin: number },
): { readonly min: number; readonly max: number | null } {
  const { depth, transmittanceMin, massOil, massGlycerin, massWater, solids } = record(
    input,
    "input",
    known.waterUntilMilky,
  );
  const clear = fraction(transmittanceMin, "transmittanceMin");
  if (clear === 0 || clear === 1) refuse("input", "transmittanceMin", clear, "between 0 and 1");
  const limit = result(-Math.log(clear) / positive(depth, "depth"), "turbidity");
  const dilutedBy = diluting(input);
  const hazeOf = hazing(input);
  const outer = massGlycerin + massWater + (solids?.mass ?? 0);
  const far = dilution * (massOil + outer);
  // Even steps in the share of the new water in the outer phase: the index follows it, and not the water.
  const waterAt = (share: number): number => (outer * share) / (1 - share);
  const end = far / (outer + far);
  let seen = 0;
  const passed = (side: "min" | "max"): number | undefined => {
    const over = (share: number): number => hazeOf(dilutedBy(waterAt(share)))[side] - limit;
    if (over(0) >= 0) return 0;
    for (let k = 1; k <= steps; k += 1) {
      const value = over((end * k) / steps);
      seen = Math.max(seen, value + limit);
      if (value >= 0) return result(waterAt(root(over, (end * (k - 1)) / steps, (end * k) / steps, "water")), "water");
    }
    return undefined;
  };
  const min = passed("max");
  if (min === undefined) {
    const clearest = Math.exp(-seen * depth);
    return refuse(
      "unreachable",
      "transmittanceMin",
      clear,
      `above ${clearest}: so much passes with any water up to ${dilution} times its mass`,
    );
  }
  return { min, max: passed("min") ?? null };
}
