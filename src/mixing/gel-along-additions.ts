import { fraction, list, positive, record, result } from "../guards.js";
import * as known from "./known.js";
import type { OilPoint } from "./oil-law.js";
import { readingsAlongOil } from "./readings-along-oil.js";

/** How thick the gel is after an addition, as far as readings tell; what they do not reach is left out. */
export interface GelThen {
  /** Viscosity at the shear rate of the readings [Pa·s]. */
  readonly viscosity?: number;
  /** Yield stress [Pa]. */
  readonly yieldStress?: number;
  /** Torque on the shaft in creeping flow [N·m]. */
  readonly torque?: number;
}

/**
 * How thick the gel becomes along a schedule, from readings at a few oil fractions.
 *
 * $$\ln x = \ln x_i + (\ln x_{i+1} - \ln x_i)\,\frac{\varphi - \varphi_i}{\varphi_{i+1} - \varphi_i} \qquad M = c\,\eta$$
 *
 * Between two readings the logarithm is interpolated linearly. Below the first and above the last nothing is known, and
 * nothing is returned. In creeping flow the torque is proportional to the viscosity, with a constant of the impeller.
 * For a shear-thinning gel, and for any flow, use `flowCurveAtOil` and `stirring`.
 *
 * @param input.additions - Volume fraction of oil after each addition, 0 to 1, as `additionSchedule` gives it.
 * @param input.viscosity - Readings [Pa·s] in rising order of oil, at least two; default none.
 * @param input.yieldStress - Readings [Pa] in rising order of oil, at least two; default none.
 * @param input.torquePerViscosity - Torque of this impeller at its speed for 1 Pa·s [N·m/(Pa·s)], above 0, in creeping flow; default none.
 * @returns Viscosity [Pa·s], yield stress [Pa] and torque [N·m] after each addition, where they are known.
 * @throws CalculationError `input` where an argument is out of range.
 * @source common practice, no source
 * @example
 * ```ts
 * import { gelAlongAdditions } from "gelwright/mixing";
 * const viscosity = [{ volumeFractionOil: 0.6, value: 2 }, { volumeFractionOil: 0.8, value: 32 }];
 * gelAlongAdditions({ additions: [{ volumeFractionOil: 0.4 }, { volumeFractionOil: 0.7 }], viscosity }).map(
 *   (then) => then.viscosity?.toFixed(1),
 * ); // => [undefined, "8.0"]
 * ```
 */
export function gelAlongAdditions(input: {
  readonly additions: readonly {
    /** Volume fraction of oil, 0 to 1. */
    readonly volumeFractionOil: number;
  }[];
  readonly viscosity?: readonly OilPoint[];
  readonly yieldStress?: readonly OilPoint[];
  readonly torquePerViscosity?: number;
}): readonly GelThen[] {
  const { additions, viscosity, yieldStress, torquePerViscosity } = record(input, "input", known.gelAlongAdditions);
  const thickness = viscosity === undefined ? undefined : readingsAlongOil(viscosity, "viscosity", "logarithm");
  const strength = yieldStress === undefined ? undefined : readingsAlongOil(yieldStress, "yieldStress", "logarithm");
  const turning = torquePerViscosity === undefined ? undefined : positive(torquePerViscosity, "torquePerViscosity");
  return list(additions, "additions", 1).map((addition, i) => {
    const path = `additions[${i}]`;
    const oil = fraction(record(addition, path).volumeFractionOil, `${path}.volumeFractionOil`);
    const thick = thickness?.(oil);
    const strong = strength?.(oil);
    return {
      ...(thick !== undefined && { viscosity: thick }),
      ...(strong !== undefined && { yieldStress: strong }),
      ...(thick !== undefined && turning !== undefined && { torque: result(turning * thick, "torque") }),
    };
  });
}
