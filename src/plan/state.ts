import type { ScaledBatch } from "../batch/index.js";
import type { Segment } from "../heat/index.js";
import type { Charge } from "./charge.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Content } from "./contents.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import type { Portion } from "./portions.js";
import type { Step } from "./step-documents.js";
import type { Cell } from "./unknown.js";

/** The vessel, or the packs, between two steps. */
export interface State {
  readonly charge: Charge;
  readonly onHeat: boolean;
  readonly inPacks: boolean;
  /** Time since the start [s]. */
  readonly time: Cell<number>;
  /** Temperature of the charge [°C]. */
  readonly temperature: Cell<number>;
}

/** One stirred state: a step, or one addition of it. */
export interface Turn {
  /** Number of the step, from 1. */
  readonly step: number;
  /** Number of the addition, from 1. */
  readonly addition?: number;
  /** [rev/s]; not known if the stirrer turns at a speed that is not stated. */
  readonly speed: Cell<number>;
  readonly state: State;
}

/** One addition of oil by a schedule, or one row of a stream. Masses in kg, fractions 0 to 1, times since the step began in s. */
export interface AdditionRow {
  /** Oil that goes in [kg]; of a stream, since the row before. */
  readonly mass: number;
  /** As a share of what is in the vessel [0 to 1]; not of a stream. */
  readonly share?: number;
  /** The largest share that the bench took up at once there [0 to 1]; not of a stream. */
  readonly shareMax?: number;
  /** Feed rate of a stream [kg/s]. */
  readonly rate?: number;
  /** Then in the vessel [kg]. */
  readonly massInVessel: number;
  /** Of it, oil [kg]. */
  readonly massOil: number;
  /** Then, of oil and gel former. */
  readonly volumeFractionOil: number;
  /** It begins to go in [s]. */
  readonly timeStart?: number;
  /** All of it is in [s]. */
  readonly timeIn?: number;
  /** It is taken up, and the next may follow [s]. */
  readonly timeEnd?: number;
  /** Then, between the bench's readings and at their shear rate [Pa·s]. */
  readonly viscosity?: number;
  /** The same of the yield stress [Pa]. */
  readonly yieldStress?: number;
  /** Then at the shaft [N·m]. */
  readonly torque?: number;
  /** Its lower end, by how sure the power of the stirrer is [N·m]. */
  readonly torqueMin?: number;
  /** Its upper end, likewise [N·m]. */
  readonly torqueMax?: number;
  /** Then from the stirrer into the gel [W]. */
  readonly power?: number;
  /** The stirrer meanwhile [rev/s], where it follows the oil fraction. */
  readonly speed?: number;
  /** Then in the vessel, with the heat of stirring as far as it is known [°C]. */
  readonly temperature?: number;
}

/** A schedule by which a phase of oil goes in. */
export interface Schedule {
  readonly phase: string;
  readonly form: "largest" | "equal" | "geometric" | "as at the bench" | "stream";
  readonly keeps: "time" | "revolutions" | "tip travel" | "energy per volume" | "strain";
  readonly proceedWhen?: string;
  /** Smallest step of an addition [kg]. */
  readonly increment: number;
  /** Of the stirrer meanwhile [rev/s]; left out where it follows the oil fraction. */
  readonly speed?: number;
  /** The most that pump or hand delivers [kg/s]. */
  readonly rateMax?: number;
  readonly rows: readonly AdditionRow[];
  /** The factor on the bench's times, from the first addition to the last; or why times are not known. */
  readonly factor: Cell<{ readonly first: number; readonly last: number }>;
}

/** What a step does. */
export interface Outcome {
  readonly charge?: Charge;
  readonly onHeat?: boolean;
  readonly inPacks?: boolean;
  /** [s]. */
  readonly duration: Cell<number>;
  /** Between which ends it lies by how sure the laws of a wall are [s]; `null` is open. Left out where no wall decides. */
  readonly durationEnds?: Cell<{ readonly min: number; readonly max: number | null }>;
  /** [°C]. */
  readonly temperature: Cell<number>;
  /** How cool what is left in the vessel may be at the end [°C]: it may go on losing as much heat as when the vessel was full; `null` if nothing bounds it. Left out where nothing leaves the vessel. */
  readonly coolest?: Cell<number | null>;
  /** How warm that may be, if something warms the vessel [°C]: it may warm what is left faster; `null` if nothing bounds it. Left out where nothing does. */
  readonly warmest?: Cell<number | null>;
  /** What the charge goes through, for what accumulates on the way. */
  readonly segments: Cell<readonly Segment[]>;
  /** What time and temperature rest on, and what is taken for granted in them. */
  readonly basis?: Cell<readonly Basis[]>;
  readonly assumptions?: Cell<readonly AssumptionCode[]>;
  /** The temperature that the step asks for, and how near the vessel comes to it by what is known [°C]. */
  readonly reaches?: {
    readonly direction: "heating" | "cooling";
    readonly asked: Cell<number>;
    readonly reached: Cell<number>;
  };
  readonly schedule?: Cell<Schedule>;
  /** The stirrer at its end [rev/s], where it changes on the way. */
  readonly speed?: Cell<number>;
  /** The additions that are stirred in, one by one, where the step has several. */
  readonly turns?: Cell<readonly Turn[]>;
  /** The medium of a jacket that keeps the charge warm off the heat [°C]. */
  readonly warmedBy?: number;
}

/** One step that was run. */
export interface Moment<Own extends Step = Step> extends Outcome {
  readonly step: Own;
  /** From 1. */
  readonly number: number;
  readonly before: State;
  readonly after: State;
  /** What it charges, as it is weighed; left out where it charges nothing. */
  readonly portion?: Portion;
  /** The stirrer meanwhile [rev/s]; left out where it does not turn, or where there is none. */
  readonly speed?: Cell<number>;
}

/** What a step is run with. */
export interface Work {
  readonly job: Job;
  /** What the step charges of what was weighed for one lot. */
  readonly charged: readonly Content[];
  readonly scaled: ScaledBatch;
  /** Number of the step, from 1. */
  readonly number: number;
  /** The stirrer in this step [rev/s]. */
  readonly speed: Cell<number> | undefined;
}

/** The run of a job: every state that it comes through. */
export interface Run {
  readonly job: Job;
  readonly scaled: ScaledBatch;
  readonly weighed: readonly Content[];
  readonly moments: readonly Moment[];
  /** Every stirred state, in order. */
  readonly turns: readonly Turn[];
  /** Runs other steps over the same lot from an empty vessel, with what was weighed in other phases. */
  readonly again: (steps: readonly Step[], weighed: readonly Content[]) => Run;
}
