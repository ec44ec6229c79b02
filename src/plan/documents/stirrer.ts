import { type Entry, fields, maybe, plain, quantity, truth, whole, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";

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

/** A stirrer. The more of it is stated, the more the plan can say of power, heat, shear, evenness and air. */
export interface StirrerDocument {
  /** Its kind, which has a correlation for the heat at the wall; `"other"` has none. */
  readonly kind: StirrerKind;
  /** Swept diameter. */
  readonly diameter: Quantity<"length">;
  /** Number of blades; default 4 for a turbine with pitched blades. */
  readonly blades?: number;
  /** Angle of pitched blades to the horizontal, in degrees; default 45. Upright blades have 90. */
  readonly bladeAngle?: number;
  /** Width of a blade along its face; default a fifth of the diameter for pitched blades. */
  readonly bladeWidth?: Quantity<"length">;
  /** Height of the arms of an anchor: its power then comes from its shape in this vessel, as that of a wide paddle. */
  readonly armHeight?: Quantity<"length">;
  /** Usual speed, while the vessel is heated and cooled. */
  readonly speed?: Quantity<"rotationalSpeed">;
  /** Power number times Reynolds number in creeping flow: measured, or from its maker. */
  readonly laminarPowerConstant?: number;
  /** Power number in turbulent flow: measured, or from its maker. */
  readonly powerNumber?: number;
  /** Mean shear rate in the charge over speed (Metzner and Otto). */
  readonly metznerOttoConstant?: number;
  /** Revolutions until an addition is blended in creeping flow, counted on this stirrer. */
  readonly revolutionsToBlend?: number;
  /** Height of its upper edge above the lowest point of the vessel. */
  readonly topEdge?: Quantity<"length">;
  /** Depth of charge that has to stand above the upper edge; default none. */
  readonly cover?: Quantity<"length">;
  /** Moved about by hand while it turns, so that it reaches all of the charge. */
  readonly byHand?: boolean;
  /** What drives it. */
  readonly motor?: {
    /** Rated power, as on its name plate: what the motor gives at its own shaft, at the usual speed. */
    readonly power: Quantity<"power">;
    /** Share of the rated power that gear and seals pass on to the stirrer; default between 0.7 and all of it (common practice, no source). What the motor takes from the supply is another figure. */
    readonly efficiency?: number;
    /** `"gear"` if a gear makes more torque at a lower speed, `"constant torque"` if the motor is turned down by its supply. Without it the torque at a lower speed lies between the two. */
    readonly drive?: "gear" | "constant torque";
  };
}

/** Reads a stirrer. */
export const stirrer: Entry<StirrerDocument> = fields<StirrerDocument>({
  kind: word(
    "anchor",
    "helical ribbon",
    "paddle",
    "propeller",
    "disc turbine",
    "flat-blade turbine",
    "pitched-blade turbine",
    "hydrofoil",
    "disperser disc",
    "rotor-stator",
    "other",
  ),
  diameter: quantity("length", { above: 0 }),
  blades: maybe("property", whole(2)),
  bladeAngle: maybe("property", plain({ above: 0, max: 90 })),
  bladeWidth: maybe("property", quantity("length", { above: 0 })),
  armHeight: maybe("property", quantity("length", { above: 0 })),
  speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
  laminarPowerConstant: maybe("property", plain({ above: 0 })),
  powerNumber: maybe("property", plain({ above: 0 })),
  metznerOttoConstant: maybe("property", plain({ above: 0 })),
  revolutionsToBlend: maybe("reading", plain({ above: 0 })),
  topEdge: maybe("property", quantity("length", { above: 0 })),
  cover: maybe("wish", quantity("length", { min: 0 })),
  byHand: maybe("process", truth),
  motor: maybe(
    "property",
    fields<NonNullable<StirrerDocument["motor"]>>({
      power: quantity("power", { above: 0 }),
      efficiency: maybe("property", plain({ above: 0, max: 1 })),
      drive: maybe("property", word("gear", "constant torque")),
    }),
  ),
});
