import { positive, record, refuse, temperature } from "../guards.js";
import { root } from "../numeric/root.js";
import { type CoolingVessel, cool } from "../transient/cooling-segment.js";
import * as known from "./known.js";
import { type Suspension, velocityCurve } from "./velocity-curve.js";

/** When particles may go in. */
export interface AdditionTemperature {
  /** The warmest temperature at which they may go in [°C]. */
  readonly temperature: number;
  /** Time from the start until that temperature is reached [s]. */
  readonly durationUntil: number;
  /** Time from the addition until the gel has set [s]. */
  readonly durationAfter: number;
  /** Way of the particles from the addition until the gel has set, up or down [m], 0 or more. */
  readonly distance: number;
}

/**
 * The warmest temperature at which particles may go in, if they are to settle no further than allowed before the gel
 * sets.
 *
 * $$\int_{T_\mathrm{set}}^{T} |v(T')|\,\frac{C}{q(T')}\,\mathrm dT' = s_\mathrm{allowed}$$
 *
 * Where they settle less than allowed even from the start, the start is the answer. Particles that rise are counted by
 * the way that they rise. Whether the mix can still be stirred and filled at this temperature is the viscosity's to
 * say.
 *
 * @param input - The suspension (diameter [m], densities [kg/m³], viscosity law, volume fraction, drag law), the vessel
 *   (heat capacity [J/K], heat-loss law, room [°C]), `temperatureStart` [°C] off the heat, `temperatureEnd` [°C] at
 *   which the gel has set, and `settlingAllowed` [m], above 0.
 * @returns Temperature of the addition [°C], the time until it and after it [s], and the way of the particles [m].
 * @throws CalculationError `input` where an argument is out of range, `range` where the drag law (Re 0.1 for Stokes')
 *   or the readings end between the addition and the set gel, `unreachable` where the room is too warm for the gel to
 *   set.
 * @source stokes-1851, richardson-zaki-1954, bergman-2011 section 5.1
 * @example
 * ```ts
 * import { additionTemperature } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * additionTemperature({
 *   diameter: 100e-6,
 *   densityParticle: 1400,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
 *   heatCapacity: 90000,
 *   heatLoss: { law: "newton", conductance: 12 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureEnd: 30,
 *   settlingAllowed: 0.005,
 * }).temperature; // => 54.956208404790374
 * ```
 */
export function additionTemperature(
  input: Suspension & CoolingVessel & { readonly temperatureEnd: number; readonly settlingAllowed: number },
): AdditionTemperature {
  const { temperatureStart, temperatureEnd, heatCapacity, heatLoss, temperatureAmbient } = record(
    input,
    "input",
    known.additionTemperature,
  );
  const allowed = positive(input.settlingAllowed, "settlingAllowed");
  const start = temperature(temperatureStart, "temperatureStart");
  const end = temperature(temperatureEnd, "temperatureEnd");
  if (end >= start) refuse("input", "temperatureEnd", end, `less than temperatureStart, ${start} °C`);
  // The search may look at temperatures that the answer will not need; only the answer has to lie within the range.
  const { velocityAt, breakpoints } = velocityCurve(input, "extend");
  const strict = velocityCurve(input, input.beyond);
  const way = (
    from: number,
    to: number,
    at: (temperature: number) => number,
  ): { duration: number; distance: number } => {
    const vessel = { temperatureStart: from, heatCapacity, heatLoss, temperatureAmbient };
    const rates = { distance: (warmth: number) => Math.abs(at(warmth)) };
    const { duration, totals } = cool(vessel, { temperatureEnd: to }, rates, breakpoints);
    return { duration, distance: totals.distance };
  };
  // The search adds to the way from the warmest temperature that was found cool enough: no stretch is summed up twice.
  let enough = { from: end, distance: 0 };
  const beyondAllowed = (from: number): number => {
    const distance = way(from, enough.from, velocityAt).distance + enough.distance;
    if (distance <= allowed) enough = { from, distance };
    return Math.log(distance / allowed);
  };
  // From the coldest up, stretch by stretch between breakpoints, until one holds the answer; the search stays within it.
  const stops = [...breakpoints.filter((breakpoint) => breakpoint > end && breakpoint < start), start];
  const beyond = stops.find((stop) => beyondAllowed(stop) > 0);
  const warmest = beyond === undefined ? start : root(beyondAllowed, enough.from, beyond, "temperature", 1e-12);
  const after = way(warmest, end, strict.velocityAt);
  return {
    temperature: warmest,
    durationUntil: cool(input, { temperatureEnd: warmest }, {}, []).duration,
    durationAfter: after.duration,
    distance: after.distance,
  };
}
