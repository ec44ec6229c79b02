import type { ScaleCriterion, ScheduleForm } from "../../mixing/index.js";
import type { AddStep } from "./step.js";

/** One addition of oil, or one row of a stream. Masses in kg, fractions 0 to 1, times since the step began in s. */
export interface ColdAddition {
  /** Oil that goes in [kg]; of a stream, since the row before. */
  readonly mass: number;
  /** As a share of what is in the vessel [0 to 1]; not of a stream. */
  readonly share?: number;
  /** The most that the bench took up at once there [0 to 1]; not of a stream. */
  readonly shareMax?: number;
  /** Feed rate of a stream [kg/s]. */
  readonly rate?: number;
  /** Then in the vessel [kg]. */
  readonly massInVessel: number;
  /** Of it, oil [kg]. */
  readonly massOil: number;
  /** Then, of oil and gel former. */
  readonly volumeFractionOil: number;
  /** It begins to go in [s]; left out where not known. */
  readonly timeStart?: number;
  /** All of it is in [s]. */
  readonly timeIn?: number;
  /** It is taken up, and the next may follow [s]. */
  readonly timeEnd?: number;
  /** Then, between the bench's readings and at their shear rate [Pa·s]; left out where they do not reach. */
  readonly viscosity?: number;
  /** The same of the yield stress [Pa]. */
  readonly yieldStress?: number;
  /** Then at the shaft, at the speed of the step [N·m]; left out where not known. */
  readonly torque?: number;
  /** Then from the stirrer into the gel [W]. */
  readonly power?: number;
  /** Then in the vessel, the heat of stirring in it as far as it is known [°C]. */
  readonly temperature?: number;
}

/** How one phase of oil goes in. */
export interface ColdAdditions {
  /** Number of the step. */
  readonly step: number;
  readonly phase: string;
  readonly form: ScheduleForm | "as at the bench" | "stream";
  /** What is kept from the bench while an addition is taken up. */
  readonly keeps: AddStep["keeps"];
  /** The factor that this puts on its times, from the first addition to the last; left out where not known. */
  readonly incorporationTimeFactor?: { readonly first: number; readonly last: number };
  /** What the operator sees before the next addition. */
  readonly proceedWhen: string;
  /** Smallest step of an addition [kg]. */
  readonly increment: number;
  /** Of the stirrer meanwhile [rev/s]; left out where nothing says that it turns. */
  readonly speed?: number;
  /** The most that pump or hand delivers [kg/s], where it is stated. */
  readonly rateMax?: number;
  /** Shear rate of the viscosities [1/s], where the bench states it. */
  readonly shearRate?: number;
  readonly rows: readonly ColdAddition[];
  /** Why the times are not known, where they are not. */
  readonly timesNotKnown?: string | undefined;
}

/** What the bench's figures make of the finished gel of the cold route. */
export interface ExpectedGel {
  /** Of oil in oil and gel former. */
  readonly volumeFractionOil?: number;
  /** Sauter mean diameter of the droplets [m], and where it is from. */
  readonly diameter?: number;
  readonly diameterFrom?: string;
  /** Shear modulus of packed droplets by Princen and Kiss [Pa]. */
  readonly modulus?: number;
  /** Their yield stress by Princen and Kiss [Pa]. */
  readonly yieldStressByTheory?: number;
  /** Yield stress as measured [Pa]. */
  readonly yieldStress?: number;
  /** What is not known, and why. */
  readonly notKnown: readonly string[];
}

/** How warm the gel gets by being stirred. */
export interface ColdWarming {
  /** The warmest that it is in the vessel [°C]; left out where not known. */
  readonly temperatureMax?: number;
  /** Steps whose heat of stirring is left out of that, and why. */
  readonly leftOut: readonly { readonly step: number; readonly reason: string }[];
  /** How heat leaves the vessel meanwhile. */
  readonly loss: string;
}

/** What a stirrer does at one speed in the gel with all of its oil in. */
export interface ColdSpeed {
  /** The bench's own, this plan's, or what of the bench's this speed keeps. */
  readonly of: "bench" | "plan" | ScaleCriterion;
  /** [rev/s]. */
  readonly speed: number;
  /** [m/s]. */
  readonly tipSpeed: number;
  /** Mean shear rate [1/s]; left out where not known. */
  readonly shearRate?: number;
  /** [W/m³]. */
  readonly powerPerVolume: number;
  /** [N·m]. */
  readonly torque: number;
  /** Of the stirrer, with the viscosity at that shear rate [-]. */
  readonly reynolds: number;
}

/** Speeds side by side; or why they are not known. */
export type ColdSpeeds = { readonly notKnown: string } | { readonly rows: readonly ColdSpeed[] };

/** What only the cold route has. */
export interface ColdRun {
  readonly additions: readonly ColdAdditions[];
  readonly gel: ExpectedGel;
  /** What stirring does to the temperature. */
  readonly warming: ColdWarming;
  /** The bench's stirrer beside this one; left out where either is not described. */
  readonly speeds?: ColdSpeeds | undefined;
}
