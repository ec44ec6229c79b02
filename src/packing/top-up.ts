import { positive, record, refuse, result, temperature } from "../guards.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import * as known from "./known.js";

/** A fill in two pours. */
export interface TopUp {
  /** First pour, up to the mark while hot [kg]. */
  readonly massFirst: number;
  /** Second pour, once the first has sunk [kg]; 0 where one pour holds it all. */
  readonly massTopUp: number;
  /** Volume that the first pour lost by then [m³]. */
  readonly volumeSunk: number;
  /** Room up to the mark after the second pour, while that is hot [m³]. */
  readonly volumeLeft: number;
}

/**
 * A hot fill in two pours: how much fits up to the mark, and the top-up once the first pour has cooled and sunk.
 *
 * $$m_1 = \min\left(m,\;\rho(T_f)\,V\right) \qquad m_2 = m - m_1 \qquad V - \frac{m_1}{\rho(T_c)} - \frac{m_2}{\rho(T_f)} \ge 0$$
 *
 * The mass of the pack is that of the target, so the top-up is no extra charge; what it costs is heat, since the second pour
 * has to be kept hot. Poured on a skin it may part from the first one: pour before the skin sets, or warm the surface.
 * Depth of the sink and holes within are told by `shrinkage` of the room `heat`.
 *
 * @param input.massFill - Content to reach [kg], above 0.
 * @param input.volumeMark - Volume of the pack up to the mark [m³], above 0.
 * @param input.density - Density of the product over temperature, measured across its setting.
 * @param input.temperatureFill - At which both pours are made [°C].
 * @param input.temperatureTopUp - To which the first pour has cooled when the second is made [°C].
 * @returns Both pours [kg], the volume sunk and the room left [m³].
 * @throws CalculationError `input` where an argument is out of range, `range` where the density law ends, `unreachable`
 *   where the top-up does not fit.
 * @source definition, conservation of mass
 * @example
 * ```ts
 * import { topUp } from "gelwright/packing";
 * const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.8 } as const;
 * const pours = topUp({ massFill: 0.046, volumeMark: 52e-6, density, temperatureFill: 75, temperatureTopUp: 30 });
 * (1000 * pours.massTopUp).toFixed(2); // => "0.71"
 * ```
 */
export function topUp(input: {
  readonly massFill: number;
  readonly volumeMark: number;
  readonly density: DensityLaw;
  readonly temperatureFill: number;
  readonly temperatureTopUp: number;
}): TopUp {
  const { massFill, volumeMark, density, temperatureFill, temperatureTopUp } = record(input, "input", known.topUp);
  const mass = positive(massFill, "massFill");
  const mark = positive(volumeMark, "volumeMark");
  const densityOf = compileDensity(density, "density");
  const hot = densityOf(temperature(temperatureFill, "temperatureFill"));
  const cold = densityOf(temperature(temperatureTopUp, "temperatureTopUp"));
  const massFirst = Math.min(mass, result(hot * mark, "first pour"));
  const massTopUp = mass - massFirst;
  const volumeSunk = result(massFirst / hot - massFirst / cold, "volume sunk");
  const volumeLeft = result(mark - massFirst / cold - massTopUp / hot, "room left");
  if (massTopUp > 0 && volumeLeft < 0)
    refuse("unreachable", "massFill", mass, "a content that fits up to the mark in two pours");
  return { massFirst, massTopUp, volumeSunk, volumeLeft };
}
