import { refuse, show } from "../guards.js";
import type { Orientation } from "./drag-law.js";

/** Resistance of a flat particle, relative to a sphere as wide as it, when it sinks face on and edge on. */
interface Resistance {
  readonly broadside: number;
  readonly edgewise: number;
}

/** A disc without thickness: the forces 8 μ D v and 16/3 μ D v over the sphere's 3 π μ D v. */
export const thinDisc: Resistance = { broadside: 8 / (3 * Math.PI), edgewise: 16 / (9 * Math.PI) };

/**
 * A flattened spheroid, exact in creeping flow.
 *
 * With x = 1 − E² and c = arccos(E)/√x the classical results are 4/3 x/((2x − 1)c + E) and 8/3 x/((1 + 2x)c − E).
 * Both are nothing over nothing for a sphere, so x is divided out: near a sphere (c − E)/x is summed as a series.
 */
export function flattenedSpheroid(ratio: number): Resistance {
  const x = (1 - ratio) * (1 + ratio);
  let c = Math.acos(ratio) / Math.sqrt(x);
  let quotient = (c - ratio) / x;
  if (x < 0.1) {
    c = 1;
    quotient = 0;
    let [termOfC, termOfRatio, power] = [1, 1, 1];
    for (let n = 1; n < 18; n += 1) {
      termOfC *= (2 * n - 1) ** 2 / (2 * n * (2 * n + 1));
      termOfRatio *= (2 * n - 3) / (2 * n);
      quotient += (termOfC - termOfRatio) * power;
      power *= x;
      c += termOfC * power;
    }
  }
  return { broadside: 4 / 3 / (2 * c - quotient), edgewise: 8 / 3 / (2 * c + quotient) };
}

/** The resistance in one orientation; turned over and over, the velocities are averaged and not the forces. */
export function oriented({ broadside, edgewise }: Resistance, orientation: Orientation, path: string): number {
  switch (orientation) {
    case "broadside":
      return broadside;
    case "edgewise":
      return edgewise;
    case "random":
      return 3 / (1 / broadside + 2 / edgewise);
    default:
      return refuse("input", path, show(orientation), '"broadside", "edgewise" or "random"');
  }
}
