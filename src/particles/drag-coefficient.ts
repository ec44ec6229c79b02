import { positive, record, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { compileDrag } from "./compile-drag.js";
import type { DragLaw } from "./drag-law.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";

/**
 * How sure the drag of a sphere is, and with it its velocity: four measured velocities from Re 1.5 to 32 and two tables of
 * drag to Re 1000 lie within 11 % of the laws, mostly within 5 %. Grains and flakes are less sure.
 */
export const sphereDragBand: Band = {
  by: "factor",
  min: 0.9,
  max: 1.1,
  basis: "spread",
  sources: ["ten-cate-2002", "hoerner-1965"],
};

/**
 * The drag coefficient of a particle at a Reynolds number.
 *
 * $$C_D = \frac{24}{\mathrm{Re}}\,F(\mathrm{Re}) \qquad F_\mathrm{Schiller\,Naumann} = 1 + 0.15\,\mathrm{Re}^{0.687}$$
 *
 * $$C_{D,\mathrm{Cheng}} = \frac{24}{\mathrm{Re}}(1 + 0.27\,\mathrm{Re})^{0.43} + 0.47\left(1 - e^{-0.04\,\mathrm{Re}^{0.38}}\right)$$
 *
 * $$C_{D,\mathrm{Haider}} = \frac{24}{\mathrm{Re}}(1 + A\,\mathrm{Re}^B) + \frac{C}{1 + D/\mathrm{Re}}$$
 *
 * $$C_{D,\mathrm{Ganser}} = \frac{24}{\mathrm{Re}\,K_1}\left(1 + 0.1118\,x^{0.6567}\right) + \frac{0.4305\,K_2}{1 + 3305/x} \qquad x = \mathrm{Re}\,K_1 K_2$$
 *
 * with A to D as functions of sphericity, $K_1 = 1/(\tfrac13 + \tfrac23\psi^{-1/2})$ and $K_2 =
 * 10^{1.8148(-\log_{10}\psi)^{0.5743}}$. A disc has $F = 8D/(3\pi d)$ face on and $16D/(9\pi d)$ edge on, with D its
 * own diameter and d that of the sphere of its volume. Haider and Levenspiel fitted grains from 0.67 and discs up to
 * 0.23 in sphericity; between them their law interpolates.
 *
 * @param input.reynolds - Reynolds number with the diameter of the sphere of equal volume, above 0.
 * @param input.drag - The drag law, as plain data.
 * @param input.beyond - Outside the law's range of Reynolds number or shape: `"throw"` (default) or `"extend"`.
 * @returns Drag coefficient, on the cross section of the sphere of equal volume.
 * @throws CalculationError `input` where an argument is out of range, `range` outside the range of the law.
 * @source schiller-naumann-1935, cheng-2009, haider-levenspiel-1989, ganser-1993, happel-brenner-1965 for disc and
 *   spheroid
 * @example
 * ```ts
 * import { dragCoefficient } from "gelwright/particles";
 * dragCoefficient({ reynolds: 10, drag: { law: "cheng" } }); // => 4.255483251055416
 * ```
 */
export function dragCoefficient(input: {
  readonly reynolds: number;
  readonly drag: DragLaw;
  readonly beyond?: Beyond;
}): number {
  const { reynolds, drag, beyond } = record(input, "input", known.dragCoefficient);
  const extended = extending(beyond);
  const { creeping, factorAt, limit, name } = compileDrag(drag, extended);
  const at = withinReynolds(positive(reynolds, "reynolds"), limit, name, extended);
  return result((24 / at) * (factorAt ? factorAt(at) : creeping), "drag coefficient");
}
