import { type Entry, fields, kinds, listOf, maybe, plain, quantity, text, whole, word } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import type { Quantity } from "../../units/index.js";
import { type StirrerDocument, stirrer } from "./stirrer.js";

/** An upright round vessel, with what heats it and what it loses. */
export interface VesselDocument {
  readonly name: string;
  /** Smallest volume that covers the impeller, and largest that leaves room to stir. */
  readonly workingVolume: { readonly min: Quantity<"volume">; readonly max: Quantity<"volume"> };
  /** Inner diameter. */
  readonly diameter: Quantity<"length">;
  /** Its bottom. Without it levels are those over a flat one, and whether the gel moves up to its surface also counts a bowl. */
  readonly bottom?: BottomDocument;
  /** Baffles upright at the wall, as high as the charge; default none. */
  readonly baffles?: { readonly count: number; readonly width: Quantity<"length"> };
  /** What heats it. */
  readonly heater?: {
    readonly power: Quantity<"power">;
    /** Highest temperature of the hot plate, bath or jacket, if one limits it; `heatedWall` then says how heat passes. */
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
  /** What stirs it. With the viscosity of the charge it gives the heat transfer at a wall. */
  readonly stirrer?: StirrerDocument;
  /** The wall through which it is heated. Without it the wall's temperature is not known. */
  readonly heatedWall?: {
    readonly area: Quantity<"area">;
    /** Between wall and charge; default by the correlation for the stirrer. */
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
      /** Radius of the dish over the diameter of the vessel, 0.5 to 2; default 1. */
      readonly crownToDiameter?: number;
      /** Radius of the rounding over the diameter of the vessel, above 0 and below 0.5; default 0.1. */
      readonly knuckleToDiameter?: number;
    };

/** Two readings of a thermometer are enough; from three on the loss has an interval. */
export interface CoolingCurveDocument {
  /** What was in the vessel, without the vessel's own warm wall. */
  readonly content: { readonly mass: Quantity<"mass">; readonly specificHeat: Quantity<"specificHeat"> };
  /** Temperature of the room, which was constant. */
  readonly room: Quantity<"temperature">;
  /** Time since the first reading, and what was read. */
  readonly readings: readonly { readonly after: Quantity<"time">; readonly temperature: Quantity<"temperature"> }[];
}

/** The surfaces that lose heat to still air: the side, and the open or covered top. */
export interface SurfacesDocument {
  /** Height of the side that is wetted inside. */
  readonly height: Quantity<"length">;
  /** Emissivity of side and top, 0 to 1. */
  readonly emissivity: number;
  /** Insulation on the side. */
  readonly insulation?: { readonly thickness: Quantity<"length">; readonly conductivity: Quantity<"conductivity"> };
}

/** A cooling jacket: its conductance as measured, or what it is computed from. */
export interface JacketDocument {
  /** Temperature of the coolant at its inlet. */
  readonly coolant: Quantity<"temperature">;
  /** Between coolant and charge, over the whole wall; default from area and coefficients. */
  readonly conductance?: Quantity<"thermalConductance">;
  /** Mass flow times specific heat of the coolant; without it the coolant counts as cold as at its inlet, and cooling takes at least so long. */
  readonly capacityFlow?: Quantity<"thermalConductance">;
  /** Cooled wall that the charge wets. Without it nothing is known of a skin on it. */
  readonly area?: Quantity<"area">;
  /** Between charge and wall; default by the correlation for the stirrer. */
  readonly insideCoefficient?: Quantity<"heatTransferCoefficient">;
  /** From the inner face of the wall, through the wall, to the coolant. */
  readonly outsideCoefficient?: Quantity<"heatTransferCoefficient">;
  /** Where the coefficients stated here come from. */
  readonly source?: string;
}

const above = { above: 0 } as const;
const coefficient = quantity("heatTransferCoefficient", above);
const conductance = quantity("thermalConductance", above);
const length = quantity("length", above);

const bottom = kinds<BottomDocument>("shape", [
  fields<{ readonly shape: "flat" }>({ shape: word("flat") }),
  fields<Extract<BottomDocument, { shape: "cone" | "ellipsoidal" }>>({
    shape: word("cone", "ellipsoidal"),
    depth: length,
  }),
  fields<Extract<BottomDocument, { shape: "dished" }>>({
    shape: word("dished"),
    crownToDiameter: maybe("property", plain({ min: 0.5, max: 2 })),
    knuckleToDiameter: maybe("property", plain({ above: 0 })),
  }),
]);

/** Reads a vessel. */
export const vessel: Entry<VesselDocument> = fields<VesselDocument>({
  name: text,
  workingVolume: fields<VesselDocument["workingVolume"]>({
    min: quantity("volume", { min: 0 }),
    max: quantity("volume", above),
  }),
  diameter: length,
  bottom: maybe("property", bottom),
  baffles: maybe("identity", fields<NonNullable<VesselDocument["baffles"]>>({ count: whole(1), width: length })),
  heater: maybe(
    "identity",
    fields<NonNullable<VesselDocument["heater"]>>({
      power: quantity("power", above),
      temperatureMax: maybe("identity", quantity("temperature")),
    }),
  ),
  heatLoss: maybe("reading", conductance),
  coolingCurve: maybe(
    "reading",
    fields<CoolingCurveDocument>({
      content: fields<CoolingCurveDocument["content"]>({
        mass: quantity("mass", above),
        specificHeat: quantity("specificHeat", above),
      }),
      room: quantity("temperature"),
      readings: listOf(
        fields<CoolingCurveDocument["readings"][number]>({
          after: quantity("time", { min: 0 }),
          temperature: quantity("temperature"),
        }),
        2,
      ),
    }),
  ),
  surfaces: maybe(
    "property",
    fields<SurfacesDocument>({
      height: length,
      emissivity: plain({ min: 0, max: 1 }),
      insulation: maybe(
        "identity",
        fields<NonNullable<SurfacesDocument["insulation"]>>({
          thickness: length,
          conductivity: quantity("conductivity", above),
        }),
      ),
    }),
  ),
  wall: maybe(
    "property",
    fields<NonNullable<VesselDocument["wall"]>>({
      mass: quantity("mass", above),
      specificHeat: quantity("specificHeat", above),
    }),
  ),
  stirrer: maybe("identity", stirrer),
  heatedWall: maybe(
    "property",
    fields<NonNullable<VesselDocument["heatedWall"]>>({
      area: quantity("area", above),
      coefficient: maybe("property", coefficient),
      source: maybe("identity", text),
    }),
  ),
  jacket: maybe(
    "identity",
    fields<JacketDocument>({
      coolant: quantity("temperature"),
      conductance: maybe("reading", conductance),
      capacityFlow: maybe("property", conductance),
      area: maybe("property", quantity("area", above)),
      insideCoefficient: maybe("property", coefficient),
      outsideCoefficient: maybe("property", coefficient),
      source: maybe("identity", text),
    }),
  ),
});

/** A vessel, as it was read. */
export type Vessel = Read<VesselDocument>;

/** A stirrer, as it was read. */
export type Stirrer = NonNullable<Vessel["stirrer"]>;
