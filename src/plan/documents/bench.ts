import { type Entry, fields, kinds, listOf, maybe, plain, quantity, text, word } from "../../formula/entry.js";
import type { LineDocument } from "../../formula/index.js";
import type { Read } from "../../formula/read-type.js";
import { line } from "../../formula/schema.js";
import type { YieldConvention } from "../../rheology/index.js";
import type { Quantity } from "../../units/index.js";
import { type EmulsionDocument, emulsion } from "./emulsion.js";
import { type InUseDocument, inUse } from "./in-use.js";
import { type TakenDocument, taken } from "./viscometer.js";

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
  /** Gel former in the beaker, if it was another dose than that of the bench's formula. */
  readonly gelFormer?: Quantity<"massFraction">;
  /** Whether it was being heated or cooled: a gel does not thicken where it dissolves. */
  readonly direction: "heating" | "cooling";
  /** Shear rate at which it was measured; of readings as they were taken it follows from the cylinder and its speed. */
  readonly shearRate?: Quantity<"shearRate">;
  /** Slope of stress against shear rate there, on logarithmic axes, for a melt that thins under shear: carries the readings to the shear rate of the stirrer. Default: it does not thin. */
  readonly flowIndex?: number;
  /** At least two temperatures; between them a monotone curve through ln viscosity against 1/T. */
  readonly readings?: readonly {
    /** Temperature of the reading. */
    readonly at: Quantity<"temperature">;
    /** What was read. */
    readonly viscosity: Quantity<"dynamicViscosity">;
  }[];
  /** Instead of readings. */
  readonly law?: ViscosityLawDocument;
  /** Instead of both: torques of a cylinder in a cup, as the viscometer gave them. */
  readonly taken?: TakenDocument;
}

/** The formula that was on the bench, of the materials of the job's formula. */
export interface BenchFormulaDocument {
  readonly name: string;
  /** Its phases, by the names of the job's formula. */
  readonly phases: readonly { readonly name: string; readonly lines: readonly LineDocument[] }[];
}

/** What the bench found out about this gel. */
export interface BenchDocument {
  /** Where and when it was measured. */
  readonly source: string;
  /** The formula that was measured; default the job's own. Its readings hold for a charge within `tolerance` of it. */
  readonly formula?: BenchFormulaDocument;
  /** How far the share of a material may be from the bench's, for its readings to hold; default 0.5 % of the charge (common practice, no source). */
  readonly tolerance?: Quantity<"massFraction">;
  /** Working range of oil per gel former, by mass, found in trials. */
  readonly oilPerGelFormer?: { readonly min: number; readonly max: number };
  /** Setting and dissolving temperature at one or more doses of gel former. */
  readonly doses?: readonly {
    readonly gelFormer: Quantity<"massFraction">;
    readonly setsAt: Quantity<"temperature">;
    readonly dissolvesAt: Quantity<"temperature">;
  }[];
  readonly viscosities?: readonly ViscosityDocument[];
  /** Lets the curve of the nearest composition stand in for one that was not read (another dose, another oil, a missing phase), shifted with the setting temperature; what rests on it is then never met. Default: not known. */
  readonly viscosityShift?: "with the setting temperature";
  /** Above this it can no longer be stirred in without tearing the gel or drawing in air. */
  readonly stirrableViscosityMax?: Quantity<"dynamicViscosity">;
  /** Above this it no longer runs into the pack and levels there. */
  readonly pourableViscosityMax?: Quantity<"dynamicViscosity">;
  /** Yield stress of the set gel at room temperature. It goes before what flow curve and trials say. */
  readonly yieldStress?: Quantity<"pressure">;
  /** Trials of dose against strength. */
  readonly strengthTrials?: StrengthTrialsDocument;
  /** Rheometer points of the set gel. */
  readonly flowCurve?: FlowCurveDocument;
  /** For a gel former that crystallises: the ideal dissolving temperature, if none was measured. */
  readonly idealSolubility?: IdealSolubilityDocument;
  /** How far particles may settle before the gel has set. */
  readonly settlingAllowed?: Quantity<"length">;
  /** What it found out about oil that is stirred into a gel former as droplets. */
  readonly emulsion?: EmulsionDocument;
  /** How the gel is used: what is then said of it has no verdict. */
  readonly inUse?: InUseDocument;
}

/** Trials of how the strength of the set gel rises with the dose of gel former. */
export interface StrengthTrialsDocument {
  /** What was measured, by one convention throughout. */
  readonly of: "yield stress" | "modulus";
  /** Four at three doses or more, above the threshold; three if that is stated. */
  readonly trials: readonly { readonly gelFormer: Quantity<"massFraction">; readonly strength: Quantity<"pressure"> }[];
  /** Dose that just made no gel; default fitted along with the rest. */
  readonly threshold?: Quantity<"massFraction">;
  /** Strength that is wanted, for which the dose is then given. */
  readonly target?: Quantity<"pressure">;
}

/** Rheometer points of the set gel. */
export interface FlowCurveDocument {
  /** Temperature at which they were read. */
  readonly temperature: Quantity<"temperature">;
  readonly points: readonly { readonly shearRate: Quantity<"shearRate">; readonly stress: Quantity<"pressure"> }[];
  /** How the yield stress is read off; default by the model that fits the points best. */
  readonly yieldStressBy?: YieldConvention;
  /** What is done with the gel; default pouring, brushing on and rubbing in. */
  readonly uses?: readonly { readonly use: string; readonly shearRate: Quantity<"shearRate"> }[];
}

/** A gel former that crystallises out of the oil: its dissolving temperature if none was measured. */
export interface IdealSolubilityDocument {
  readonly meltingPoint: Quantity<"temperature">;
  readonly heatOfFusion: Quantity<"molarEnergy">;
  readonly molarMassGelFormer: Quantity<"molarMass">;
  /** A triglyceride is near 0.88 kg/mol. */
  readonly molarMassOil: Quantity<"molarMass">;
}

const above = { above: 0 } as const;
const dose = quantity("massFraction", { above: 0, max: 1 });
const temperature = quantity("temperature");
const viscosity = quantity("dynamicViscosity", above);
const shearRate = quantity("shearRate", { min: 0 });
const stress = quantity("pressure", above);

const law = kinds<ViscosityLawDocument>("law", [
  fields<Extract<ViscosityLawDocument, { law: "andrade" }>>({
    law: word("andrade"),
    factor: viscosity,
    activationEnergy: quantity("molarEnergy", above),
  }),
  fields<Extract<ViscosityLawDocument, { law: "vogel-fulcher-tammann" }>>({
    law: word("vogel-fulcher-tammann"),
    factor: viscosity,
    coefficient: quantity("temperatureDifference", above),
    temperatureVogel: temperature,
  }),
]);

/** Reads what the bench found. */
export const bench: Entry<BenchDocument> = fields<BenchDocument>({
  source: text,
  formula: maybe(
    "identity",
    fields<BenchFormulaDocument>({
      name: text,
      phases: listOf(fields<BenchFormulaDocument["phases"][number]>({ name: text, lines: listOf(line, 1) }), 1),
    }),
  ),
  tolerance: maybe("wish", quantity("massFraction", { min: 0, max: 1 })),
  oilPerGelFormer: maybe(
    "reading",
    fields<NonNullable<BenchDocument["oilPerGelFormer"]>>({ min: plain({ min: 0 }), max: plain({ min: 0 }) }),
  ),
  doses: maybe(
    "reading",
    listOf(
      fields<NonNullable<BenchDocument["doses"]>[number]>({
        gelFormer: dose,
        setsAt: temperature,
        dissolvesAt: temperature,
      }),
    ),
  ),
  viscosities: maybe(
    "reading",
    listOf(
      fields<ViscosityDocument>({
        phases: listOf(text, 1),
        gelFormer: maybe("identity", dose),
        direction: word("heating", "cooling"),
        shearRate: maybe("reading", shearRate),
        flowIndex: maybe("reading", plain({ above: 0, max: 2 })),
        readings: maybe(
          "reading",
          listOf(fields<NonNullable<ViscosityDocument["readings"]>[number]>({ at: temperature, viscosity }), 2),
        ),
        law: maybe("reading", law),
        taken: maybe("reading", taken),
      }),
    ),
  ),
  viscosityShift: maybe("wish", word("with the setting temperature")),
  stirrableViscosityMax: maybe("reading", viscosity),
  pourableViscosityMax: maybe("reading", viscosity),
  yieldStress: maybe("reading", quantity("pressure", { min: 0 })),
  strengthTrials: maybe(
    "reading",
    fields<StrengthTrialsDocument>({
      of: word("yield stress", "modulus"),
      trials: listOf(fields<StrengthTrialsDocument["trials"][number]>({ gelFormer: dose, strength: stress })),
      threshold: maybe("reading", quantity("massFraction", { min: 0, max: 1 })),
      target: maybe("wish", stress),
    }),
  ),
  flowCurve: maybe(
    "reading",
    fields<FlowCurveDocument>({
      temperature,
      points: listOf(
        fields<FlowCurveDocument["points"][number]>({ shearRate: quantity("shearRate", above), stress }),
        1,
      ),
      yieldStressBy: maybe(
        "wish",
        word("herschel-bulkley", "bingham", "casson", "casson-regression", "lowest-rate", "viscosity-maximum"),
      ),
      uses: maybe(
        "wish",
        listOf(
          fields<NonNullable<FlowCurveDocument["uses"]>[number]>({
            use: text,
            shearRate: quantity("shearRate", above),
          }),
        ),
      ),
    }),
  ),
  idealSolubility: maybe(
    "property",
    fields<IdealSolubilityDocument>({
      meltingPoint: temperature,
      heatOfFusion: quantity("molarEnergy", above),
      molarMassGelFormer: quantity("molarMass", above),
      molarMassOil: quantity("molarMass", above),
    }),
  ),
  settlingAllowed: maybe("wish", quantity("length", above)),
  emulsion: maybe("identity", emulsion),
  inUse: maybe("wish", inUse),
});

/** What was found at the bench, as it was read. */
export type Bench = Read<BenchDocument>;
