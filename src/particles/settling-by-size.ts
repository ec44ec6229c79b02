import { fraction, list, positive, record, refuse } from "../guards.js";
import { type CoolingVessel, cool } from "../transient/cooling-segment.js";
import type { SegmentEnd } from "../transient/segment.js";
import * as known from "./known.js";
import { type Suspension, velocityCurve } from "./velocity-curve.js";

/** Particles of nearly one size, as a sieve or a size analysis gives them. */
export interface SizeClass {
  /** Diameter that stands for the class [m], above 0: its upper end, to be on the careful side. */
  readonly diameter: number;
  /** Mass of this class per mass of all particles, 0 to 1. */
  readonly massFraction: number;
}

/** How the classes of a size distribution have settled. */
export interface SettlingBySize {
  /** Share of the mass, 0 to 1, whose way was longer than allowed. */
  readonly massFractionBeyond: number;
  /** Way of each class [m], positive downwards, in the order of the classes. */
  readonly distances: readonly number[];
  /** [s]. */
  readonly duration: number;
  /** [°C]. */
  readonly temperatureEnd: number;
}

/**
 * Which share of a mixture of sizes settles further than allowed while a melt cools and thickens.
 *
 * $$X = \sum_{|s_i| > s_\mathrm{allowed}} w_i \qquad s_i = \int v(d_i, T(t))\,\mathrm dt$$
 *
 * Each class settles by itself, among the volume fraction of all of them. The answer is as fine as the classes are.
 *
 * @param input - The suspension without its diameter (densities [kg/m³], viscosity law, volume fraction of all
 *   particles, drag law), the vessel (heat capacity [J/K], heat-loss law, room [°C], start [°C]), either
 *   `temperatureEnd` [°C] or `duration` [s], `sizes` (diameter [m] and mass fraction of each class, which sum to 1
 *   within 1e-6), and `settlingAllowed` [m], above 0.
 * @returns The share of the mass, the way of each class [m], the duration [s] and the end [°C].
 * @throws CalculationError `input` where an argument is out of range or the shares do not sum to 1, `range` where the
 *   drag law or the readings end, `unreachable` where the room is too warm for the end.
 * @source stokes-1851, richardson-zaki-1954, bergman-2011 section 5.1
 * @example
 * ```ts
 * import { settlingBySize } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * settlingBySize({
 *   sizes: [
 *     { diameter: 40e-6, massFraction: 0.25 },
 *     { diameter: 80e-6, massFraction: 0.55 },
 *     { diameter: 160e-6, massFraction: 0.2 },
 *   ],
 *   settlingAllowed: 0.005,
 *   densityParticle: 1400,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
 *   heatCapacity: 90000,
 *   heatLoss: { law: "newton", conductance: 12 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 56,
 *   temperatureEnd: 30,
 * }).massFractionBeyond; // => 0.2
 * ```
 */
export function settlingBySize(
  input: Omit<Suspension, "diameter"> &
    CoolingVessel &
    SegmentEnd & { readonly sizes: readonly SizeClass[]; readonly settlingAllowed: number },
): SettlingBySize {
  const { sizes, settlingAllowed, beyond } = record(input, "input", known.settlingBySize);
  const allowed = positive(settlingAllowed, "settlingAllowed");
  let whole = 0;
  const curves = list(sizes, "sizes", 1).map((size, i) => {
    const { diameter, massFraction } = record(size, `sizes[${i}]`);
    whole += fraction(massFraction, `sizes[${i}].massFraction`);
    return velocityCurve({ ...input, diameter: positive(diameter, `sizes[${i}].diameter`) }, beyond);
  });
  if (Math.abs(whole - 1) > 1e-6) refuse("input", "sizes", `mass fractions that sum to ${whole}`, "a sum of 1");
  const rates = Object.fromEntries(curves.map(({ velocityAt }, i) => [`${i}`, velocityAt]));
  const { totals, duration, temperatureEnd } = cool(input, input, rates, curves[0]?.breakpoints);
  const distances = curves.map((_, i) => totals[`${i}`] as number);
  const beyondAllowed = sizes.filter((_, i) => Math.abs(distances[i] as number) > allowed);
  const massFractionBeyond = beyondAllowed.reduce((sum, { massFraction }) => sum + massFraction, 0);
  return { massFractionBeyond: massFractionBeyond / whole, distances, duration, temperatureEnd };
}
