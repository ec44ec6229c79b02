import { notNegative, positive, record, refuse, result, show } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";
import { stokes } from "./stokes-velocity.js";

/**
 * What the surface of a bubble is like. `immobile`: stiff with surfactant or dirt, as small bubbles in anything but the
 * purest oil are. `mobile`: clean, so that the gas goes round with the liquid; half as fast again.
 */
export type BubbleSurface = "immobile" | "mobile";

/** A bubble in a liquid. */
export interface Bubble {
  /** Diameter of the bubble [m], above 0. */
  readonly diameter: number;
  /** Density of the liquid [kg/m³], above 0. */
  readonly densityFluid: number;
  /** Density of the gas [kg/m³], 0 or more and below that of the liquid; default 0, 0.1 % off for air. */
  readonly densityGas?: number;
  /** What its surface is like; `immobile`, the slower one, where it is left out. */
  readonly surface?: BubbleSurface;
  /** At a Reynolds number of 0.1 or more: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

/** How much faster than a rigid sphere a bubble is. */
export function fasterBy(surface: BubbleSurface | undefined): number {
  if (surface === undefined || surface === "immobile") return 1;
  return surface === "mobile" ? 1.5 : refuse("input", "surface", show(surface), '"immobile" or "mobile"');
}

/** Velocity times viscosity [Pa·m] of a bubble: what its size and its buoyancy come to. */
export function driveOf(bubble: Bubble): number {
  const { diameter, densityFluid, densityGas = 0, surface } = bubble;
  const fluid = positive(densityFluid, "densityFluid");
  const buoyancy = fluid - notNegative(densityGas, "densityGas");
  if (buoyancy <= 0) refuse("input", "densityGas", densityGas, `less than the liquid's, ${fluid} kg/m³`);
  const width = positive(diameter, "diameter");
  return result((fasterBy(surface) * gravity * width * width * buoyancy) / 18, "velocity");
}

/** The Reynolds number of a bubble, if Stokes' law holds there or is to be extended. */
export function reynoldsOf(bubble: Bubble, velocity: number, viscosity: number): number {
  const reynolds = result((bubble.densityFluid * velocity * bubble.diameter) / viscosity, "reynolds");
  return withinReynolds(reynolds, stokes.limit, stokes.name, extending(bubble.beyond));
}

/**
 * How fast a bubble of air rises in an oil or a melt.
 *
 * $$v = f\,\frac{g\,d^2\,(\rho - \rho_\mathrm{gas})}{18\,\mu} \qquad f_\mathrm{immobile} = 1 \quad f_\mathrm{mobile} = \tfrac32$$
 *
 * A coarser bubble in a thin melt leaves Stokes' law; with a stiff surface it is `terminalVelocity`'s sphere of 1.2
 * kg/m³. Below some 20 µm the surface tension squeezes the gas, and the bubble may dissolve instead.
 *
 * @param input - The bubble (diameter [m], densities [kg/m³], surface) and `viscosity` of the liquid [Pa·s], above 0.
 * @returns Velocity upwards [m/s] and Reynolds number.
 * @throws CalculationError `input` where an argument is out of range, `range` where Re is 0.1 or more.
 * @source hadamard-1911, rybczynski-1911
 * @example
 * ```ts
 * import { bubbleRise } from "gelwright/particles";
 * const bubble = { diameter: 200e-6, densityFluid: 910, viscosity: 0.05 };
 * bubbleRise(bubble).velocity; // => 0.00039662451111111105
 * bubbleRise({ ...bubble, surface: "mobile" }).velocity; // => 0.0005949367666666666
 * ```
 */
export function bubbleRise(input: Bubble & { readonly viscosity: number }): {
  readonly velocity: number;
  readonly reynolds: number;
} {
  const { viscosity } = record(input, "input", known.bubbleRise);
  const thickness = positive(viscosity, "viscosity");
  const velocity = result(driveOf(input) / thickness, "velocity");
  return { velocity, reynolds: reynoldsOf(input, velocity, thickness) };
}
