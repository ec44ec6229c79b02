import type { YieldConvention } from "../../rheology/index.js";
import type { Quantity } from "../../units/index.js";

/** Trials of how the strength of the set gel rises with the dose of gel former. */
export interface StrengthTrialsDocument {
  /** What was measured, by one convention throughout. */
  readonly of: "yield stress" | "modulus";
  /** Four at three doses or more, above the threshold; three where that is stated. */
  readonly trials: readonly { readonly gelFormer: Quantity<"massFraction">; readonly strength: Quantity<"pressure"> }[];
  /** Dose that just made no gel. Left out, it is fitted along with the rest. */
  readonly threshold?: Quantity<"massFraction">;
  /** Strength that is wanted, for which the dose is then told. */
  readonly target?: Quantity<"pressure">;
}

/** Rheometer points of the set gel. */
export interface FlowCurveDocument {
  /** Temperature at which they were read. */
  readonly temperature: Quantity<"temperature">;
  readonly points: readonly { readonly shearRate: Quantity<"shearRate">; readonly stress: Quantity<"pressure"> }[];
  /** How the yield stress is read off. Left out, it is that of the model which the points bear out. */
  readonly yieldStressBy?: YieldConvention;
  /** What is done with the gel, in place of the usual: pouring, brushing on, rubbing in. */
  readonly uses?: readonly { readonly use: string; readonly shearRate: Quantity<"shearRate"> }[];
}

/** A gel former that crystallises out of the oil: its dissolving temperature where none was measured. */
export interface IdealSolubilityDocument {
  readonly meltingPoint: Quantity<"temperature">;
  readonly heatOfFusion: Quantity<"molarEnergy">;
  readonly molarMassGelFormer: Quantity<"molarMass">;
  /** A triglyceride is near 0.88 kg/mol. */
  readonly molarMassOil: Quantity<"molarMass">;
}

/** Air that is stirred in. */
export interface AirDocument {
  /** Diameter of the bubbles that have to leave. */
  readonly bubbleDiameter: Quantity<"length">;
  /** `"immobile"`, the slower one, where it is left out. */
  readonly surface?: "immobile" | "mobile";
  /** Time within which the melt is to be clear: how warm, or under which vacuum, is then told. */
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

/** What the set gel is pressed through in use: a pump, the mouth of a tube, a spray. */
export interface NozzleDocument {
  /** Bore. */
  readonly diameter: Quantity<"length">;
  /** What passes in one stroke, and how long it takes. */
  readonly volume: Quantity<"volume">;
  readonly within: Quantity<"time">;
  /** Stated where it is to break up into a spray. */
  readonly spray?: { readonly surfaceTension: Quantity<"surfaceTension"> };
}
