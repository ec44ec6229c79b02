import { positive, refuse, show, variant } from "../guards.js";
import { root } from "../numeric/root.js";
import type { DragLaw } from "./drag-law.js";
import { flattenedSpheroid, oriented, thinDisc } from "./flat-resistance.js";
import * as known from "./known.js";
import { withinReynolds } from "./reynolds-limit.js";
import { stokes } from "./stokes-velocity.js";

/** A drag law that has been checked: the drag over that of a sphere by Stokes' law, C_D Re/24. */
export interface CompiledDrag {
  /** The factor at rest, and at any Reynolds number where there is no `factorAt`. */
  readonly creeping: number;
  /** The factor at a Reynolds number; absent for a law of creeping flow. */
  readonly factorAt?: (reynolds: number) => number;
  /** The law holds below this Reynolds number. */
  readonly limit: number;
  /** What a fault calls the law. */
  readonly name: string;
}

const stokesLaw: CompiledDrag = { ...stokes, creeping: 1 };

/** A number above 0 and up to 1, not below `min` unless the law is to be extended. */
function shape(value: unknown, path: string, min: number, max: number, extended: boolean): number {
  const ratio = positive(value, path);
  if (ratio > 1) refuse("input", path, ratio, "at most 1");
  if (!extended && (ratio < min || ratio > max)) refuse("range", path, ratio, `${min} to ${max}, or beyond: "extend"`);
  return ratio;
}

/** Checks a drag law, named `drag` in its faults. */
export function compileDrag(drag: DragLaw, extended: boolean): CompiledDrag {
  const name = `the drag law ${show(variant(drag, "drag", "law", known.drag).law)}`;
  switch (drag.law) {
    case "stokes":
      return stokesLaw;
    case "schiller-naumann":
      return { name, limit: 1000, creeping: 1, factorAt: (reynolds) => 1 + 0.15 * reynolds ** 0.687 };
    case "cheng":
      return {
        name,
        limit: 2e5,
        creeping: 1,
        factorAt: (reynolds) =>
          (1 + 0.27 * reynolds) ** 0.43 - ((0.47 * reynolds) / 24) * Math.expm1(-0.04 * reynolds ** 0.38),
      };
    case "haider-levenspiel": {
      if (drag.sphericity === undefined)
        return {
          name,
          limit: 2e5,
          creeping: 1,
          factorAt: (reynolds) =>
            1 + 0.1806 * reynolds ** 0.6459 + ((0.4251 * reynolds) / 24) * (reynolds / (reynolds + 6880.95)),
        };
      const s = shape(drag.sphericity, "drag.sphericity", 0.026, 1, extended);
      const a = Math.exp(2.3288 - 6.4581 * s + 2.4486 * s ** 2);
      const b = 0.0964 + 0.5565 * s;
      const c = Math.exp(4.905 - 13.8944 * s + 18.4222 * s ** 2 - 10.2599 * s ** 3);
      const d = Math.exp(1.4681 + 12.2584 * s - 20.7322 * s ** 2 + 15.8855 * s ** 3);
      return {
        name,
        limit: 2.6e4,
        creeping: 1,
        factorAt: (reynolds) => 1 + a * reynolds ** b + ((c * reynolds) / 24) * (reynolds / (reynolds + d)),
      };
    }
    case "ganser": {
      const sphericity = shape(drag.sphericity, "drag.sphericity", 0.09, 1, extended);
      const slow = 1 / (1 / 3 + 2 / 3 / Math.sqrt(sphericity));
      const fast = 10 ** (1.8148 * (-Math.log10(sphericity)) ** 0.5743);
      const both = slow * fast;
      return {
        name,
        limit: 1e5 / both,
        creeping: 1 / slow,
        factorAt: (reynolds) => {
          const x = reynolds * both;
          return (1 + 0.1118 * x ** 0.6567) / slow + ((0.4305 * fast * reynolds) / 24) * (x / (x + 3305));
        },
      };
    }
    case "disc": {
      const ratio = shape(drag.aspectRatio, "drag.aspectRatio", 0, 0.1, extended);
      const creeping = oriented(thinDisc, drag.orientation, "drag.orientation") / Math.cbrt(1.5 * ratio);
      return { name, limit: stokes.limit, creeping };
    }
    case "spheroid": {
      const ratio = shape(drag.aspectRatio, "drag.aspectRatio", 0, 1, extended);
      const creeping = oriented(flattenedSpheroid(ratio), drag.orientation, "drag.orientation") / Math.cbrt(ratio);
      return { name, limit: stokes.limit, creeping };
    }
    default:
      return refuse("input", "drag.law", show((drag as { law: unknown }).law), "a drag law");
  }
}

/**
 * How fast a particle is, over what Stokes' law would give the sphere of its volume: the share k that solves
 * k · F(k · Re_Stokes) = 1. It lies between 0 and the share at rest, since the drag rises with the velocity.
 */
export function shareOfStokes(drag: CompiledDrag, reynoldsStokes: number, extended: boolean): number {
  const { creeping, factorAt, limit, name } = drag;
  const share = factorAt
    ? root((k) => k * factorAt(k * reynoldsStokes) - 1, 0, (1 + 4 * Number.EPSILON) / creeping, "velocity")
    : 1 / creeping;
  withinReynolds(share * reynoldsStokes, limit, name, extended);
  return share;
}
