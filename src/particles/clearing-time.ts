import { positive, record, refuse, result } from "../guards.js";
import { atmosphere } from "../laws/atmosphere.js";
import { gravity } from "../laws/gravity.js";
import { root } from "../numeric/root.js";
import { type Bubble, driveOf, reynoldsOf } from "./bubble-rise.js";
import * as known from "./known.js";

/** A layer that bubbles have to leave, at one temperature. */
export interface Layer {
  /** Depth of the layer [m], above 0. */
  readonly depth: number;
  /** Viscosity of the liquid [Pa·s], above 0. */
  readonly viscosity: number;
  /** Absolute pressure at which the bubbles have their diameter [Pa], above 0; default 101 325 Pa. */
  readonly pressureOfDiameter?: number;
}

/** (3/5)((1 + x)^(5/3) − 1)/x, the mean of (1 + y)^(2/3) over y from 0 to x, with all its digits where x is small. */
function meanOfPower(x: number): number {
  return (0.6 * Math.expm1((5 / 3) * Math.log1p(x))) / x;
}

/** Checks a layer and gives the time to clear it as a function of the absolute pressure above it [Pa]. */
function timeOver(input: Bubble & Layer): {
  readonly timeAt: (pressure: number) => number;
  /** The time if the bubbles kept their diameter [s]. */
  readonly unchanged: number;
  readonly pressureOfDiameter: number;
} {
  const { depth, viscosity, pressureOfDiameter = atmosphere, densityFluid } = input;
  const way = positive(depth, "depth");
  const thickness = positive(viscosity, "viscosity");
  const reference = positive(pressureOfDiameter, "pressureOfDiameter");
  const velocity = result(driveOf(input) / thickness, "velocity");
  const head = densityFluid * gravity * way;
  const unchanged = result(way / velocity, "duration");
  const timeAt = (pressure: number): number => {
    const [deeper, mean] = pressure > 0 ? [pressure, meanOfPower(head / pressure)] : [head, 0.6];
    return result(unchanged * (deeper / reference) ** (2 / 3) * mean, "duration");
  };
  return { timeAt, unchanged, pressureOfDiameter: reference };
}

/** At the surface a bubble is widest and fastest: there its Reynolds number is judged. */
function checkSurface(input: Bubble & Layer, pressure: number, pressureOfDiameter: number): void {
  const wide = { ...input, diameter: input.diameter * Math.cbrt(pressureOfDiameter / pressure) };
  reynoldsOf(wide, driveOf(wide) / input.viscosity, input.viscosity);
}

/**
 * How long bubbles take to leave a layer, at one temperature: from the bottom to the surface.
 *
 * $$t = \frac{H}{v} \qquad\text{or, growing as they rise,}\qquad t = \frac1v\int_0^H\left(\frac{p + \rho g z}{p_d}\right)^{2/3}\mathrm dz$$
 *
 * Without `pressure` the bubbles keep their diameter. With it, their diameter goes as the pressure to the power −1/3,
 * with the weight of the liquid above them: under vacuum they grow and leave sooner. A gel with a yield stress keeps
 * some for ever: `largestSuspendedDiameter`.
 *
 * @param input - The bubble (diameter [m], densities [kg/m³], surface), the layer (`depth` [m], `viscosity` [Pa·s],
 *   `pressureOfDiameter` [Pa]), and the absolute `pressure` above the layer [Pa], above 0.
 * @returns Time [s].
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more.
 * @source hadamard-1911, rybczynski-1911; Boyle's law for the diameter
 * @example
 * ```ts
 * import { clearingTime } from "gelwright/particles";
 * const melt = { diameter: 200e-6, densityFluid: 910, viscosity: 0.05, depth: 0.3 };
 * clearingTime(melt); // => 756.382905230881
 * clearingTime({ ...melt, pressure: 5000 }); // => 118.99723227804192
 * ```
 */
export function clearingTime(input: Bubble & Layer & { readonly pressure?: number }): number {
  const { pressure } = record(input, "input", known.clearingTime);
  const { timeAt, unchanged, pressureOfDiameter } = timeOver(input);
  checkSurface(input, pressure === undefined ? pressureOfDiameter : positive(pressure, "pressure"), pressureOfDiameter);
  return pressure === undefined ? unchanged : timeAt(pressure);
}

/**
 * The vacuum that clears a layer in the time wanted: the absolute pressure above it, or less.
 *
 * $$\frac1v\int_0^H\left(\frac{p + \rho g z}{p_d}\right)^{2/3}\mathrm dz = t$$
 *
 * An answer above the pressure of the room means that no vacuum is needed. What a pressure costs, see `foamHead` and
 * `boilingPressure`.
 *
 * @param input - The bubble and the layer as for `clearingTime`, and `duration` [s], above 0: the time wanted.
 * @returns Absolute pressure [Pa].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where even an empty space above the
 *   layer takes longer, since the liquid's own weight presses on the bubbles, `range` where Re is 0.1 or more.
 * @source hadamard-1911, rybczynski-1911; Boyle's law for the diameter
 * @example
 * ```ts
 * import { pressureToClear } from "gelwright/particles";
 * const melt = { diameter: 200e-6, densityFluid: 910, viscosity: 0.05, depth: 0.3 };
 * pressureToClear({ ...melt, duration: 300 }); // => 23974.964700225595
 * ```
 */
export function pressureToClear(input: Bubble & Layer & { readonly duration: number }): number {
  const { duration } = record(input, "input", known.pressureToClear);
  const wanted = positive(duration, "duration");
  const { timeAt, unchanged, pressureOfDiameter } = timeOver(input);
  const min = timeAt(0);
  if (wanted <= min) refuse("unreachable", "duration", wanted, `more than ${min} s, which an empty space takes`);
  // Without the liquid's weight the bubbles would need this pressure, so with it they need less.
  const max = result(pressureOfDiameter * (wanted / unchanged) ** 1.5 * (1 + 1e-12), "pressure");
  const pressure = root((at) => timeAt(at) - wanted, 0, max, "pressure");
  checkSurface(input, positive(pressure, "pressure"), pressureOfDiameter);
  return pressure;
}
