import { positive, record, refuse, show, variant } from "../guards.js";
import * as known from "./known.js";

/** The bottom of an upright round vessel, as plain data. */
export type VesselBottom =
  | {
      /** A plate. */
      readonly shape: "flat";
    }
  | {
      /** A cone with its tip down. */
      readonly shape: "cone";
      /** Of the cone [m], above 0. */
      readonly depth: number;
    }
  | {
      /** Half an ellipsoid; half a sphere where its depth is half the diameter. */
      readonly shape: "ellipsoidal";
      /** Of the bottom [m], above 0; a quarter of the diameter is common. */
      readonly depth: number;
    }
  | {
      /** A dish: part of a sphere, rounded into the wall. */
      readonly shape: "dished";
      /** Radius of the sphere over the diameter of the vessel, 0.5 to 2; default 1. */
      readonly crownToDiameter?: number;
      /** Radius of the rounding over the diameter of the vessel, above 0 and below 0.5; default 0.1. */
      readonly knuckleToDiameter?: number;
    };

/** An upright round vessel. */
export interface VesselShape {
  /** Inner diameter [m], above 0. */
  readonly diameter: number;
  /** Its bottom; left out for a flat one. */
  readonly bottom?: VesselBottom;
}

/** A bottom that has been checked. */
export interface CompiledBottom {
  readonly diameter: number;
  /** From the lowest point to where the wall is upright [m]. */
  readonly depth: number;
  /** Volume below a height [m³], from 0 to `depth`. */
  readonly below: (height: number) => number;
  /** Area that is wetted below a height [m²], from 0 to `depth`. */
  readonly wetted: (height: number) => number;
  /** Half the width at a height [m], from 0 to `depth`. */
  readonly radius: (height: number) => number;
}

/** The primitive of √(ρ² − y²). */
const arc = (radius: number, y: number): number =>
  (y * Math.sqrt(Math.max(0, radius * radius - y * y)) + radius * radius * Math.asin(Math.min(1, y / radius))) / 2;

function dished(diameter: number, crown: number, knuckle: number): CompiledBottom {
  const [sphere, round] = [crown * diameter, knuckle * diameter];
  // The centre of the rounding lies at `centre` from the axis; sphere and rounding meet where both have one tangent.
  const centre = diameter / 2 - round;
  const sine = centre / (sphere - round);
  const cosine = Math.sqrt(1 - sine * sine);
  const meet = sphere * (1 - cosine);
  const depth = meet + round * cosine;
  const cap = (height: number): number => Math.PI * height * height * (sphere - height / 3);
  // y is the distance below the upright wall; the radius there is centre + √(round² − y²).
  const disc = (y: number): number =>
    Math.PI * ((centre * centre + round * round) * y - y ** 3 / 3 + 2 * centre * arc(round, y));
  const ring = (y: number): number => 2 * Math.PI * round * (centre * Math.asin(Math.min(1, y / round)) + y);
  const deepest = depth - meet;
  const under = (height: number): number => Math.max(0, depth - height);
  return {
    diameter,
    depth,
    below: (height) => (height <= meet ? cap(height) : cap(meet) + disc(deepest) - disc(under(height))),
    wetted: (height) =>
      2 * Math.PI * sphere * Math.min(height, meet) + (height <= meet ? 0 : ring(deepest) - ring(under(height))),
    radius: (height) =>
      height <= meet
        ? Math.sqrt(height * (2 * sphere - height))
        : centre + Math.sqrt(Math.max(0, round * round - under(height) ** 2)),
  };
}

function ellipsoidal(diameter: number, depth: number): CompiledBottom {
  const radius = diameter / 2;
  const volume = (Math.PI / 4) * diameter * diameter * depth;
  const bend = (radius / depth) ** 2 - 1;
  const root = Math.sqrt(Math.abs(bend));
  // The primitive of √(1 + bend z²); z is the distance below the upright wall over the depth.
  const slope = (z: number): number => {
    const turned = bend > 0 ? Math.asinh(root * z) : Math.asin(root * z);
    return (z * Math.sqrt(1 + bend * z * z) + (root === 0 ? z : turned / root)) / 2;
  };
  return {
    diameter,
    depth,
    below: (height) => volume * (height / depth) ** 2 * (1 - height / (3 * depth)),
    wetted: (height) => 2 * Math.PI * radius * depth * (slope(1) - slope(1 - height / depth)),
    radius: (height) => (radius / depth) * Math.sqrt(height * (2 * depth - height)),
  };
}

/** Checks a vessel, which faults call `path`. */
export function compileBottom(vessel: VesselShape, path: string): CompiledBottom {
  const { diameter: given, bottom = { shape: "flat" } } = record(vessel, path);
  const diameter = positive(given, `${path}.diameter`);
  const at = `${path}.bottom`;
  const area = (Math.PI / 4) * diameter * diameter;
  variant(bottom, at, "shape", known.vesselBottom);
  switch (bottom.shape) {
    case "flat":
      return { diameter, depth: 0, below: () => 0, wetted: () => area, radius: () => diameter / 2 };
    case "cone": {
      const depth = positive(bottom.depth, `${at}.depth`);
      return {
        diameter,
        depth,
        below: (height) => (area * depth * (height / depth) ** 3) / 3,
        wetted: (height) => ((Math.PI * diameter) / 2) * (height / depth) ** 2 * Math.hypot(depth, diameter / 2),
        radius: (height) => ((diameter / 2) * height) / depth,
      };
    }
    case "ellipsoidal":
      return ellipsoidal(diameter, positive(bottom.depth, `${at}.depth`));
    case "dished": {
      const { crownToDiameter: crown = 1, knuckleToDiameter: knuckle = 0.1 } = bottom;
      if (!(positive(crown, `${at}.crownToDiameter`) >= 0.5 && crown <= 2))
        refuse("input", `${at}.crownToDiameter`, crown, "0.5 to 2");
      if (!(positive(knuckle, `${at}.knuckleToDiameter`) < 0.5))
        refuse("input", `${at}.knuckleToDiameter`, knuckle, "above 0 and below 0.5");
      return dished(diameter, crown, knuckle);
    }
    default:
      return refuse(
        "input",
        `${at}.shape`,
        show((bottom as { shape: unknown }).shape),
        "flat, cone, ellipsoidal or dished",
      );
  }
}
