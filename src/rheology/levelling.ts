import { fraction, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** Brush marks in a film: even waves, low beside the film. */
export interface Ripple {
  /** Surface tension [N/m], above 0. */
  readonly surfaceTension: number;
  /** Mean thickness of the film [m], above 0. */
  readonly thickness: number;
  /** Distance between marks [m], above 0. */
  readonly wavelength: number;
}

/** σ h³ k⁴ without the viscosity, and σ h k³: what a ripple is driven by. */
function drive({ surfaceTension, thickness, wavelength }: Ripple): { readonly rate: number; readonly stress: number } {
  const deep = positive(thickness, "thickness");
  const wave = (2 * Math.PI) / positive(wavelength, "wavelength");
  const tension = positive(surfaceTension, "surfaceTension");
  return {
    rate: result((tension * deep ** 3 * wave ** 4) / 3, "levelling"),
    stress: result(tension * deep * wave ** 3, "levelling"),
  };
}

/**
 * How long brush marks take to level to a fraction of their height.
 *
 * $$a = a_0\,e^{-t/t_0} \qquad t_0 = \frac{3\,\mu\,\lambda^4}{16\,\pi^4\,\sigma\,h^3}$$
 *
 * For a film without yield stress, thin beside the distance between the marks, and marks low beside the film; the
 * viscosity is that at the small shear rates of levelling. Gravity on a level surface helps, and is left out.
 *
 * @param input.viscosity - Viscosity at low shear [Pa·s], above 0.
 * @param input.surfaceTension - Surface tension [N/m], above 0.
 * @param input.thickness - Mean thickness of the film [m], above 0.
 * @param input.wavelength - Distance between marks [m], above 0.
 * @param input.remaining - What is left of their height, between 0 and 1; by default 1/e.
 * @returns Time [s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source orchard-1962 from memory
 * @example
 * ```ts
 * import { levellingTime } from "gelwright/rheology";
 * levellingTime({ viscosity: 1, surfaceTension: 0.03, thickness: 100e-6, wavelength: 0.002 }); // => 1.0265982254684336
 * ```
 */
export function levellingTime(input: Ripple & { readonly viscosity: number; readonly remaining?: number }): number {
  const { viscosity, remaining = 1 / Math.E } = record(input, "input", known.levellingTime);
  if (!(fraction(remaining, "remaining") > 0 && remaining < 1))
    refuse("input", "remaining", remaining, "between 0 and 1");
  const time = positive(viscosity, "viscosity") / drive(input).rate;
  return result(-Math.log(remaining) * time, "levelling time");
}

/**
 * The height of brush marks that a yield stress keeps from levelling any further.
 *
 * $$a = \frac{\tau_y\,\lambda^3}{8\,\pi^3\,\sigma\,h}$$
 *
 * The pull of the curved surface shears the film most at the wall, by σ a h k³ with k = 2π/λ; below the yield stress it
 * stands still. What keeps a film from running keeps its marks: the two are weighed against each other here.
 *
 * @param input.yieldStress - Yield stress [Pa], above 0.
 * @param input.surfaceTension - Surface tension [N/m], above 0.
 * @param input.thickness - Mean thickness of the film [m], above 0.
 * @param input.wavelength - Distance between marks [m], above 0.
 * @returns Amplitude [m]: half the height from valley to ridge. Where it is not small beside the film, nothing levels.
 * @throws CalculationError `input` where an argument is out of range.
 * @source worked by hand (the wall stress of the lubrication equation; handbooks print other factors for other measures of height)
 * @example
 * ```ts
 * import { residualBrushMark } from "gelwright/rheology";
 * residualBrushMark({ yieldStress: 0.5, surfaceTension: 0.03, thickness: 100e-6, wavelength: 0.002 }); // => 0.000005375255738866581
 * ```
 */
export function residualBrushMark(input: Ripple & { readonly yieldStress: number }): number {
  const { yieldStress } = record(input, "input", known.residualBrushMark);
  return result(positive(yieldStress, "yieldStress") / drive(input).stress, "amplitude");
}
