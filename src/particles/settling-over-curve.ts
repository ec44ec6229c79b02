import { finite, list, record, refuse, result, temperature } from "../guards.js";
import { curveAt, monotoneCurve } from "../numeric/monotone-curve.js";
import { integrate, nodes } from "../numeric/quadrature.js";
import { root } from "../numeric/root.js";
import type { TemperatureHistory } from "../transient/index.js";
import * as known from "./known.js";
import type { Settling } from "./settling-over-cooling.js";
import { type Suspension, velocityCurve } from "./velocity-curve.js";

/** What comes of settling along a curve of temperature. */
export interface SettlingOverCurve extends Settling {
  /** How far they have come at each of the times [m], positive downwards. */
  readonly distances: readonly number[];
}

/** The trace as a smooth curve of temperature over time, which never turns back. */
function temperatureCurve(trace: TemperatureHistory): (time: number) => number {
  const times = list(trace.times, "times", 2).map((time, i) => finite(time, `times[${i}]`));
  const warmths = list(trace.temperatures, "temperatures", 2).map((at, i) => temperature(at, `temperatures[${i}]`));
  if (warmths.length !== times.length)
    refuse("input", "temperatures", `${warmths.length} temperatures`, `one for each of ${times.length} times`);
  const sense = Math.sign((warmths[warmths.length - 1] as number) - (warmths[0] as number)) || 1;
  times.forEach((time, i) => {
    if (i === 0) return;
    const before = times[i - 1] as number;
    if (!(time > before)) refuse("input", `times[${i}]`, time, `more than ${before} s, the time before`);
    const last = warmths[i - 1] as number;
    const now = warmths[i] as number;
    const way = sense < 0 ? "falls" : "rises";
    if ((now - last) * sense < 0)
      refuse("input", `temperatures[${i}]`, now, `${last} °C or beyond, on a curve that ${way} from end to end`);
  });
  const curve = monotoneCurve(
    times,
    warmths.map((at) => sense * at),
  );
  return (time) => sense * curveAt(curve, time);
}

/**
 * How far particles sink or rise while their surroundings follow a curve of temperature over time: in a hot-filled pack,
 * whose centre cools by conduction, or along a curve that was read with a thermometer.
 *
 * $$s = \int v(T(t))\,\mathrm dt \qquad v = \frac{g\,d^2\,(\rho_p - \rho_f)}{18\,\mu}(1 - \varphi)^{4.65}$$
 *
 * Between the points runs a smooth curve that never turns back. In a pack the centre stays liquid for longest: its curve
 * gives the longest way. The viscosity law stands for the liquid at rest; a yield stress that would hold the particles
 * once the gel has set is not in it, nor are the currents in a pack that is still thin.
 *
 * @param input - The suspension (diameter [m], densities [kg/m³], viscosity law, volume fraction), and `times` [s] with
 *   `temperatures` [°C], as `packCoolingCurve` of the room `heat` gives them.
 * @returns Distance [m], `distances` at each of the times [m] and velocities [m/s], positive downwards; duration [s];
 *   end [°C]; Reynolds number at the start.
 * @throws CalculationError `input` where an argument is out of range or the curve turns back, `range` where Re is 0.1 or
 *   more or the readings of viscosity end.
 * @source stokes-1851, richardson-zaki-1954, fritsch-butland-1984 for the curve
 * @example
 * ```ts
 * import { settlingOverCurve } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * settlingOverCurve({
 *   diameter: 60e-6,
 *   densityParticle: 1400,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 50, steepness: 0.4 },
 *   times: [0, 600, 1800, 3600, 7200],
 *   temperatures: [60, 58, 48, 35, 24],
 * }).distance; // => 0.10615423743438897
 * ```
 */
export function settlingOverCurve(input: Suspension & TemperatureHistory): SettlingOverCurve {
  const { times, beyond } = record(input, "input", known.settlingOverCurve);
  const { velocityAt, reynoldsAt, breakpoints } = velocityCurve(input, beyond);
  const temperatureAt = temperatureCurve(input);
  const edges: number[] = [];
  // Where each of the times stands among the edges.
  const places = times.map((time, i) => {
    const place = edges.push(time) - 1;
    const next = times[i + 1];
    if (next === undefined) return place;
    const [from, to] = [temperatureAt(time), temperatureAt(next)];
    const crossed = breakpoints
      .filter((breakpoint) => (breakpoint - from) * (breakpoint - to) < 0)
      .map((breakpoint) => root((at) => temperatureAt(at) - breakpoint, time, next, "breakpoint", 1e-12 * next));
    for (const crossing of crossed.sort((one, other) => one - other)) edges.push(crossing);
    return place;
  });
  const start = times[0] as number;
  const end = times[times.length - 1] as number;
  const passedAt = new Float64Array(edges.length);
  integrate(
    edges,
    (time, values) => {
      values[0] = velocityAt(temperatureAt(time));
    },
    1,
    "distance",
    // A curve is given by many points, so the stretches between them are short, and every breakpoint is an edge.
    nodes.smooth,
    passedAt,
  );
  const distances = places.map((place, i) => result(passedAt[place] as number, `distances[${i}]`));
  return {
    distance: distances[distances.length - 1] as number,
    distances,
    duration: end - start,
    temperatureEnd: temperatureAt(end),
    velocityStart: velocityAt(temperatureAt(start)),
    velocityEnd: velocityAt(temperatureAt(end)),
    reynoldsStart: reynoldsAt(temperatureAt(start)),
  };
}
