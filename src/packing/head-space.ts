import { finite, notNegative, positive, record, refuse, result, temperature } from "../guards.js";
import { atmosphere } from "../laws/atmosphere.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";

/** The gas above the product, when it is closed and at the hottest storage. */
export interface HeadSpace {
  /** When it is closed [m³]. */
  readonly volumeClosing: number;
  /** At the hottest storage [m³]; 0 or below where the product fills the pack. */
  readonly volumeHot: number;
  /** Share of the pack that is gas when it is closed. */
  readonly volumeFractionClosing: number;
  /** Share of the pack that is gas at the hottest storage; 0 or below where the product fills the pack. */
  readonly volumeFractionHot: number;
  /** Absolute pressure at the hottest storage in a pack that neither gives nor leaks [Pa]; `null` where the product fills it. */
  readonly pressureHot: number | null;
  /** The same above the atmosphere [Pa]; `null` where the product fills it. */
  readonly overpressureHot: number | null;
  /** Temperature at which the product would fill the pack [°C]; left out where it does not up to the hottest storage. */
  readonly temperatureFull?: number;
}

/**
 * Head space and pressure of a closed pack at its hottest storage: how much room the product leaves as it expands.
 *
 * $$V_g(T) = V_\mathrm{pack} - \frac{m}{\rho(T)} \qquad P = \left(P_0 - p_{v,0}\right)\frac{V_g(T_0)}{V_g(T)}\,\frac{T}{T_0} + p_v$$
 *
 * The pack is taken as rigid and tight, which gives the highest pressure: one that gives or leaks shows less of it, and
 * bulges or weeps instead. Air dissolves in oil and comes out of it, which is left out. With water in the product pass its
 * vapour pressure, or the result is too low. A product that fills a rigid pack bursts it or lifts the closure, whatever
 * this pressure is.
 *
 * @param input.volumePack - Brimful volume of the closed pack [m³], above 0.
 * @param input.mass - Product in it [kg], above 0: take the largest fill, not the mean.
 * @param input.density - Density of the product over temperature.
 * @param input.temperatureClosing - At which it is closed [°C].
 * @param input.temperatureMax - Of the hottest storage or transport [°C], not below `temperatureClosing`.
 * @param input.pressureClosing - Absolute, when it is closed [Pa]; default 101325.
 * @param input.vapourPressureClosing - Of the product when it is closed [Pa]; default 0.
 * @param input.vapourPressureMax - Of the product at the hottest storage [Pa]; default 0.
 * @returns Head space [m³ and share] when closed and hot, and the pressure [Pa].
 * @throws CalculationError `input` where an argument is out of range, `range` where the product does not fit when it is
 *   closed, the density law ends, or a double cannot hold the result.
 * @source openstax-university-physics-2 section 2.1, the ideal gas law; the standard atmosphere is a definition
 * @example
 * ```ts
 * import { headSpace } from "gelwright/packing";
 * const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * const jar = headSpace({ volumePack: 56e-6, mass: 0.0468, density, temperatureClosing: 25, temperatureMax: 50 });
 * (100 * jar.volumeFractionHot).toFixed(1); // => "6.7"
 * ((jar.overpressureHot ?? 0) / 1e5).toFixed(2); // => "0.35"
 * ```
 */
export function headSpace(input: {
  readonly volumePack: number;
  readonly mass: number;
  readonly density: DensityLaw;
  readonly temperatureClosing: number;
  readonly temperatureMax: number;
  readonly pressureClosing?: number;
  readonly vapourPressureClosing?: number;
  readonly vapourPressureMax?: number;
}): HeadSpace {
  const { volumePack, mass, density, temperatureClosing, temperatureMax } = record(input, "input", known.headSpace);
  const { pressureClosing = atmosphere, vapourPressureClosing = 0, vapourPressureMax = 0 } = input;
  const densityOf = compileDensity(density, "density");
  const pack = positive(volumePack, "volumePack");
  const product = positive(mass, "mass");
  const cold = temperature(temperatureClosing, "temperatureClosing");
  const hot = temperature(temperatureMax, "temperatureMax");
  if (hot < cold) refuse("input", "temperatureMax", hot, "not below temperatureClosing");
  const dry =
    positive(pressureClosing, "pressureClosing") - notNegative(vapourPressureClosing, "vapourPressureClosing");
  if (!(dry >= 0)) refuse("input", "vapourPressureClosing", vapourPressureClosing, "not above pressureClosing");
  const vapour = notNegative(vapourPressureMax, "vapourPressureMax");
  const left = (at: number): number => result(pack - product / densityOf(at), "head space");
  const volumeClosing = left(cold);
  if (volumeClosing <= 0) refuse("range", "mass", product, "a fill that fits the pack when it is closed");
  const volumeHot = left(hot);
  const space = {
    volumeClosing,
    volumeHot,
    volumeFractionClosing: result(volumeClosing / pack, "head space"),
    volumeFractionHot: result(volumeHot / pack, "head space"),
  };
  if (volumeHot <= 0)
    return {
      ...space,
      pressureHot: null,
      overpressureHot: null,
      temperatureFull: root(left, cold, hot, "temperatureFull", 1e-12),
    };
  const warmer = (hot + kelvin) / (cold + kelvin);
  const pressureHot = result(dry * (volumeClosing / volumeHot) * warmer + vapour, "pressure");
  return { ...space, pressureHot, overpressureHot: finite(pressureHot - atmosphere, "overpressure") };
}
