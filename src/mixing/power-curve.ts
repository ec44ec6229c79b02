/**
 * How much power an impeller draws, as plain data: its power number Po = P/(ρ N³ D⁵) against its Reynolds number.
 *
 * A curve that somebody measured on the impeller itself goes before any of these.
 */
export type PowerCurve =
  | {
      /** Creeping flow alone: Po = constant/Re. */
      readonly law: "laminar";
      /** Power number times Reynolds number, above 0. */
      readonly laminarPowerConstant: number;
    }
  | {
      /** Turbulent flow alone: a power number that no longer changes. */
      readonly law: "turbulent";
      /** Above 0. */
      readonly powerNumber: number;
    }
  | {
      /**
       * Both ends and their sum between them: Po = constant/Re + powerNumber. Right at either end. Between Re 10 and
       * 10,000 it is an interpolation of ours: with baffles the measured curve may lie a third lower, so that a motor
       * chosen by it is not too small.
       */
      readonly law: "sum";
      /** Power number times Reynolds number in creeping flow, above 0. */
      readonly laminarPowerConstant: number;
      /** In turbulent flow, above 0. */
      readonly powerNumber: number;
    }
  | {
      /** A measured curve, straight between its points on logarithmic axes. */
      readonly law: "points";
      /** At least two, in order of rising Reynolds number. */
      readonly points: readonly PowerPoint[];
    }
  | BladedCurve;

/** One point of a measured curve. */
export interface PowerPoint {
  /** Above 0. */
  readonly reynolds: number;
  /** Above 0. */
  readonly powerNumber: number;
}

/**
 * Flat or pitched blades in a vessel with or without baffles, from their shape alone, at any Reynolds number: the
 * correlation of Kamei and Hiraoka. The shape is given as ratios, so that it holds at every scale.
 */
export interface BladedCurve {
  /** The correlation of Kamei and Hiraoka. */
  readonly law: "kamei-hiraoka";
  /** Number of blades, a whole number of 2 or more. */
  readonly blades: number;
  /** Of the blades to the horizontal [°], above 0 and up to 90; a flat paddle has 90. */
  readonly bladeAngle: number;
  /** Width of a blade, along its own face, over the diameter of the impeller, above 0 and below 2. */
  readonly widthToDiameter: number;
  /** Diameter of the impeller over that of the vessel, 0.2 to 0.95. */
  readonly diameterToVessel: number;
  /** Level of the filling over the diameter of the vessel, above 0. */
  readonly levelToVessel: number;
  /** Number of baffles at the wall, 0 or more; left out for none. */
  readonly baffles?: number;
  /** Width of a baffle over the diameter of the vessel, above 0 and below 0.5; left out with no baffles. */
  readonly baffleToVessel?: number;
}
