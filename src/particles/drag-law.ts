/** How a flat particle lies as it sinks: face on, edge on, or turned over and over (the mean velocity of all ways). */
export type Orientation = "broadside" | "edgewise" | "random";

/**
 * How the liquid resists a particle, as plain data. The diameter that goes with it is always that of the sphere of
 * equal volume, and so are the Reynolds number and the drag coefficient.
 *
 * Spheres: `stokes` in creeping flow, `schiller-naumann` or `cheng` beyond it. Grains: `haider-levenspiel` or `ganser`
 * with a sphericity. In thick oil `haider-levenspiel` makes a sphere of every shape: flakes take `ganser`, `spheroid`
 * or `disc` there.
 */
export type DragLaw =
  | {
      /** A sphere in creeping flow, Re below 0.1. */
      readonly law: "stokes";
    }
  | {
      /** A sphere, Re below 1000. */
      readonly law: "schiller-naumann";
    }
  | {
      /** A sphere, Re below 200 000. */
      readonly law: "cheng";
    }
  | {
      /** A grain of any shape, Re below 26 000, or a sphere, Re below 200 000. */
      readonly law: "haider-levenspiel";
      /** Surface of the sphere of equal volume over its own, 0.026 to 1; left out: the authors' fit for spheres. */
      readonly sphericity?: number;
    }
  | {
      /** A grain about as long as it is wide and high, or a flake that tumbles; Re·K₁·K₂ below 100 000. */
      readonly law: "ganser";
      /** Surface of the sphere of equal volume over that of the grain, 0.09 to 1. */
      readonly sphericity: number;
    }
  | {
      /** A disc so thin that its rim does not count, in creeping flow. */
      readonly law: "disc";
      /** Thickness over diameter, above 0 and up to 0.1. */
      readonly aspectRatio: number;
      /** How it lies as it sinks. */
      readonly orientation: Orientation;
    }
  | {
      /** A sphere that has been flattened, in creeping flow: from a flake's lens shape to a ball. */
      readonly law: "spheroid";
      /** Short axis over long axes, above 0 and up to 1. A disc of equal diameter and volume has 1.5 times its own. */
      readonly aspectRatio: number;
      /** How it lies as it sinks. */
      readonly orientation: Orientation;
    };
