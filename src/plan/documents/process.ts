import { type Entries, type Entry, fields, maybe, quantity, text, whole, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { type PackFigures, packFigures } from "./packing.js";

/** A process without its steps. */
export interface ProcessFigures {
  readonly name: string;
  /** Room and material temperature. */
  readonly room: Quantity<"temperature">;
  /** Margin that every part of the charge keeps below its flash point; default 30 K (common practice, no source). */
  readonly flashPointMargin?: Quantity<"temperatureDifference">;
  /** Margin that the mix keeps above its setting temperature; default 2 K (common practice, no source). */
  readonly settingMargin?: Quantity<"temperatureDifference">;
  /** Margin that the oil fraction keeps below the bench's maximum, by volume; default 1 % v/v (common practice, no source). */
  readonly oilFractionMargin?: Quantity<"volumeFraction">;
  /** Speed of the air over the open vessel, if evaporation is to be predicted. */
  readonly airVelocity?: Quantity<"velocity">;
  /** Air in the melt, if it is asked whether that leaves. */
  readonly air?: AirDocument;
  /** The working day that each lot has to fit, from its first step to the last that somebody has to be there for. */
  readonly workingDay?: {
    readonly length: Quantity<"time">;
    /** Equal vessels that are worked side by side; default one. */
    readonly vessels?: number;
    /** Between two lots in one vessel; default none. */
    readonly cleaning?: Quantity<"time">;
  };
}

/** Air that is stirred in. */
export interface AirDocument {
  /** Diameter of the bubbles that have to leave. */
  readonly bubbleDiameter: Quantity<"length">;
  /** Default `"immobile"`, the slower one. */
  readonly surface?: "immobile" | "mobile";
  /** Time within which the melt is to be clear: how warm, or under which vacuum, is then given. */
  readonly clearWithin?: Quantity<"time">;
  /** Vacuum that is drawn once a phase is in. */
  readonly vacuum?: {
    readonly afterPhase: string;
    /** Absolute pressure. */
    readonly pressure: Quantity<"pressure">;
    /** Air in the melt before, by volume. */
    readonly air: Quantity<"volumeFraction">;
    /** Height from the bottom of the vessel up to which the foam may rise. */
    readonly rim: Quantity<"length">;
  };
}

const above = { above: 0 } as const;

/** Reads what a process states beside its steps. */
export const processFigures: Entries<ProcessFigures> = {
  name: text,
  room: quantity("temperature"),
  flashPointMargin: maybe("wish", quantity("temperatureDifference", { min: 0 })),
  settingMargin: maybe("wish", quantity("temperatureDifference", { min: 0 })),
  oilFractionMargin: maybe("wish", quantity("volumeFraction", { min: 0, below: 1 })),
  airVelocity: maybe("reading", quantity("velocity", above)),
  air: maybe(
    "wish",
    fields<AirDocument>({
      bubbleDiameter: quantity("length", above),
      surface: maybe("property", word("immobile", "mobile")),
      clearWithin: maybe("wish", quantity("time", above)),
      vacuum: maybe(
        "process",
        fields<NonNullable<AirDocument["vacuum"]>>({
          afterPhase: text,
          pressure: quantity("pressure", above),
          air: quantity("volumeFraction", { min: 0, max: 1 }),
          rim: quantity("length", above),
        }),
      ),
    }),
  ),
  workingDay: maybe(
    "wish",
    fields<NonNullable<ProcessFigures["workingDay"]>>({
      length: quantity("time", { min: 60 }),
      vessels: maybe("process", whole(1)),
      cleaning: maybe("process", quantity("time", { min: 0 })),
    }),
  ),
};

/** What the gel is filled into. */
export interface PackDocument extends PackFigures {
  readonly name: string;
  /** Loss to the room per kelvin of one filled pack, from its cooling curve: for a pack that cools as one lump. */
  readonly heatLoss?: Quantity<"thermalConductance">;
  /** Its content as a cylinder, for heat that has to be conducted out of it. */
  readonly content?: {
    readonly diameter: Quantity<"length">;
    readonly height: Quantity<"length">;
    /** From the content's surface to the room: wall of the pack and air, 5 to 15 W/(m²·K) in still air. */
    readonly coefficient: Quantity<"heatTransferCoefficient">;
    /** Where the coefficient comes from. */
    readonly source: string;
  };
  /** What the gel is pressed through in use. */
  readonly nozzle?: NozzleDocument;
}

/** What the set gel is pressed through in use: a pump, the mouth of a tube, a spray. */
export interface NozzleDocument {
  /** Bore. */
  readonly diameter: Quantity<"length">;
  /** What passes in one stroke, and how long it takes. */
  readonly volume: Quantity<"volume">;
  readonly within: Quantity<"time">;
  /** Stated if it is to break up into a spray. */
  readonly spray?: { readonly surfaceTension: Quantity<"surfaceTension"> };
}

/** Reads a pack. */
export const pack: Entry<PackDocument> = fields<PackDocument>({
  ...packFigures,
  name: text,
  heatLoss: maybe("reading", quantity("thermalConductance", above)),
  content: maybe(
    "property",
    fields<NonNullable<PackDocument["content"]>>({
      diameter: quantity("length", above),
      height: quantity("length", above),
      coefficient: quantity("heatTransferCoefficient", above),
      source: text,
    }),
  ),
  nozzle: maybe(
    "identity",
    fields<NozzleDocument>({
      diameter: quantity("length", above),
      volume: quantity("volume", above),
      within: quantity("time", above),
      spray: maybe(
        "wish",
        fields<NonNullable<NozzleDocument["spray"]>>({ surfaceTension: quantity("surfaceTension", above) }),
      ),
    }),
  ),
});
