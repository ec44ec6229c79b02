import { type Entry, fields, listOf, maybe, plain, quantity, text } from "../../formula/entry.js";
import type { RefractiveIndexDocument } from "../../formula/index.js";
import { refractiveIndex } from "../../formula/schema.js";
import type { Quantity } from "../../units/index.js";
import { type StirrerDocument, stirrer } from "./stirrer.js";

/** What the bench found out about oil that is stirred into a gel former as droplets. What is left out is not known. */
export interface EmulsionDocument {
  /** Name of the phase that is the outer phase: the gel former. Whatever is charged from other phases, particles aside, is oil that goes into it. */
  readonly outerPhase: string;
  /** Volume fraction of oil at which trials inverted or broke: the gel stays below it. */
  readonly volumeFractionOilMax?: Quantity<"volumeFraction">;
  /** The largest share that was taken up at once, of what was in the vessel, against the oil in it by then. One entry holds throughout. */
  readonly additionShareMax?: readonly {
    readonly oil: Quantity<"volumeFraction">;
    readonly share: Quantity<"massFraction">;
  }[];
  /** The additions that were taken up one by one, instead of shares or beside them. */
  readonly additions?: { readonly gelFormer: Quantity<"mass">; readonly oil: readonly Quantity<"mass">[] };
  /** Time until an addition was uniform and glossy, against the oil once it was in. One entry holds throughout. */
  readonly incorporationTime?: readonly {
    readonly oil: Quantity<"volumeFraction">;
    readonly time: Quantity<"time">;
  }[];
  /** How it was stirred meanwhile. */
  readonly stirring?: {
    /** With the speed that it had. */
    readonly stirrer: StirrerDocument;
    /** Inner diameter of the vessel; energy per volume needs it, and the gel former. */
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
  /** The shear that made the droplets, from which their size is estimated if it was not measured. */
  readonly shear?: {
    readonly rate: Quantity<"shearRate">;
    readonly viscosityOil: Quantity<"dynamicViscosity">;
    /** Of the gel at that shear rate. */
    readonly viscosityEmulsion: Quantity<"dynamicViscosity">;
  };
  /** Which material is the surfactant, and the area of droplets that one gram of its active part covers. */
  readonly surfactant?: { readonly material: string; readonly areaPerGram: Quantity<"area"> };
  /** Refractive index of the gel former, as measured, with all that is dissolved in it; default from its materials. */
  readonly gelFormerIndex?: RefractiveIndexDocument;
  /** Difference of the two refractive indices that was still clear enough. */
  readonly mismatchAllowed?: number;
  /** Of the gel former, as measured, 0 to 1; default from glycerin and water by two laws. */
  readonly waterActivity?: number;
  /** The air that was stirred in: its bubbles, and how thick the gel is while it leaves. */
  readonly air?: {
    readonly bubbleDiameter: Quantity<"length">;
    /** Of the gel at rest, or as slowly stirred as while it leaves. */
    readonly viscosity: Quantity<"dynamicViscosity">;
  };
}

/** Readings of a rheometer along the way. Power and torque take all of it; viscosity or yield stress alone is given as it was read. */
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

const above = { above: 0 } as const;
const oil = quantity("volumeFraction", { min: 0, max: 1 });
const viscosity = quantity("dynamicViscosity", above);

/** Reads what the bench found out about an emulsion. */
export const emulsion: Entry<EmulsionDocument> = fields<EmulsionDocument>({
  outerPhase: text,
  volumeFractionOilMax: maybe("reading", quantity("volumeFraction", { above: 0, max: 1 })),
  additionShareMax: maybe(
    "reading",
    listOf(
      fields<NonNullable<EmulsionDocument["additionShareMax"]>[number]>({
        oil,
        share: quantity("massFraction", above),
      }),
      1,
    ),
  ),
  additions: maybe(
    "reading",
    fields<NonNullable<EmulsionDocument["additions"]>>({
      gelFormer: quantity("mass", above),
      oil: listOf(quantity("mass", above), 1),
    }),
  ),
  incorporationTime: maybe(
    "reading",
    listOf(
      fields<NonNullable<EmulsionDocument["incorporationTime"]>[number]>({ oil, time: quantity("time", above) }),
      1,
    ),
  ),
  stirring: maybe(
    "reading",
    fields<NonNullable<EmulsionDocument["stirring"]>>({
      stirrer,
      diameter: maybe("reading", quantity("length", above)),
      gelFormer: maybe("reading", quantity("mass", above)),
    }),
  ),
  thickness: maybe(
    "reading",
    fields<ThicknessDocument>({
      shearRate: maybe("reading", quantity("shearRate", above)),
      readings: listOf(
        fields<ThicknessDocument["readings"][number]>({
          oil,
          viscosity: maybe("reading", viscosity),
          flowIndex: maybe("reading", plain({ above: 0, max: 2 })),
          yieldStress: maybe("reading", quantity("pressure", above)),
        }),
        1,
      ),
    }),
  ),
  dropletDiameter: maybe("reading", quantity("length", above)),
  interfacialTension: maybe("reading", quantity("surfaceTension", above)),
  shear: maybe(
    "reading",
    fields<NonNullable<EmulsionDocument["shear"]>>({
      rate: quantity("shearRate", above),
      viscosityOil: viscosity,
      viscosityEmulsion: viscosity,
    }),
  ),
  surfactant: maybe(
    "property",
    fields<NonNullable<EmulsionDocument["surfactant"]>>({ material: text, areaPerGram: quantity("area", above) }),
  ),
  gelFormerIndex: maybe("reading", refractiveIndex),
  mismatchAllowed: maybe("reading", plain({ min: 0 })),
  waterActivity: maybe("reading", plain({ min: 0, max: 1 })),
  air: maybe(
    "reading",
    fields<NonNullable<EmulsionDocument["air"]>>({ bubbleDiameter: quantity("length", above), viscosity }),
  ),
});
