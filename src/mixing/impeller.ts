import type { PowerCurve } from "./power-curve.js";

/** What every impeller may carry of its own, before anything that is known of its kind. */
export interface ImpellerConstants {
  /** Its power curve: measured, or from its maker. */
  readonly power?: PowerCurve;
  /** Mean shear rate in the batch over speed (Metzner and Otto), above 0. */
  readonly metznerOttoConstant?: number;
  /** Flow that it moves over N D³, in turbulent flow, above 0. */
  readonly flowNumber?: number;
}

/** An impeller, as plain data. */
export type Impeller = ImpellerConstants &
  (
    | {
        /** Of ship's shape, three blades, with a pitch of one diameter. */
        readonly kind: "propeller";
        /** [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Flat blades at a slant; four at 45° with a width of a fifth of the diameter, unless said otherwise. */
        readonly kind: "pitched-blade turbine";
        /** [m], above 0. */
        readonly diameter: number;
        /** Number of blades, 2 or more. */
        readonly blades?: number;
        /** Of the blades to the horizontal [°], above 0 and up to 90. */
        readonly bladeAngle?: number;
        /** Width of a blade, along its face [m], above 0. */
        readonly bladeWidth?: number;
      }
    | {
        /** Flat upright blades: a paddle of two, a turbine of four or six. */
        readonly kind: "flat-blade";
        /** [m], above 0. */
        readonly diameter: number;
        /** Number of blades, 2 or more. */
        readonly blades: number;
        /** Width of a blade, which is its height [m], above 0. */
        readonly bladeWidth: number;
      }
    | {
        /** A disc with teeth bent up and down at its rim. */
        readonly kind: "disperser disc";
        /** [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Follows the wall and the bottom of the vessel. */
        readonly kind: "anchor";
        /** [m], above 0. */
        readonly diameter: number;
        /** Height of its arms [m], above 0; in a vessel that is told they end at the level of the filling. */
        readonly armHeight?: number;
      }
    | {
        /** One ribbon or two that wind up along the wall, 0.9 to 0.95 of the vessel wide. */
        readonly kind: "helical ribbon";
        /** [m], above 0. */
        readonly diameter: number;
        /** Number of ribbons, 1 or 2, from which the power then comes; left out, it lies anywhere between the two. */
        readonly starts?: number;
        /** Height of the ribbon [m], above 0; default its diameter. */
        readonly height?: number;
        /** Rise in one turn [m], above 0; default its diameter. */
        readonly pitch?: number;
        /** Width of a ribbon along the radius [m], above 0; default a tenth of the diameter. */
        readonly ribbonWidth?: number;
      }
    | {
        /** A rotor within a slotted ring. Makers' heads differ: its constants are the caller's. */
        readonly kind: "rotor-stator";
        /** Of the rotor [m], above 0. */
        readonly diameter: number;
      }
    | {
        /** Of any other shape: its constants are the caller's. */
        readonly kind: "other";
        /** [m], above 0. */
        readonly diameter: number;
      }
  );

/** The vessel around the impeller, as far as stirring knows it. */
export interface StirredVessel {
  /** Inner diameter [m], above 0. */
  readonly diameter: number;
  /** Level of the filling above the lowest point [m], above 0. */
  readonly level: number;
  /** Number of baffles at the wall, 0 or more; left out for none. */
  readonly baffles?: number;
  /** Width of a baffle [m], above 0. */
  readonly baffleWidth?: number;
}
