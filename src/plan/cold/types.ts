import type { RefractiveIndexDocument } from "../../formula/index.js";
import type { Quantity } from "../../units/index.js";
import type { StirrerDocument } from "../vessel-document.js";

/** What the bench found out about the cold route. What is left out is not known, and is never guessed. */
export interface EmulsionDocument {
  /** Volume fraction of oil at which trials inverted or broke: the gel stays below it. */
  readonly volumeFractionOilMax?: Quantity<"volumeFraction">;
  /** The most that was taken up at once, as a share of what was in the vessel, against the oil in it by then. One entry holds throughout. */
  readonly additionShareMax?: readonly {
    readonly oil: Quantity<"volumeFraction">;
    readonly share: Quantity<"massFraction">;
  }[];
  /** The additions that were taken up one by one, in place of shares or beside them. */
  readonly additions?: { readonly gelFormer: Quantity<"mass">; readonly oil: readonly Quantity<"mass">[] };
  /** Time until an addition was uniform and glossy, against the oil once it was in. One entry holds throughout. */
  readonly incorporationTime?: readonly { readonly oil: Quantity<"volumeFraction">; readonly time: Quantity<"time"> }[];
  /** How it was stirred meanwhile. */
  readonly stirring?: {
    /** With the speed that it had. */
    readonly stirrer: StirrerDocument;
    /** Inner diameter of the vessel; with the gel former, energy per volume needs it. */
    readonly diameter?: Quantity<"length">;
    /** How much gel former the oil was stirred into. */
    readonly gelFormer?: Quantity<"mass">;
  };
  /** How thick it was at some oil fractions: gel former and oil, without particles, at the room's temperature. */
  readonly thickness?: ThicknessDocument;
  /** Sauter mean diameter of the droplets, as measured. */
  readonly dropletDiameter?: Quantity<"length">;
  /** Of oil against gel former, with its surfactant. */
  readonly interfacialTension?: Quantity<"surfaceTension">;
  /** The shear that made the droplets, from which their size is estimated where it was not measured. */
  readonly shear?: {
    readonly rate: Quantity<"shearRate">;
    readonly viscosityOil: Quantity<"dynamicViscosity">;
    /** Of the gel at that shear rate. */
    readonly viscosityEmulsion: Quantity<"dynamicViscosity">;
  };
  /** Which material is the surfactant, and the area of droplets that one gram of its active part covers. */
  readonly surfactant?: { readonly material: string; readonly areaPerGram: Quantity<"area"> };
  /** Of the gel former, as measured, with all that is dissolved in it; else from its materials. */
  readonly gelFormerIndex?: RefractiveIndexDocument;
  /** Difference of the two refractive indices that was still clear enough. */
  readonly mismatchAllowed?: number;
  /** Of the gel former, as measured, 0 to 1; else from glycerin and water by two laws. */
  readonly waterActivity?: number;
  /** The air that was stirred in: its bubbles, and how thick the gel is while it leaves. */
  readonly air?: {
    readonly bubbleDiameter: Quantity<"length">;
    /** Of the gel at rest, or as slowly stirred as while it leaves. */
    readonly viscosity: Quantity<"dynamicViscosity">;
  };
}

/** Readings of a rheometer along the way. What a stirrer asks for takes all of it; viscosity or yield stress alone is told as it was read. */
export interface ThicknessDocument {
  /** Shear rate at which the viscosities were read. */
  readonly shearRate?: Quantity<"shearRate">;
  readonly readings: readonly {
    readonly oil: Quantity<"volumeFraction">;
    readonly viscosity?: Quantity<"dynamicViscosity">;
    /** Slope of stress against shear rate on logarithmic axes, the yield stress taken off; 1 for one that does not thin. */
    readonly flowIndex?: number;
    readonly yieldStress?: Quantity<"pressure">;
  }[];
}

/** What is done on the cold route and on no other. */
export type ColdStepDocument =
  | {
      /** Stirs a phase of oil in by a schedule. */
      readonly do: "add";
      readonly phase: string;
      /** How the additions grow; `"as at the bench"` takes the bench's own. `"largest"` where the bench states shares. */
      readonly additions?: "largest" | "equal" | "geometric" | "as at the bench" | "stream";
      /** What is kept from the bench while an addition is taken up; `"time"` where it is left out. */
      readonly keeps?: "time" | "revolutions" | "tip travel" | "energy per volume" | "strain";
      readonly speed?: Quantity<"rotationalSpeed">;
      /** The most that pump or hand delivers. */
      readonly pump?: { readonly mass: Quantity<"mass">; readonly in: Quantity<"time"> };
      /** Smallest step to which an addition can be read; that of the balance for the phase where it is left out. */
      readonly increment?: Quantity<"mass">;
      /** What the operator sees before the next addition goes in. */
      readonly proceedWhen?: string;
      readonly note?: string;
    }
  /** Compares oil and gel former through the gel. */
  | { readonly do: "match clarity"; readonly note?: string }
  | {
      /** Lets the air out, under the pressure of the room or less. */
      readonly do: "de-aerate";
      readonly for: Quantity<"time">;
      /** Absolute pressure over the gel. */
      readonly pressure?: Quantity<"pressure">;
      /** Slow stirring, so that the gel yields and lets the bubbles rise. */
      readonly speed?: Quantity<"rotationalSpeed">;
      readonly note?: string;
    };
