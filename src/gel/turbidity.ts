import { fraction, notNegative, positive, record, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import * as known from "./known.js";
import { type Scatterer, scatteringEfficiency, sizeOf } from "./scattering.js";

/** Air stirred in, as bubbles. */
export interface AirBubbles {
  /** Volume of air in the volume of the gel, 0 to 1. */
  readonly volumeFraction: number;
  /** Mean diameter of the bubbles [m], above 0. */
  readonly diameter: number;
}

/** What scatters light out of the straight beam, per metre of gel, by two pictures of the droplets; and by air. */
export interface Turbidity {
  /** Each droplet by itself [1/m]: right for few, overstated for packed ones. A ranking there. */
  readonly independent: number;
  /** The two phases alike [1/m]: an interpolation that rises and then falls with the oil fraction. */
  readonly twoPhase: number;
  /** The bubbles' own, on top of either [1/m]. */
  readonly air: number;
}

/** ∫₀² (2 − 2s + s²)/(1 + b s)² ds, the two-phase medium's light over all directions. */
function overDirections(b: number): number {
  if (b > 0.05)
    return ((2 + 2 / b + 1 / b ** 2) * ((2 * b) / (1 + 2 * b)) - (2 / b) * (1 + 1 / b) * Math.log1p(2 * b) + 2 / b) / b;
  let sum = 0;
  for (let k = 0; k < 16; k += 1) sum += (k + 1) * (-b) ** k * 2 ** (k + 2) * (1 / (k + 1) - 2 / (k + 2) + 2 / (k + 3));
  return sum;
}

/** How sure a turbidity is: an order of magnitude either way. It ranks gels, and predicts none. */
export const turbidityBand: Band = { by: "factor", min: 0.1, max: 10, basis: "judgement", sources: [] };

/**
 * The turbidity of a gel of oil droplets by two models, side by side, and that of the air in it.
 *
 * $$\tau_\mathrm{independent} = \frac{3\,\varphi\,Q}{2\,d} \qquad \tau_\mathrm{two\,phase} = 2\,k\,(m - 1)^2\,\varphi\,(1 - \varphi)\,(k a)^3\,I(2 k^2 a^2) \qquad \tau_\mathrm{air} = \frac{3\,\varphi_\mathrm{air}\,Q_\mathrm{air}}{2\,d_\mathrm{air}}$$
 *
 * k is the wave number in the outer phase and $I(b) = \int_0^2 (2 - 2s + s^2)/(1 + b s)^2\,\mathrm ds$. The second is
 * the form of Debye and Bueche for two phases mixed at random, here an interpolation: its correlation length a = 3d/8
 * makes it agree with the first for a few large droplets close in index, and it treats oil and gel former alike, so
 * that a gel clears again as oil is added. Neither is a promise: packed droplets are neither independent nor at random.
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.refractiveIndexDroplet - Refractive index of the oil, 1 to 3.
 * @param input.refractiveIndexOuter - Refractive index of the gel former, 1 to 3, at the same temperature.
 * @param input.wavelength - Wavelength in vacuum [m]; default 589.3 nm.
 * @param input.air - Air stirred in: its volume fraction, 0 to 1, and the bubbles' diameter [m]; default none.
 * @returns The three turbidities [1/m].
 * @throws CalculationError `input` where an argument is out of range; `range` where a size is beyond every theory.
 * @source bohren-huffman-1983 from memory: independent scattering
 * @source debye-bueche-1949 from memory: two phases
 * @example
 * ```ts
 * import { turbidity } from "gelwright/gel";
 * const gel = { diameter: 5e-6, refractiveIndexDroplet: 1.451, refractiveIndexOuter: 1.45 };
 * const haze = (volumeFractionOil: number) => turbidity({ ...gel, volumeFractionOil }).twoPhase;
 * haze(0.3) < haze(0.5) && haze(0.85) < haze(0.7); // => true
 * ```
 */
export function turbidity(
  input: Scatterer & { readonly volumeFractionOil: number; readonly air?: AirBubbles },
): Turbidity {
  const { volumeFractionOil, air, ...droplets } = record(input, "input", known.turbidity);
  const { diameter } = droplets;
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  const { ratio, wave } = sizeOf(droplets);
  const length = wave * (3 / 8) * diameter;
  const contrast = (ratio - 1) ** 2 * oil * (1 - oil);
  return {
    independent: result((1.5 * oil * scatteringEfficiency(droplets)) / diameter, "turbidity"),
    twoPhase: result(2 * wave * contrast * length ** 3 * overDirections(2 * length * length), "turbidity"),
    air: air === undefined ? 0 : byAir(droplets, air),
  };
}

function byAir(droplets: Scatterer, air: AirBubbles): number {
  const { volumeFraction, diameter } = record(air, "air");
  const held = fraction(volumeFraction, "air.volumeFraction");
  const efficiency = scatteringEfficiency({
    ...droplets,
    diameter: positive(diameter, "air.diameter"),
    refractiveIndexDroplet: 1,
  });
  return result((1.5 * held * efficiency) / diameter, "turbidity of air");
}

/**
 * The share of light that passes a depth of gel straight, by its turbidity.
 *
 * $$T = e^{-\tau L}$$
 *
 * @param input.turbidity - Turbidity, 0 or more [1/m].
 * @param input.depth - Depth of gel that is looked through, 0 or more [m].
 * @returns The share, 0 to 1.
 * @throws CalculationError `input` where an argument is out of range.
 * @source bohren-huffman-1983 from memory
 * @example
 * ```ts
 * import { transmittance } from "gelwright/gel";
 * transmittance({ turbidity: 20, depth: 0.05 }).toFixed(2); // => "0.37"
 * ```
 */
export function transmittance(input: { readonly turbidity: number; readonly depth: number }): number {
  const { turbidity: per, depth } = record(input, "input", known.transmittance);
  return Math.exp(-result(notNegative(per, "turbidity") * notNegative(depth, "depth"), "turbidity times depth"));
}
