import { finite, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** A groove that is open at the top, with upright sides: a line of the skin, a seam. */
export interface Groove {
  /** Between its sides [m], above 0. */
  readonly width: number;
  /** From its edge to its bottom [m], above 0. */
  readonly depth: number;
}

/** What draws a gel into a line, and the line. */
export interface CapillaryPull {
  /** Surface tension of the gel [N/m], above 0. */
  readonly surfaceTension: number;
  /** Contact angle on the walls of the line [°], 0 to 180; 0, wetted through, by default: that draws it farthest. */
  readonly contactAngle?: number;
  /** A line that is open at the top; a closed slit or a bore, whatever its width, by default. */
  readonly groove?: Groove;
}

/** What capillarity pulls along the line with, on each metre of wall across it [N/m]. */
function pullOf({ surfaceTension, contactAngle = 0, groove }: CapillaryPull): number {
  const tension = positive(surfaceTension, "surfaceTension");
  const angle = finite(contactAngle, "contactAngle");
  if (angle < 0 || angle > 180) refuse("input", "contactAngle", angle, "degrees from 0 to 180");
  const wetting = Math.cos((angle * Math.PI) / 180);
  if (groove === undefined) return tension * wetting;
  const width = positive(record(groove, "groove").width, "groove.width");
  const wall = result(width + 2 * positive(groove.depth, "groove.depth"), "wall of the groove");
  return tension * (wetting - width / wall);
}

/**
 * How far capillarity draws a gel with a yield stress into a fine line beside its film: a line of the skin or the lip, a seam.
 *
 * $$\text{slit, bore: } L = \frac{\sigma\cos\theta}{\tau_y} \qquad
 *   \text{open groove: } L = \frac{\sigma}{\tau_y}\left(\cos\theta - \frac{w}{w + 2b}\right)$$
 *
 * In a slit of width w capillarity pulls with 2σ cos θ/w and the walls hold against it with 2τL/w: the width goes out, and
 * in a round bore as well. An open groove of width w and depth b makes free surface as it fills, and is not entered at all
 * where the cosine is below the free surface's share of the wetted wall. Beside it `thickestFilm` gives the film that stays on
 * a wall: L over its thickness is σ ρ g cos θ/τ², so that a gel strong enough not to run may still bleed.
 *
 * Slip at the wall is left out, and it carries the gel farther: a hair gel of 5 to 20 Pa moved well beyond this distance in
 * tubes, and how far did depend on the diameter (FEDSM 2006); in a study of 2024 gels were seen to flow as a plug at stresses
 * below their yield stress. So it is the distance that a gel reaches which holds to the wall. Weight along the line, the supply
 * from a thin film, oil that leaves the gel and filaments that run ahead in the corners of a groove are left out too; that the
 * gel in a corner stands still adds up to 6 %.
 *
 * @param input.surfaceTension - Surface tension of the gel [N/m], above 0.
 * @param input.yieldStress - Yield stress [Pa], above 0: state its convention, and take a low one.
 * @param input.contactAngle - Contact angle on the walls of the line [°], 0 to 180; default 0, which draws it farthest.
 * @param input.groove - Width and depth [m] of a line that is open at the top; default a closed slit or a bore.
 * @returns Distance from the film [m]; 0 where the line does not draw it in.
 * @throws CalculationError `input` where an argument is out of range.
 * @source worked by hand (the balance of forces)
 * @source bertola-2006 abstract: that balance, and measurements beyond it
 * @source kim-choi-2024 abstract: slip at the wall
 * @source berthier-brakke-2016 the open groove, by two captions of its animations
 * @example
 * ```ts
 * import { capillaryReach } from "gelwright/rheology";
 * capillaryReach({ surfaceTension: 0.03, yieldStress: 12 }); // => 0.0025
 * const groove = { width: 100e-6, depth: 50e-6 };
 * capillaryReach({ surfaceTension: 0.03, yieldStress: 12, groove }); // => 0.00125
 * ```
 */
export function capillaryReach(input: CapillaryPull & { readonly yieldStress: number }): number {
  const { yieldStress } = record(input, "input", known.capillaryReach);
  const pull = pullOf(input);
  const strength = positive(yieldStress, "yieldStress");
  return pull > 0 ? result(pull / strength, "distance") : 0;
}

/**
 * The yield stress that keeps a gel from being drawn into a fine line farther than a distance.
 *
 * $$\tau_y = \frac{\sigma\cos\theta}{L} \qquad
 *   \text{open groove: } \tau_y = \frac{\sigma}{L}\left(\cos\theta - \frac{w}{w + 2b}\right)$$
 *
 * For a gel that does not slip on the walls, as for `capillaryReach`.
 *
 * @param input.surfaceTension - Surface tension of the gel [N/m], above 0.
 * @param input.distance - How far it may be drawn in [m], above 0.
 * @param input.contactAngle - Contact angle on the walls of the line [°], 0 to 180; default 0, which draws it farthest.
 * @param input.groove - Width and depth [m] of a line that is open at the top; default a closed slit or a bore.
 * @returns Yield stress [Pa]; 0 where the line does not draw it in.
 * @throws CalculationError `input` where an argument is out of range.
 * @source worked by hand (the balance of forces of `capillaryReach`, solved for the stress)
 * @example
 * ```ts
 * import { yieldStressForReach } from "gelwright/rheology";
 * yieldStressForReach({ surfaceTension: 0.03, distance: 0.001 }); // => 30
 * ```
 */
export function yieldStressForReach(input: CapillaryPull & { readonly distance: number }): number {
  const { distance } = record(input, "input", known.yieldStressForReach);
  const pull = pullOf(input);
  const reach = positive(distance, "distance");
  return pull > 0 ? result(pull / reach, "yield stress") : 0;
}
