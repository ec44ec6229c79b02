import type { Quantity } from "../units/index.js";

/** An upright round vessel, with what heats it and what it loses. */
export interface VesselDocument {
  readonly name: string;
  /** Least volume that covers the impeller, and greatest that leaves room to stir. */
  readonly workingVolume: { readonly min: Quantity<"volume">; readonly max: Quantity<"volume"> };
  /** Inner diameter. */
  readonly diameter: Quantity<"length">;
  /** Its bottom; left out for a flat one. */
  readonly bottom?: BottomDocument;
  /** Baffles upright at the wall, as high as the charge; left out for none. */
  readonly baffles?: { readonly count: number; readonly width: Quantity<"length"> };
  /** What heats it. */
  readonly heater?: {
    readonly power: Quantity<"power">;
    /** Highest temperature of the hot plate, bath or jacket, where one limits it; `heatedWall` then says how heat passes. */
    readonly temperatureMax?: Quantity<"temperature">;
  };
  /** Loss to the room per kelvin. This, a cooling curve, or the surfaces: one of the three. */
  readonly heatLoss?: Quantity<"thermalConductance">;
  /** A cooling curve of this vessel, from which its loss is fitted. */
  readonly coolingCurve?: CoolingCurveDocument;
  /** Its surfaces, from which its loss is computed. */
  readonly surfaces?: SurfacesDocument;
  /** What of the vessel warms with the charge. */
  readonly wall?: { readonly mass: Quantity<"mass">; readonly specificHeat: Quantity<"specificHeat"> };
  /** What stirs it: from this, and the viscosity of the charge, follows how heat passes at a wall. */
  readonly stirrer?: StirrerDocument;
  /** The wall through which it is heated. Without it the wall's temperature is not known. */
  readonly heatedWall?: {
    readonly area: Quantity<"area">;
    /** Between wall and charge. Left out, it is found by the correlation for the stirrer. */
    readonly coefficient?: Quantity<"heatTransferCoefficient">;
    /** Where a stated coefficient comes from: a measurement, a manufacturer. */
    readonly source?: string;
  };
  /** What cools it on purpose. */
  readonly jacket?: JacketDocument;
}

/** The bottom of a vessel: a plate, a cone with its tip down, half an ellipsoid, or a dish that is rounded into the wall. */
export type BottomDocument =
  | { readonly shape: "flat" }
  | {
      readonly shape: "cone" | "ellipsoidal";
      /** From its lowest point to where the wall is upright. */
      readonly depth: Quantity<"length">;
    }
  | {
      readonly shape: "dished";
      /** Radius of the dish over the diameter of the vessel, 0.5 to 2; left out for 1. */
      readonly crownToDiameter?: number;
      /** Radius of the rounding over the diameter of the vessel, above 0 and below 0.5; left out for 0.1. */
      readonly knuckleToDiameter?: number;
    };

/** A stirrer: what of it is told decides what the plan can say of power, heat, shear, evenness and air. */
export interface StirrerDocument {
  /** Its kind, which has a correlation for the heat at the wall; `"other"` has none. */
  readonly kind: StirrerKind;
  /** Swept diameter. */
  readonly diameter: Quantity<"length">;
  /** Number of blades; of a turbine with pitched blades 4 where it is left out. */
  readonly blades?: number;
  /** Of pitched blades to the horizontal, in degrees; left out for 45. Upright blades have 90. */
  readonly bladeAngle?: number;
  /** Width of a blade along its face; of pitched blades a fifth of the diameter where it is left out. */
  readonly bladeWidth?: Quantity<"length">;
  /** Height of the arms of an anchor: its power then comes from its shape in this vessel, as that of a wide paddle. */
  readonly armHeight?: Quantity<"length">;
  /** Usual speed, while the vessel is heated and cooled. */
  readonly speed?: Quantity<"rotationalSpeed">;
  /** Power number times Reynolds number where the charge creeps: measured, or from its maker. */
  readonly laminarPowerConstant?: number;
  /** Power number where the flow is turbulent: measured, or from its maker. */
  readonly powerNumber?: number;
  /** Mean shear rate in the charge over speed (Metzner and Otto). */
  readonly metznerOttoConstant?: number;
  /** Revolutions until an addition is even where the charge creeps, counted on this stirrer. */
  readonly revolutionsToBlend?: number;
  /** Height of its upper edge above the lowest point of the vessel. */
  readonly topEdge?: Quantity<"length">;
  /** What has to stand above that; left out for nothing. */
  readonly cover?: Quantity<"length">;
  /** Moved about by hand while it turns, so that no part of the charge stays out of its reach. */
  readonly byHand?: boolean;
  /** What drives it: power at the usual speed, and the share of it that reaches the shaft where that is known. */
  readonly motor?: { readonly power: Quantity<"power">; readonly efficiency?: number };
}

/** Kinds of stirrer, in the trade's words. */
export type StirrerKind =
  | "anchor"
  | "helical ribbon"
  | "paddle"
  | "propeller"
  | "disc turbine"
  | "flat-blade turbine"
  | "pitched-blade turbine"
  | "hydrofoil"
  | "disperser disc"
  | "rotor-stator"
  | "other";

/** Two readings of a thermometer are enough; from three on the loss has an interval. */
export interface CoolingCurveDocument {
  /** What was in the vessel, the vessel's own warm wall left out. */
  readonly content: { readonly mass: Quantity<"mass">; readonly specificHeat: Quantity<"specificHeat"> };
  /** Temperature of the room, which held still. */
  readonly room: Quantity<"temperature">;
  /** Time since the first look, and what was read. */
  readonly readings: readonly { readonly after: Quantity<"time">; readonly temperature: Quantity<"temperature"> }[];
}

/** The surfaces that lose heat to the air at rest: the side, and the open or covered top. */
export interface SurfacesDocument {
  /** Height of the side that is wetted inside. */
  readonly height: Quantity<"length">;
  /** Emissivity of side and top, 0 to 1. */
  readonly emissivity: number;
  /** Insulation on the side. */
  readonly insulation?: { readonly thickness: Quantity<"length">; readonly conductivity: Quantity<"conductivity"> };
}

/** A cooling jacket: its conductance as measured, or what it is found from. */
export interface JacketDocument {
  /** Temperature of the coolant as it goes in. */
  readonly coolant: Quantity<"temperature">;
  /** Between coolant and charge, over the whole wall. Left out, it is found from area and coefficients. */
  readonly conductance?: Quantity<"thermalConductance">;
  /** Mass flow times specific heat of the coolant; without it the coolant stays as cold as it goes in. */
  readonly capacityFlow?: Quantity<"thermalConductance">;
  /** Cooled wall that the charge wets. Without it whether a skin sets is not known. */
  readonly area?: Quantity<"area">;
  /** Between charge and wall. Left out, it is found by the correlation for the stirrer. */
  readonly insideCoefficient?: Quantity<"heatTransferCoefficient">;
  /** From the inner face of the wall, through the wall, to the coolant. */
  readonly outsideCoefficient?: Quantity<"heatTransferCoefficient">;
  /** Where the coefficients stated here come from. */
  readonly source?: string;
}
