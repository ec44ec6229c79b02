import type { RefractiveIndex } from "../formula/index.js";
import { refractiveIndex, refractiveIndexOfMixture } from "../formula/refraction.js";
import { fraction, positive, record, refuse, result, temperature } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { root } from "../numeric/root.js";
import { indexOfGlycerinWater, indexRange } from "./glycerin-water.js";
import * as known from "./known.js";
import { indexAt } from "./refractive-index.js";

/** How far to either side the slope of the index is taken [mass fraction of glycerin]. */
const aside = 0.005;

/** What is dissolved in the glycerin and water, as a surfactant's solids. */
export interface DissolvedSolids {
  /** Their volume in the volume of the whole outer phase, 0 to below 1. */
  readonly volumeFraction: number;
  /** Their refractive index, 1 to 3. */
  readonly refractiveIndex: number;
}

/** A gel former of glycerin and water that is as clear as the oil allows. */
export interface IndexMatch {
  /** Glycerin in glycerin and water, by mass. */
  readonly massFractionGlycerin: number;
  /** How much the outer phase's index rises with that mass fraction [1 per unit]: a hundredth of it for 1 %. */
  readonly perMassFraction: number;
  /** How far the mass fraction may be off before the mismatch asked for is passed. */
  readonly tolerance: number;
}

export type Outer = (share: number, warmth: number) => number;

/** The outer phase's index with its solids, by Lorentz and Lorenz. */
export function outerOf(solids: DissolvedSolids | undefined): Outer {
  if (solids === undefined) return indexOfGlycerinWater;
  const volume = fraction(record(solids, "solids").volumeFraction, "solids.volumeFraction");
  const ofSolids = refractiveIndex(solids.refractiveIndex, "solids.refractiveIndex");
  if (volume === 0) return indexOfGlycerinWater;
  if (!(volume < 1)) refuse("input", "solids.volumeFraction", volume, "below 1");
  return (share, warmth) =>
    refractiveIndexOfMixture({
      temperature: warmth,
      parts: [
        { mass: 1 - volume, density: 1, refractiveIndex: indexOfGlycerinWater(share, warmth) },
        { mass: volume, density: 1, refractiveIndex: ofSolids },
      ],
    });
}

export function within(warmth: number, beyond: Beyond | undefined): number {
  const at = temperature(warmth, "temperature");
  const [min, max] = indexRange(beyond);
  if (at < min || at > max) refuse("range", "temperature", at, `${min} to ${max} °C`);
  return at;
}

/**
 * The glycerin–water ratio whose refractive index is the oil's, and how closely it has to be met.
 *
 * $$n_\mathrm{outer}(w, T) = n_\mathrm{oil}(T)$$
 *
 * An oil above glycerin's own index (1.474 at 20 °C) cannot be matched with glycerin and water: it has to be blended
 * down, or the outer phase needs solids of a higher index. The water activity, and so the preservation, change with the ratio.
 *
 * @param input.oil - Refractive index of the oil, with its temperature.
 * @param input.temperature - Temperature at which the gel is to be clear [°C], 20 to 30.
 * @param input.mismatch - Difference of the indices that is still clear enough, above 0, from trials.
 * @param input.solids - Solids of the surfactant in the outer phase, by volume, if there are any.
 * @param input.beyond - From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @returns The mass fraction of glycerin, and its tolerance.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no ratio has the oil's index.
 * @source glycerine-producers-1963 second-hand
 * @source gerke-2024 the change with temperature
 * @source lorentz-lorenz-1880 from memory, the solids
 * @example
 * ```ts
 * import { glycerinForIndexMatch } from "gelwright/gel";
 * const oil = { refractiveIndex: 1.45085, temperature: 20 };
 * Math.round(glycerinForIndexMatch({ oil, temperature: 20, mismatch: 0.001 }).massFractionGlycerin * 1e6); // => 850000
 * ```
 */
export function glycerinForIndexMatch(input: {
  readonly oil: RefractiveIndex;
  readonly temperature: number;
  readonly mismatch: number;
  readonly solids?: DissolvedSolids;
  readonly beyond?: Beyond;
}): IndexMatch {
  const { oil, temperature: warmth, mismatch, solids, beyond } = record(input, "input", known.glycerinForIndexMatch);
  const at = within(warmth, beyond);
  const wanted = indexAt(oil, at, "oil");
  const outer = outerOf(solids);
  const [min, max] = [outer(0, at), outer(1, at)];
  if (wanted < min || wanted > max)
    refuse(
      "unreachable",
      "oil.refractiveIndex",
      wanted,
      `${min.toFixed(4)} (water) to ${max.toFixed(4)} (glycerin) at ${at} °C`,
    );
  const massFractionGlycerin = root((share) => outer(share, at) - wanted, 0, 1, "glycerin", 1e-15);
  const low = Math.max(0, massFractionGlycerin - aside);
  const high = Math.min(1, massFractionGlycerin + aside);
  const perMassFraction = (outer(high, at) - outer(low, at)) / (high - low);
  const tolerance = result(positive(mismatch, "mismatch") / perMassFraction, "tolerance");
  return { massFractionGlycerin, perMassFraction, tolerance };
}

/**
 * The temperature at which a gel is clearest: oil and gel former change with temperature at different rates.
 *
 * $$n_\mathrm{outer}(w, T) = n_\mathrm{oil}(T)$$
 *
 * An oil loses index faster than glycerin: too high an oil index is matched when warmer, and the gel hazes as it cools.
 * The solids are taken to keep theirs.
 *
 * @param input.oil - Refractive index of the oil, with its temperature and its change per kelvin.
 * @param input.massFractionGlycerin - Glycerin in glycerin and water, by mass, 0 to 1.
 * @param input.solids - Solids of the surfactant in the outer phase, by volume, if there are any.
 * @param input.beyond - A match between 0 and 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`.
 * @returns The temperature [°C].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where they do not meet in the range.
 * @source glycerine-producers-1963 second-hand
 * @source gerke-2024 the change with temperature
 * @example
 * ```ts
 * import { temperatureForIndexMatch } from "gelwright/gel";
 * const oil = { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 };
 * temperatureForIndexMatch({ oil, massFractionGlycerin: 0.85 }).toFixed(1); // => "27.7"
 * ```
 */
export function temperatureForIndexMatch(input: {
  readonly oil: RefractiveIndex;
  readonly massFractionGlycerin: number;
  readonly solids?: DissolvedSolids;
  readonly beyond?: Beyond;
}): number {
  const { oil, massFractionGlycerin, solids, beyond } = record(input, "input", known.temperatureForIndexMatch);
  const share = fraction(massFractionGlycerin, "massFractionGlycerin");
  const outer = outerOf(solids);
  const over = (at: number): number => indexAt(oil, at, "oil") - outer(share, at);
  const [min, max] = indexRange(beyond);
  const [cold, warm] = [over(min), over(max)];
  if (cold * warm > 0)
    refuse(
      "unreachable",
      "oil",
      `${cold.toExponential(1)} over the gel former at ${min} °C and ${warm.toExponential(1)} at ${max} °C`,
      "a difference that passes through 0 between them",
    );
  return root(over, min, max, "temperature", 1e-12);
}
