import type { BatchDocument } from "../batch/index.js";
import type { FormulaDocument } from "../formula/index.js";
import type { Quantity } from "../units/index.js";
import type { ColdStepDocument, EmulsionDocument } from "./cold/types.js";
import type {
  AirDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  NozzleDocument,
  StrengthTrialsDocument,
} from "./strength/types.js";
import type { VesselDocument } from "./vessel-document.js";

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
      readonly temperatureVogel: Quantity<"temperature">;
    };

/** The viscosity of one composition, taken in one direction at one shear rate: as readings or as a law. */
export interface ViscosityDocument {
  /** The phases that were in the beaker. The figures hold for these together and for nothing else. */
  readonly phases: readonly string[];
  /** Whether it was being heated or cooled: a gel does not thicken where it dissolves. */
  readonly direction: "heating" | "cooling";
  /** Shear rate at which it was measured. */
  readonly shearRate: Quantity<"shearRate">;
  /** Slope of stress against shear rate there, on logarithmic axes, for a melt that thins under shear: carries the readings to the shear rate of the stirrer. Left out for one that does not. */
  readonly flowIndex?: number;
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
  readonly oilPerGelFormer?: { readonly min: number; readonly max: number };
  /** Setting and dissolving temperature at one or more doses of gel former. */
  readonly doses?: readonly {
    readonly gelFormer: Quantity<"massFraction">;
    readonly setsAt: Quantity<"temperature">;
    readonly dissolvesAt: Quantity<"temperature">;
  }[];
  readonly viscosities?: readonly ViscosityDocument[];
  /** Above this it can no longer be stirred in without tearing the gel or drawing in air. */
  readonly stirrableViscosityMax?: Quantity<"dynamicViscosity">;
  /** Yield stress of the set gel at room temperature. It goes before what flow curve and trials say. */
  readonly yieldStress?: Quantity<"pressure">;
  /** Trials of dose against strength. */
  readonly strengthTrials?: StrengthTrialsDocument;
  /** Rheometer points of the set gel. */
  readonly flowCurve?: FlowCurveDocument;
  /** For a gel former that crystallises: where no dissolving temperature was measured, the ideal one. */
  readonly idealSolubility?: IdealSolubilityDocument;
  /** How far particles may settle before the gel has set. */
  readonly settlingAllowed?: Quantity<"length">;
  /** What it found out about the cold route. */
  readonly emulsion?: EmulsionDocument;
}

/** What is done at the kettle, in order. */
export type StepDocument =
  | {
      readonly do: "charge";
      readonly phase: string;
      readonly at?: Quantity<"temperature">;
      readonly for?: Quantity<"time">;
      /** Of the stirrer meanwhile; left out for its usual speed. */
      readonly speed?: Quantity<"rotationalSpeed">;
      readonly note?: string;
    }
  | {
      readonly do: "heat";
      readonly to: Quantity<"temperature">;
      /** The time that it may take: the plan says whether it does, and what heater would do. */
      readonly within?: Quantity<"time">;
      readonly note?: string;
    }
  | { readonly do: "hold"; readonly for: Quantity<"time">; readonly note?: string }
  | { readonly do: "take off the heat"; readonly note?: string }
  | {
      readonly do: "cool";
      readonly to: Quantity<"temperature">;
      /** `"jacket"` where the vessel's jacket is turned on; else it cools by itself. */
      readonly with?: "jacket";
      /** The time that it may take: the plan says whether it does, and what coolant would do. */
      readonly within?: Quantity<"time">;
      readonly note?: string;
    }
  | { readonly do: "cool"; readonly toViscosity: Quantity<"dynamicViscosity">; readonly note?: string }
  | {
      readonly do: "stir";
      readonly for: Quantity<"time">;
      readonly speed?: Quantity<"rotationalSpeed">;
      readonly note?: string;
    }
  | { readonly do: "fill"; readonly for?: Quantity<"time">; readonly note?: string }
  | { readonly do: "rest"; readonly for: Quantity<"time">; readonly note?: string }
  | ColdStepDocument;

/** A process as data. */
export interface ProcessDocument {
  readonly name: string;
  /** `"hot"` where it is left out. On the cold route everything comes from the room, and only stirring warms it. */
  readonly route?: "hot" | "cold";
  /** Room and material temperature. */
  readonly room: Quantity<"temperature">;
  /** Distance that every part of the charge keeps below its flash point. */
  readonly flashPointMargin?: Quantity<"temperatureDifference">;
  /** Distance that the mix keeps above its setting temperature when something cold goes in. */
  readonly settingMargin?: Quantity<"temperatureDifference">;
  /** Speed of the air over the open vessel, where evaporation is to be predicted. */
  readonly airVelocity?: Quantity<"velocity">;
  /** Air in the melt, where it is asked whether that leaves. */
  readonly air?: AirDocument;
  /** The working day that each lot has to fit, from its first step to the last that somebody has to be there for. */
  readonly workingDay?: {
    readonly length: Quantity<"time">;
    /** Vessels alike that are worked side by side; left out for one. */
    readonly vessels?: number;
    /** Between two lots in one vessel. */
    readonly cleaning?: Quantity<"time">;
  };
  readonly steps: readonly StepDocument[];
}

/** What the gel is filled into. */
export interface PackDocument {
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
