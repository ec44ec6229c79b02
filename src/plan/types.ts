import type { BatchDocument } from "../batch/index.js";
import type { FormulaDocument } from "../formula/index.js";
import type { Quantity } from "../units/index.js";

/** A vessel, flat-bottomed and upright, with what heats it and what it loses. */
export interface VesselDocument {
  readonly name: string;
  /** Least volume that covers the impeller, and greatest that leaves room to stir. */
  readonly workingVolume: { readonly least: Quantity<"volume">; readonly greatest: Quantity<"volume"> };
  /** Inner diameter. */
  readonly diameter: Quantity<"length">;
  readonly heater?: { readonly power: Quantity<"power"> };
  /** Loss to the room per kelvin, from a cooling curve of this vessel with a like charge. */
  readonly heatLoss?: Quantity<"thermalConductance">;
  /** What of the vessel warms with the charge. */
  readonly wall?: { readonly mass: Quantity<"mass">; readonly specificHeat: Quantity<"specificHeat"> };
  /** How heat passes from the heated wall to the stirred charge. Without it the wall's temperature is not known. */
  readonly heatedWall?: {
    readonly area: Quantity<"area">;
    readonly coefficient: Quantity<"heatTransferCoefficient">;
    /** Where the coefficient comes from: a measurement, a correlation, a manufacturer. */
    readonly source: string;
  };
}

/** A viscosity–temperature law that was fitted elsewhere. */
export type ViscosityLawDocument =
  /** Andrade: the factor times exp(E/RT). */
  | {
      readonly law: "andrade";
      readonly factor: Quantity<"dynamicViscosity">;
      readonly activationEnergy: Quantity<"molarEnergy">;
    }
  /** Vogel, Fulcher and Tammann: the factor times exp(B/(T − T₀)). */
  | {
      readonly law: "vogel-fulcher-tammann";
      readonly factor: Quantity<"dynamicViscosity">;
      readonly coefficient: Quantity<"temperatureDifference">;
      readonly vogelTemperature: Quantity<"temperature">;
    };

/** The viscosity of one composition, taken in one direction at one shear rate: as readings or as a law. */
export interface ViscosityDocument {
  /** The phases that were in the beaker. The figures hold for these together and for nothing else. */
  readonly phases: readonly string[];
  /** Whether it was being heated or cooled: a gel does not thicken where it dissolves. */
  readonly direction: "heating" | "cooling";
  /** Shear rate at which it was measured. */
  readonly shearRate: Quantity<"shearRate">;
  /** At least two temperatures; between them a monotone curve through ln viscosity against 1/T. */
  readonly readings?: readonly {
    /** Temperature of the reading. */
    readonly at: Quantity<"temperature">;
    /** What was read. */
    readonly viscosity: Quantity<"dynamicViscosity">;
  }[];
  /** In place of readings. */
  readonly law?: ViscosityLawDocument;
}

/** What the bench found out about this gel. */
export interface BenchDocument {
  /** Where and when it was measured. */
  readonly source: string;
  /** Working range of oil per gel former, by mass, found in trials. */
  readonly oilPerGelFormer?: { readonly least: number; readonly greatest: number };
  /** Setting and dissolving temperature at one or more doses of gel former. */
  readonly doses?: readonly {
    readonly gelFormer: Quantity<"massFraction">;
    readonly setsAt: Quantity<"temperature">;
    readonly dissolvesAt: Quantity<"temperature">;
  }[];
  readonly viscosities?: readonly ViscosityDocument[];
  /** Above this it can no longer be stirred in without tearing the gel or drawing in air. */
  readonly stirrableUpTo?: Quantity<"dynamicViscosity">;
  /** Yield stress of the set gel at room temperature. */
  readonly yieldStress?: Quantity<"pressure">;
  /** How far particles may settle before the gel has set. */
  readonly settlingAllowed?: Quantity<"length">;
}

/** What is done at the kettle, in order. */
export type StepDocument =
  | {
      readonly do: "charge";
      readonly phase: string;
      readonly at?: Quantity<"temperature">;
      readonly for?: Quantity<"time">;
      readonly note?: string;
    }
  | { readonly do: "heat"; readonly to: Quantity<"temperature">; readonly note?: string }
  | { readonly do: "hold"; readonly for: Quantity<"time">; readonly note?: string }
  | { readonly do: "take off the heat"; readonly note?: string }
  | { readonly do: "cool"; readonly to: Quantity<"temperature">; readonly note?: string }
  | { readonly do: "cool"; readonly toViscosity: Quantity<"dynamicViscosity">; readonly note?: string }
  | {
      readonly do: "stir";
      readonly for: Quantity<"time">;
      readonly speed?: Quantity<"rotationalSpeed">;
      readonly note?: string;
    }
  | { readonly do: "fill"; readonly for?: Quantity<"time">; readonly note?: string }
  | { readonly do: "rest"; readonly for: Quantity<"time">; readonly note?: string };

/** The hot route as data. */
export interface ProcessDocument {
  readonly name: string;
  /** Room and material temperature. */
  readonly room: Quantity<"temperature">;
  /** Distance that every part of the charge keeps below its flash point. */
  readonly belowFlashPoint?: Quantity<"temperatureDifference">;
  /** Distance that the mix keeps above its setting temperature when something cold goes in. */
  readonly aboveSetting?: Quantity<"temperatureDifference">;
  readonly steps: readonly StepDocument[];
}

/** What the gel is filled into. */
export interface PackDocument {
  readonly name: string;
  /** Loss to the room per kelvin of one filled pack, from its cooling curve. */
  readonly heatLoss?: Quantity<"thermalConductance">;
}

/** One job: everything that a batch sheet is made from. */
export interface JobDocument {
  readonly version: 1;
  readonly formula: FormulaDocument;
  readonly bench: BenchDocument;
  readonly batch: BatchDocument;
  readonly vessel: VesselDocument;
  readonly process: ProcessDocument;
  readonly pack?: PackDocument;
}
