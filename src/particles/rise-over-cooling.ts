import { positive, record, refuse, result, temperature } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { compileViscosity, kelvin } from "../laws/compile-viscosity.js";
import { compileDensity, type DensityLaw } from "../laws/density.js";
import { gravity } from "../laws/gravity.js";
import type { ViscosityLaw } from "../laws/viscosity-law.js";
import { root } from "../numeric/root.js";
import { type CoolingVessel, cool } from "../transient/cooling-segment.js";
import type { SegmentEnd, SegmentResult } from "../transient/segment.js";
import { type BubbleSurface, fasterBy } from "./bubble-rise.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";
import { stokes } from "./stokes-velocity.js";

/** A bubble in a melt whose density and viscosity change with temperature. */
export interface BubbleInMelt {
  /** Diameter of the bubble at the start [m], above 0. */
  readonly diameter: number;
  /** What its surface is like; `immobile`, the slower one, where it is left out. */
  readonly surface?: BubbleSurface;
  /** Density of the liquid over temperature. */
  readonly densityFluid: DensityLaw;
  /** Viscosity of the liquid over temperature. */
  readonly viscosity: ViscosityLaw;
  /** Outside the readings, and at a Reynolds number of 0.1 or more: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

/** How far a bubble has risen while a vessel cooled. */
export interface BubbleRise {
  /** Way upwards [m]: a layer as deep as this is clear. */
  readonly distance: number;
  /** [s]. */
  readonly duration: number;
  /** [°C]. */
  readonly temperatureEnd: number;
}

/** Checks a bubble and gives its rise over a segment. */
function compileRise(input: BubbleInMelt & CoolingVessel): (until: SegmentEnd) => SegmentResult<"distance"> {
  const { diameter, surface, densityFluid, viscosity, beyond, temperatureStart } = record(input, "input");
  const densityOf = compileDensity(densityFluid, "densityFluid");
  const { viscosityOf, breakpoints } = compileViscosity(viscosity, beyond, "viscosity");
  const extended = extending(beyond);
  const start = temperature(temperatureStart, "temperatureStart") + kelvin;
  const width = positive(diameter, "diameter");
  const drive = (fasterBy(surface) * gravity) / 18;
  const velocityAt = (at: number): number => {
    // The gas shrinks as it cools: by 5 % in diameter from 85 to 30 °C.
    const now = width * Math.cbrt((at + kelvin) / start);
    const density = densityOf(at);
    const thickness = viscosityOf(at);
    const velocity = result((drive * now * now * density) / thickness, "velocity");
    withinReynolds((density * velocity * now) / thickness, stokes.limit, stokes.name, extended);
    return velocity;
  };
  return (until) => cool(input, until, { distance: velocityAt }, breakpoints);
}

/**
 * How far bubbles rise while a melt cools and thickens: a layer that is no deeper is clear by then.
 *
 * $$H = \int_{T_2}^{T_1} f\,\frac{g\,d(T)^2\rho(T)}{18\,\mu(T)}\,\frac{C}{q(T)}\,\mathrm dT \qquad d(T) = d_1\left(\frac{T}{T_1}\right)^{1/3}$$
 *
 * with temperatures in kelvin in the last term. The weight of the gas is left out, and that a bubble grows on its way
 * up.
 *
 * @param input - The bubble (diameter at the start [m], surface), the melt (density law, viscosity law), the vessel
 *   (heat capacity [J/K], heat-loss law, room [°C], start [°C]) and either `temperatureEnd` [°C] or `duration` [s].
 * @returns Way upwards [m], duration [s] and end [°C].
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more or the readings
 *   end, `unreachable` where the room is too warm for the end.
 * @source hadamard-1911, rybczynski-1911, bergman-2011 section 5.1; the gas law for the diameter
 * @example
 * ```ts
 * import { riseOverCooling } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * riseOverCooling({
 *   diameter: 80e-6,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
 *   heatCapacity: 90000,
 *   heatLoss: { law: "newton", conductance: 12 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureEnd: 30,
 * }).distance; // => 1.0550716487712648
 * ```
 */
export function riseOverCooling(input: BubbleInMelt & CoolingVessel & SegmentEnd): BubbleRise {
  record(input, "input", known.riseOverCooling);
  const { totals, duration, temperatureEnd } = compileRise(input)(input);
  return { distance: totals.distance, duration, temperatureEnd };
}

/**
 * When bubbles have left a layer that cools, if they do so before the gel has set.
 *
 * $$\int_{T}^{T_1} v(T')\,\frac{C}{q(T')}\,\mathrm dT' = H$$
 *
 * @param input - The bubble, the melt and the vessel as for `riseOverCooling`, `temperatureEnd` [°C] at which the gel
 *   has set, and `depth` of the layer [m], above 0.
 * @returns Time from the start [s] and temperature [°C] at which a bubble from the bottom reaches the surface.
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the gel sets first or the
 *   room is too warm for it to set, `range` where Re is 0.1 or more or the readings end.
 * @source hadamard-1911, rybczynski-1911, bergman-2011 section 5.1; the gas law for the diameter
 * @example
 * ```ts
 * import { clearingOverCooling } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * clearingOverCooling({
 *   diameter: 80e-6,
 *   depth: 0.3,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
 *   heatCapacity: 90000,
 *   heatLoss: { law: "newton", conductance: 12 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureEnd: 30,
 * }).duration; // => 810.8560039472223
 * ```
 */
export function clearingOverCooling(
  input: BubbleInMelt & CoolingVessel & { readonly temperatureEnd: number; readonly depth: number },
): { readonly duration: number; readonly temperature: number } {
  const { depth, temperatureStart, temperatureEnd } = record(input, "input", known.clearingOverCooling);
  const wanted = positive(depth, "depth");
  const end = temperature(temperatureEnd, "temperatureEnd");
  const rise = compileRise(input);
  if (end >= temperatureStart)
    refuse("input", "temperatureEnd", end, `less than temperatureStart, ${temperatureStart} °C`);
  const distanceTo = (at: number): number => rise({ temperatureEnd: at }).totals.distance;
  const max = distanceTo(end);
  if (max < wanted) refuse("unreachable", "depth", wanted, `at most ${max} m, from which bubbles rise before the end`);
  const at = root((place) => distanceTo(place) - wanted, end, temperatureStart, "temperature", 1e-12);
  return { duration: rise({ temperatureEnd: at }).duration, temperature: at };
}
