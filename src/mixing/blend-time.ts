import { positive, record, refuse, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import type { StirredVessel } from "./impeller.js";
import * as known from "./known.js";
import { impellerReynolds, type Stirring } from "./reynolds.js";
import { vesselDiameter } from "./sizes.js";

/** How long it takes until a batch is even, and how that was found. */
export interface BlendTime {
  /** [s]. */
  readonly duration: number;
  /** Which of the two ranges of the correlation holds. */
  readonly regime: "transitional" | "turbulent";
  /** Duration for 95 % times viscosity over density, vessel diameter to the 1.5 and level to the 0.5. */
  readonly fourier: number;
  /** Of the impeller in that time. */
  readonly revolutions: number;
}

/**
 * How sure a blend time is in either range of the correlation: two standard deviations, of which the book gives one as
 * about 10 % in turbulent flow and 18 % in the transition, from memory.
 */
export const blendTimeBands: Readonly<Record<BlendTime["regime"], Band>> = {
  transitional: { by: "factor", min: 0.65, max: 1.35, basis: "stated", sources: ["paul-2004"] },
  turbulent: { by: "factor", min: 0.8, max: 1.2, basis: "stated", sources: ["paul-2004"] },
};

/** How sure the revolutions of a ribbon are: 35 for two starts in stirring-tables, where the correlation has 43 to 70. */
export const ribbonRevolutionsBand: Band = {
  by: "factor",
  min: 0.65,
  max: 1.5,
  basis: "spread",
  sources: ["paul-2004", "stirring-tables"],
};

/** The correlation ends here. */
export const blendReynoldsMin = 200;

/** Where its two ranges meet: 183²/5.2, to the last digit of a double. */
const meeting = 6440.192307692308;

/** Po^(1/3) Re to the Fourier number of a blend time of 95 %. */
export function blendFourier(group: number): number {
  return group < meeting ? (183 / group) ** 2 : 5.2 / group;
}

function evenness(value: unknown, path: string): number {
  if (typeof value === "number" && value > 0 && value < 1) return value;
  return refuse("input", path, value, "a number above 0 and below 1");
}

/**
 * How long until an addition is blended into a thin batch, by Grenville and Nienow.
 *
 * $$\theta_{95} = \mathrm{Fo}\,\frac{\rho\,T^{1.5} H^{0.5}}{\mu} \qquad \mathrm{Fo} = \frac{5.2}{\mathrm{Po}^{1/3}\mathrm{Re}} \;\text{ turbulent} \qquad \mathrm{Fo} = \left(\frac{183}{\mathrm{Po}^{1/3}\mathrm{Re}}\right)^2 \;\text{ transitional} \qquad \theta = \theta_{95}\,\frac{\ln(1 - q)}{\ln 0.05}$$
 *
 * The two meet at $\mathrm{Po}^{1/3}\mathrm{Re} = 6440$, which is where we change over; the book says 6404. It was
 * measured with baffles, impellers of a third to half of the vessel's diameter at a third of its diameter above the
 * bottom, in vessels of 0.3 to 1.83 m and Re from 200 to 100,000. Below Re 200, where a gel is, it is refused: no
 * time is known there, except as a number of revolutions that somebody counted (`blendTimeByRevolutions`); where a
 * yield stress keeps the wall from moving, there is none at all (`cavern`). The time that a gel takes to incorporate
 * oil is another quantity, measured at the bench.
 *
 * @param input.powerNumber - Power number, above 0.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @param input.vessel - The vessel: its inner diameter and the level of the filling [m], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.viscosity - Viscosity [Pa·s], above 0.
 * @param input.uniformity - Degree of uniformity, above 0 and below 1; default 0.95.
 * @returns Duration [s], the range of the correlation that holds, its Fourier number, revolutions.
 * @throws CalculationError `input` where an argument is out of range; `range` below Re 200.
 * @source grenville-1992 for the ranges of the measurements; paul-2004 chapter 9 as restated in fluids-1.0
 * @example
 * ```ts
 * import { blendTime } from "gelwright/mixing";
 * const melt = { density: 910, viscosity: 0.05 };
 * const propeller = { powerNumber: 0.35, speed: 3, impeller: { diameter: 0.25 } };
 * blendTime({ ...melt, ...propeller, vessel: { diameter: 0.6, level: 0.6 } }).duration; // => 37.93895681818461
 * ```
 */
export function blendTime(
  input: Stirring & {
    readonly powerNumber: number;
    readonly vessel: Pick<StirredVessel, "diameter" | "level">;
    readonly uniformity?: number;
  },
): BlendTime {
  const { vessel, uniformity = 0.95 } = record(input, "input", known.blendTime);
  const { speed, impeller, viscosity, density } = input;
  const reynolds = impellerReynolds({ speed, impeller, viscosity, density });
  if (!(reynolds >= blendReynoldsMin))
    refuse(
      "range",
      "Reynolds number",
      reynolds,
      `${blendReynoldsMin} or more; below it count revolutions and use blendTimeByRevolutions`,
    );
  const group = Math.cbrt(positive(input.powerNumber, "powerNumber")) * reynolds;
  const fourier = blendFourier(group);
  const width = vesselDiameter(vessel);
  const size = width * Math.sqrt(width * positive(vessel.level, "vessel.level"));
  const share = Math.log1p(-evenness(uniformity, "uniformity")) / Math.log(0.05);
  const duration = result((fourier * size * share * density) / viscosity, "blend time");
  return {
    duration,
    regime: group < meeting ? "transitional" : "turbulent",
    fourier: result(fourier, "Fourier number"),
    revolutions: result(speed * duration, "revolutions"),
  };
}

/**
 * How long until a batch is uniform in creeping flow, by a number of revolutions counted on this impeller.
 *
 * $$\theta = \frac{(N\theta)}{N}$$
 *
 * In creeping flow the number depends only on the shape of impeller and vessel, at every scale and viscosity; a yield
 * stress or strong shear thinning makes it larger. Count it at the bench with a drop of colour.
 *
 * @param input.revolutions - Revolutions to blend, above 0.
 * @param input.speed - Speed [rev/s], above 0.
 * @returns Duration [s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { blendTimeByRevolutions } from "gelwright/mixing";
 * blendTimeByRevolutions({ revolutions: 60, speed: 0.5 }); // => 120
 * ```
 */
export function blendTimeByRevolutions(input: { readonly revolutions: number; readonly speed: number }): number {
  const { revolutions, speed } = record(input, "input", known.blendTimeByRevolutions);
  return result(positive(revolutions, "revolutions") / positive(speed, "speed"), "blend time");
}

/**
 * The revolutions to blend of a helical ribbon in creeping flow, from its power constant.
 *
 * $$N\theta = 896\,000\,K^{-1.69}$$
 *
 * Give the constant of the ribbon's own shape (`ribbonPowerConstant`): two starts have 43 to 70 revolutions, one start
 * 108 to 175. The range of constants over which it was found is not known to us; its example has two starts.
 *
 * @param input.laminarPowerConstant - Power number times Reynolds number in creeping flow, above 0.
 * @returns Revolutions, for `blendTimeByRevolutions`.
 * @throws CalculationError `input` where the constant is out of range.
 * @source paul-2004 example 9-6 as restated in fluids-1.0
 * @example
 * ```ts
 * import { ribbonRevolutions } from "gelwright/mixing";
 * ribbonRevolutions({ laminarPowerConstant: 357.4 }); // => 43.39871026859293
 * ```
 */
export function ribbonRevolutions(input: { readonly laminarPowerConstant: number }): number {
  const { laminarPowerConstant } = record(input, "input", known.ribbonRevolutions);
  return result(896_000 * positive(laminarPowerConstant, "laminarPowerConstant") ** -1.69, "revolutions");
}
