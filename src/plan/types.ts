import type { BatchDocument } from "../batch/index.js";
import type { FormulaDocument } from "../formula/index.js";
import type { Quantity } from "../units/index.js";
import type { ColdBenchDocument, ColdStepDocument } from "./cold/types.js";
import type {
  AirDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  NozzleDocument,
  StrengthTrialsDocument,
} from "./strength/types.js";

/** A vessel, flat-bottomed and upright, with what heats it and what it loses. */
export interface VesselDocument {
  readonly name: string;
  /** Least volume that covers the impeller, and greatest that leaves room to stir. */
  readonly workingVolume: { readonly least: Quantity<"volume">; readonly greatest: Quantity<"volume"> };
  /** Inner diameter. */
  readonly diameter: Quantity<"length">;
  /** What heats it. */
  readonly heater?: {
    readonly power: Quantity<"power">;
    /** Highest temperature of the hot plate, bath or jacket, where one limits it; `heatedWall` then says how heat passes. */
    readonly highest?: Quantity<"temperature">;
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

/** A stirrer: what of it is told decides what the plan can say of power, heat, shear, evenness and air. */
export interface StirrerDocument {
  /** Its kind, which has a correlation for the heat at the wall; `"other"` has none. */
  readonly kind: StirrerKind;
  /** Swept diameter. */
  readonly diameter: Quantity<"length">;
  /** Usual speed, while the vessel is heated and cooled. */
  readonly speed?: Quantity<"rotationalSpeed">;
  /** Power number times Reynolds number where the charge creeps: measured, or from its maker. */
  readonly powerConstant?: number;
  /** Power number where the flow is turbulent: measured, or from its maker. */
  readonly powerNumber?: number;
  /** Mean shear rate in the charge over speed (Metzner and Otto). */
  readonly shearConstant?: number;
  /** Revolutions until an addition is even where the charge creeps, counted on this stirrer. */
  readonly revolutionsUntilEven?: number;
  /** Height of its upper edge above the lowest point of the vessel. */
  readonly topEdge?: Quantity<"length">;
  /** What has to stand above that; left out for nothing. */
  readonly cover?: Quantity<"length">;
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
  readonly coldRoute?: ColdBenchDocument;
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
  /** `"hot"` where it is left out. On the cold route everything is at the room's temperature. */
  readonly route?: "hot" | "cold";
  /** Room and material temperature. */
  readonly room: Quantity<"temperature">;
  /** Distance that every part of the charge keeps below its flash point. */
  readonly belowFlashPoint?: Quantity<"temperatureDifference">;
  /** Distance that the mix keeps above its setting temperature when something cold goes in. */
  readonly aboveSetting?: Quantity<"temperatureDifference">;
  /** Speed of the air over the open vessel, where evaporation is to be predicted. */
  readonly airSpeed?: Quantity<"velocity">;
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
