import { positive, record, result, temperature } from "../guards.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import * as known from "./known.js";

/** How much smaller a content is once it has cooled. */
export interface Shrinkage {
  /** Volume that is missing once it has cooled [m³]; negative where the content swells. */
  readonly volumeLost: number;
  /** The same as a share of the volume filled. */
  readonly volumeFractionLost: number;
  /** Depth of the sink, if all of it shows at the surface [m]. */
  readonly sinkDepth: number;
  /** Mass that fills the pack up again, counted at the end temperature [kg]. */
  readonly topUpMass: number;
}

/**
 * How far the content of a hot-filled pack sinks as it cools, and the top-up that it needs.
 *
 * $$\Delta V = V\left(1 - \frac{\rho(T_\mathrm{fill})}{\rho(T_\mathrm{end})}\right) \qquad d = \frac{\Delta V}{A} \qquad m = \rho(T_\mathrm{end})\,\Delta V$$
 *
 * The pack itself keeps its size. A melt that crystallises shrinks more than the density of the liquid suggests: use a
 * density law measured across the setting. If it sets from the wall inwards, the surface may sink less and a hole form
 * inside. A top-up that is poured hot sinks by the same fraction.
 *
 * @param input.density - Density of the content over temperature.
 * @param input.volume - Volume filled, at fill temperature [m³], above 0.
 * @param input.areaCrossSection - Area of the surface in the pack [m²], above 0.
 * @param input.temperatureFill - Temperature at filling [°C].
 * @param input.temperatureEnd - Temperature after cooling [°C].
 * @returns Volume lost [m³] and its share, depth of the sink [m] and mass of the top-up [kg].
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where the density law ends.
 * @source definition, conservation of mass
 * @example
 * ```ts
 * import { shrinkage } from "gelwright/heat";
 * shrinkage({
 *   density: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   volume: 0.0002,
 *   areaCrossSection: 0.0038,
 *   temperatureFill: 70,
 *   temperatureEnd: 20,
 * }).sinkDepth; // => 0.0018406672418751799
 * ```
 */
export function shrinkage(input: {
  readonly density: DensityLaw;
  readonly volume: number;
  readonly areaCrossSection: number;
  readonly temperatureFill: number;
  readonly temperatureEnd: number;
}): Shrinkage {
  const { density, volume, areaCrossSection, temperatureFill, temperatureEnd } = record(
    input,
    "input",
    known.shrinkage,
  );
  const densityOf = compileDensity(density, "density");
  const filled = positive(volume, "volume");
  const area = positive(areaCrossSection, "areaCrossSection");
  const hot = densityOf(temperature(temperatureFill, "temperatureFill"));
  const cold = densityOf(temperature(temperatureEnd, "temperatureEnd"));
  const volumeFractionLost = result((cold - hot) / cold, "volumeFractionLost");
  const volumeLost = result(filled * volumeFractionLost, "volumeLost");
  return {
    volumeLost,
    volumeFractionLost,
    sinkDepth: result(volumeLost / area, "sinkDepth"),
    topUpMass: result(filled * (cold - hot), "topUpMass"),
  };
}
