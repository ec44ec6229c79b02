import type { ScheduleForm } from "../../mixing/index.js";
import type { AddStep } from "./step.js";

/** One addition of oil, or one row of a stream. Masses in kg, fractions 0 to 1, times since the step began in s. */
export interface ColdAddition {
  /** Oil that goes in [kg]; of a stream, since the row before. */
  readonly mass: number;
  /** As a share of what is in the vessel [0 to 1]; not of a stream. */
  readonly share?: number;
  /** The most that the bench took up at once there [0 to 1]; not of a stream. */
  readonly shareGreatest?: number;
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
  /** Then, between the bench's readings [Pa·s]; left out where they do not reach. */
  readonly viscosity?: number;
  /** The same of the yield stress [Pa]. */
  readonly yieldStress?: number;
}

/** How one phase of oil goes in. */
export interface ColdAdditions {
  /** Number of the step. */
  readonly step: number;
  readonly phase: string;
  readonly form: ScheduleForm | "as at the bench" | "stream";
  /** What is kept from the bench while an addition is taken up. */
  readonly keeps: AddStep["keeps"];
  /** The factor that this puts on its times; left out where not known. */
  readonly uptakeFactor?: number;
  /** What the operator sees before the next addition. */
  readonly before: string;
  /** Smallest step of an addition [kg]. */
  readonly increment: number;
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

/** What only the cold route has. */
export interface ColdRun {
  readonly additions: readonly ColdAdditions[];
  readonly gel: ExpectedGel;
}
