import { record } from "../guards.js";
import { type CoolingVessel, cool } from "../transient/cooling-segment.js";
import type { SegmentEnd } from "../transient/segment.js";
import * as known from "./known.js";
import { type Suspension, velocityCurve } from "./velocity-curve.js";

/** How far particles have moved while a vessel cooled. */
export interface Settling {
  /** Way of the particles [m], positive downwards. */
  readonly distance: number;
  /** [s]. */
  readonly duration: number;
  /** [°C]. */
  readonly temperatureEnd: number;
  /** [m/s], positive downwards. */
  readonly velocityStart: number;
  /** [m/s], positive downwards. */
  readonly velocityEnd: number;
  /** Reynolds number of a particle at the start. */
  readonly reynoldsStart: number;
}

/**
 * How far particles sink or rise while a melt cools and thickens.
 *
 * $$s = \int v\,\mathrm dt = \int_{T_2}^{T_1} v(T)\,\frac{C}{q(T)}\,\mathrm dT \qquad v = v_0(T)\,(1 - \varphi)^{n}$$
 *
 * $v_0$ is the velocity of one particle by the drag law, Stokes' where none is given, and n the exponent of Richardson
 * and Zaki. A particle that starts higher than this above the bottom has not reached it. The viscosity law stands for
 * the liquid at rest; a yield stress that would hold the particles once the gel has set is not in it.
 *
 * A melt that is not stirred circulates by convection as it cools, 10 to 1,000 times faster than fine particles sink: it
 * spreads them and holds none up. The distance is then a mean, and no bound for a single particle. It stops
 * once the yield stress exceeds about a tenth of $\rho\beta\,\Delta T g H$ (ours).
 *
 * @param input - The suspension (diameter [m], densities [kg/m³], viscosity law, volume fraction, drag law), the vessel
 *   (heat capacity [J/K], heat-loss law, room [°C], start [°C]) and either `temperatureEnd` [°C] or `duration` [s].
 * @returns Distance [m] and velocities [m/s], positive downwards; duration [s]; end [°C]; Reynolds number at the start.
 * @throws CalculationError `input` where an argument is out of range, `range` where the drag law ends (Re 0.1 for
 *   Stokes') or the readings end, `unreachable` where the room is too warm for the end.
 * @source stokes-1851, richardson-zaki-1954, bergman-2011 section 5.1
 * @example
 * ```ts
 * import { settlingOverCooling } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * settlingOverCooling({
 *   diameter: 150e-6,
 *   densityParticle: 1400,
 *   densityFluid: { law: "linear", density: 925.59, temperatureReference: 0, slope: 0.41757 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 50, steepness: 0.25 },
 *   volumeFraction: 0.01,
 *   heatCapacity: 108000,
 *   heatLoss: { law: "newton", conductance: 15 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 60,
 *   duration: 43200,
 * }).distance; // => 0.9563794754772257
 * ```
 */
export function settlingOverCooling(input: Suspension & CoolingVessel & SegmentEnd): Settling {
  const { velocityAt, reynoldsAt, breakpoints } = velocityCurve(
    input,
    record(input, "input", known.settlingOverCooling).beyond,
  );
  const { temperatureEnd, duration, totals } = cool(input, input, { distance: velocityAt }, breakpoints);
  return {
    distance: totals.distance,
    duration,
    temperatureEnd,
    velocityStart: velocityAt(input.temperatureStart),
    velocityEnd: velocityAt(temperatureEnd),
    reynoldsStart: reynoldsAt(input.temperatureStart),
  };
}
