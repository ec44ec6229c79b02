import type { Read } from "../formula/read-type.js";
import type { Quantity } from "../units/index.js";
import type { ProcessFigures } from "./documents/process.js";

/** Charges a phase, or a part of it, into the empty vessel, or stirs it in. */
export interface ChargeDocument {
  readonly do: "charge";
  readonly phase: string;
  /** Of the phase, if it goes in in parts; default all of it, or what earlier parts leave. */
  readonly share?: Quantity<"massFraction">;
  /** The same as a mass of one lot. */
  readonly mass?: Quantity<"mass">;
  /** Default the room's temperature. */
  readonly at?: Quantity<"temperature">;
  /** Default all at once. */
  readonly for?: Quantity<"time">;
  /** So many equal additions in which oil goes into a gel that is there, each stirred in before the next; default one. */
  readonly equalAdditions?: number;
  /** Of the stirrer meanwhile; default its usual speed. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

/** Heats the charge. */
export interface HeatDocument {
  readonly do: "heat";
  readonly to: Quantity<"temperature">;
  /** The time that it may take: the plan says whether it does, and what heater would do. */
  readonly within?: Quantity<"time">;
  readonly note?: string;
}

/** Holds the charge: on the heat, or off it at a temperature or on a warm jacket. */
export interface HoldDocument {
  readonly do: "hold";
  readonly for: Quantity<"time">;
  /** The temperature at which it is kept off the heat, once it has cooled to it. Without it and without `jacketAt` the heater holds it. */
  readonly at?: Quantity<"temperature">;
  /** Temperature of the medium in the jacket, if that keeps it warm off the heat. */
  readonly jacketAt?: Quantity<"temperature">;
  readonly note?: string;
}

/** Takes the vessel off the heat. */
export interface OffDocument {
  readonly do: "take off the heat";
  readonly note?: string;
}

/** Lets the charge cool to a temperature or a viscosity, by itself or through the jacket. */
export type CoolDocument =
  | {
      readonly do: "cool";
      readonly to: Quantity<"temperature">;
      /** `"jacket"` if the vessel's jacket is turned on; default it cools by itself. */
      readonly with?: "jacket";
      /** The time that it may take: the plan says whether it does, and what coolant would do. */
      readonly within?: Quantity<"time">;
      readonly note?: string;
    }
  | {
      readonly do: "cool";
      readonly toViscosity: Quantity<"dynamicViscosity">;
      /** As to a temperature. */
      readonly with?: "jacket";
      /** As to a temperature. */
      readonly within?: Quantity<"time">;
      readonly note?: string;
    };

/** Stirs for a while. */
export interface StirDocument {
  readonly do: "stir";
  readonly for: Quantity<"time">;
  /** Default the stirrer's usual speed. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

/** A speed of the stirrer, for every addition that meets so much oil or more. */
export interface SpeedFrom {
  readonly fromOil: Quantity<"volumeFraction">;
  readonly speed: Quantity<"rotationalSpeed">;
}

/** Stirs a phase of oil into the gel former by a schedule. */
export interface AddDocument {
  readonly do: "add";
  readonly phase: string;
  /** Of the phase, if it goes in in parts; default all of it, or what earlier parts leave. */
  readonly share?: Quantity<"massFraction">;
  /** The same as a mass of one lot. */
  readonly mass?: Quantity<"mass">;
  /** How the additions grow; `"as at the bench"` takes the bench's own. Default `"largest"` if the bench states shares. */
  readonly additions?: "largest" | "equal" | "geometric" | "as at the bench" | "stream";
  /** What is kept from the bench while an addition is incorporated; default `"time"`. */
  readonly keeps?: "time" | "revolutions" | "tip travel" | "energy per volume" | "strain";
  /** Default the stirrer's usual speed. */
  readonly speed?: Quantity<"rotationalSpeed">;
  /** Speeds from an oil fraction in the vessel on, rising in oil, for a start that is slow; before the first the usual speed counts. */
  readonly speeds?: readonly SpeedFrom[];
  /** The most that pump or hand delivers. */
  readonly pump?: { readonly mass: Quantity<"mass">; readonly in: Quantity<"time"> };
  /** Smallest step to which an addition can be read; default that of the balance for the phase. */
  readonly increment?: Quantity<"mass">;
  /** What the operator sees before the next addition goes in. */
  readonly proceedWhen?: string;
  readonly note?: string;
}

/** Compares oil and gel former through the gel. */
export interface MatchDocument {
  readonly do: "match clarity";
  readonly note?: string;
}

/** Checks the charge on the way: what has to be right before the batch goes on. */
export interface CheckDocument {
  readonly do: "check";
  /** What is looked at or measured, such as "thickness with spindle 4 at 20 rpm". */
  readonly what: string;
  /** What it has to be, such as "between 30 and 36 % of the scale". */
  readonly expect?: string;
  /** How long that takes; default no time of its own. */
  readonly for?: Quantity<"time">;
  readonly note?: string;
}

/** Lets the air out, under the pressure of the room or less. */
export interface DeaerateDocument {
  readonly do: "de-aerate";
  readonly for: Quantity<"time">;
  /** Absolute pressure over the gel; default the room's. */
  readonly pressure?: Quantity<"pressure">;
  /** Slow stirring, so that the gel yields and lets the bubbles rise; default none. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

/** Fills the packs. */
export interface FillDocument {
  readonly do: "fill";
  /** Default no time of its own; or `packsPerMinute`. */
  readonly for?: Quantity<"time">;
  /** Packs that are filled in a minute: the packs of a lot then set the time. */
  readonly packsPerMinute?: number;
  /** Held at its temperature by the heater meanwhile; default it cools. */
  readonly held?: "on the heat";
  /** Temperature of the medium in the jacket, if that keeps it warm meanwhile. */
  readonly jacketAt?: Quantity<"temperature">;
  /** Of the stirrer meanwhile; default it does not turn. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

/** Lets the packs rest, or the charge stand in the vessel without stirring. */
export interface RestDocument {
  readonly do: "rest";
  readonly for: Quantity<"time">;
  readonly note?: string;
}

/** What is done at the kettle, in order. */
export type StepDocument =
  | ChargeDocument
  | HeatDocument
  | HoldDocument
  | OffDocument
  | CoolDocument
  | StirDocument
  | AddDocument
  | MatchDocument
  | CheckDocument
  | DeaerateDocument
  | FillDocument
  | RestDocument;

/** A step that was read. */
export type Step = Read<StepDocument>;

/** A process as data. */
export interface ProcessDocument extends ProcessFigures {
  readonly steps: readonly StepDocument[];
}
