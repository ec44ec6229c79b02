import type { Check, MaterialFunction } from "../formula/index.js";
import type { Regime } from "../mixing/index.js";
import type { ContentBounds } from "../natural-origin/index.js";
import type { ColdRun } from "./cold/plan.js";
import type { AfterFilling, OilThermalExposure, OxidationRank, PlanEvaporation } from "./heat-plan.js";
import type {
  PlanAir,
  PlanFilms,
  PlanFlow,
  PlanGelPoint,
  PlanParticle,
  PlanStrength,
  PlanYieldStress,
} from "./strength/plan.js";

/** One line to weigh. Masses in kg, shares 0 to 1. */
export interface WeighingLine {
  readonly phase: string;
  readonly material: string;
  readonly listingName?: string | undefined;
  readonly function: MaterialFunction;
  /** Share of the finished product. */
  readonly massFraction: number;
  /** Mass before rounding. */
  readonly massExact: number;
  /** Mass to weigh: a whole number of the balance's increments. */
  readonly mass: number;
  readonly balance: string;
  /** Of the balance [kg]. */
  readonly increment: number;
  /** The mass in portions that the balance can carry; they add up to it. */
  readonly portions: readonly number[];
  /** Between which readings the weighing counts as right. */
  readonly tolerance: { readonly min: number; readonly max: number };
}

/** One step at the kettle. What is not known is left out; `basis` says what is missing. */
export interface TimelineStep {
  /** Its place in the process, from 1. */
  readonly number: number;
  /** What to do, for the person at the kettle. */
  readonly instruction: string;
  /** Since the start [s]. */
  readonly timeStart?: number | undefined;
  /** Since the start [s]. */
  readonly timeEnd?: number | undefined;
  /** In the vessel after the step, or in the packs from filling on [kg]. */
  readonly mass: number;
  readonly inPacks: boolean;
  /** Before the step [°C]. */
  readonly temperatureStart?: number | undefined;
  /** After the step [°C]. */
  readonly temperatureEnd?: number | undefined;
  /** Whether the gel has set by the end of the step; left out where that is not known. */
  readonly set?: boolean | undefined;
  /** After the step, while it flows [Pa·s], with the shear rate of the readings; `beyondReadings` where it extends their end. */
  readonly viscosity?:
    | { readonly viscosity: number; readonly shearRate: string; readonly beyondReadings: boolean }
    | undefined;
  /** What the stirrer does at the end of the step, where it turns and the viscosity is known. */
  readonly stirring?:
    | {
        /** [rev/s]. */
        readonly speed: number;
        /** What it gives to the charge [W], all of which becomes heat. */
        readonly power: number;
        /** [N·m]. */
        readonly torque: number;
        /** Of the stirrer, with the viscosity as the stirrer meets it. */
        readonly reynolds: number;
        readonly regime: Regime;
      }
    | undefined;
  /** The law behind time and temperature, or what is missing for it. */
  readonly basis: string;
  readonly note?: string | undefined;
  /** Volume fraction of oil in oil and gel former after the step; on the cold route. */
  readonly volumeFractionOil?: number;
}

/** The natural-origin figure and what it hangs on. */
export interface NaturalOrigin {
  readonly withFormulationWater: ContentBounds;
  readonly withoutFormulationWater?: ContentBounds | undefined;
  /** What keeps the figure from 100 %, greatest first; sums to 1 less the content. */
  readonly shortfalls: readonly { readonly material: string; readonly min: number; readonly max: number }[];
  /** The most gel former [0 to 1] that would keep the claimed figure, the carrier giving way. */
  readonly largestGelFormer?: { readonly material: string; readonly massFraction: number } | undefined;
}

/** When each lot is made; or why that is not known. */
export type PlanLotOrder =
  | { readonly notKnown: string }
  | {
      /** By lot, and within it by time. */
      readonly entries: readonly {
        /** From 1. */
        readonly lot: number;
        /** Number of the step and what it does. */
        readonly stage: string;
        /** From 1. */
        readonly day: number;
        /** Since the day's work began [s]. */
        readonly start: number;
        /** Since the day's work began [s]; beyond the day for packs at rest. */
        readonly end: number;
      }[];
      /** Working days for all lots. */
      readonly days: number;
      /** Length of the working day [s]; left out where none is stated, and lots follow round the clock. */
      readonly workingDay?: number | undefined;
    };

/** Cost of the materials of the whole batch, all lots [currency]; or why it is not known. */
export type PlanCost =
  | { readonly notKnown: string }
  | {
      readonly currency: string;
      readonly batch: number;
      readonly perKilogram: number;
      readonly perPack?: number | undefined;
    };

/** What changes with the size of the vessel. What is not known is left out. */
export interface ScaleMetrics {
  /** Wall, bottom and surface of the filling over its volume at 20 °C [1/m]. */
  readonly surfaceToVolume?: number;
  /** All steps that heat [s]. */
  readonly durationHeating?: number;
  /** All steps that cool in the vessel [s]. */
  readonly durationCooling?: number;
  /** From the last charge until it sets, if the vessel is left to cool [s]: the time there is to stir and fill in. */
  readonly durationToSet?: number;
  /** What of that is left once the packs are full [s]; below 0 where it sets before. */
  readonly durationMargin?: number;
  /** Of the stirrer at its rim, where it works hardest [m/s]. */
  readonly tipSpeed?: number;
  /** Mean shear rate there [1/s]. */
  readonly shearRate?: number;
  /** From the stirrer into the charge there [W]. */
  readonly power?: number;
  /** At the shaft there [N·m]. */
  readonly torque?: number;
  /** On the cold route: how many additions of oil there are; 0 where all of it is streamed in. */
  readonly additions?: number;
  /** The first of them [kg]. */
  readonly massFirstAddition?: number;
  /** Oil by volume of oil and gel former in the end. */
  readonly volumeFractionOil?: number;
  /** From the first addition of a phase until all of it is taken up, all phases together [s]. */
  readonly durationAdding?: number;
  /** The warmest that stirring makes it [°C]. */
  readonly temperatureMax?: number;
}

/** The run of a job: everything that stands on the batch sheet, in the units of the kernels. */
export interface Plan {
  readonly version: 1;
  readonly formula: string;
  readonly process: string;
  readonly vessel: string;
  readonly pack?: string | undefined;
  /** How many equal lots, and what one of them holds: the figures below are for one lot. */
  readonly lots: {
    readonly count: number;
    /** Finished product asked for [kg], and what the weighed charge will bring. */
    readonly deliveredTarget: number;
    readonly delivered: number;
    /** Packs of one lot, where packs were asked for. */
    readonly packs?: number | undefined;
    /** Charge [kg] and its volume at 20 °C [m³], where every density is known. */
    readonly charge: number;
    readonly volume?: number | undefined;
  };
  readonly weighing: {
    readonly lines: readonly WeighingLine[];
    /** What the lines add up to as weighed [kg]. */
    readonly total: number;
    /** The total that was wanted; `onGrid` tells whether the balances can reach it exactly. */
    readonly totalTarget: number;
    readonly onGrid: boolean;
  };
  /** What the process takes from one lot [kg], in its order. */
  readonly allowances: readonly { readonly name: string; readonly mass: number }[];
  readonly timeline: readonly TimelineStep[];
  /** What changes with the size of the vessel, for `comparePlans`. */
  readonly scale: ScaleMetrics;
  /** When each lot is made, where there are several or a working day is stated. */
  readonly lotOrder?: PlanLotOrder | undefined;
  /** What happens in the pack. */
  readonly afterFilling: AfterFilling;
  /** When particles may go in, and what holds them. */
  readonly particles: readonly PlanParticle[];
  /** Where the finished melt sets and dissolves, as far as that is known. */
  readonly gelPoints: readonly PlanGelPoint[];
  /** The yield stress of the set gel, where anything says it. */
  readonly yieldStress?: PlanYieldStress | undefined;
  /** What trials let expect of the dose. */
  readonly strength?: PlanStrength | undefined;
  /** What rheometer points say. */
  readonly flow?: PlanFlow | undefined;
  readonly films: PlanFilms;
  /** Whether air leaves, where a bubble is asked about. */
  readonly air?: PlanAir | undefined;
  /** What the materials that are to be spared went through. */
  readonly thermalExposures: readonly OilThermalExposure[];
  /** The oils, ranked: what waiting until the heat is off would spare most comes first. */
  readonly oxidationRanking: readonly OxidationRank[];
  /** What the volatile materials lose. */
  readonly evaporation: readonly PlanEvaporation[];
  readonly naturalOrigin: NaturalOrigin;
  /** Additions of oil and the gel to be expected; only on the cold route. */
  readonly cold?: ColdRun;
  readonly cost: PlanCost;
  readonly checks: readonly Check[];
  readonly cautions: readonly string[];
  /** Where the figures of the documents come from. */
  readonly sources: readonly { readonly of: string; readonly source: string }[];
}
