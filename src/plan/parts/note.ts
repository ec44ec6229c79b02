import type { NoteCode } from "../codes/notes.js";
import type { Ends } from "../contents.js";
import type { NotKnown } from "../figure.js";
import type { Reason } from "../unknown.js";

/** Something to know that no verdict is given on: its code, and what numbers there are. */
export interface Note {
  readonly code: NoteCode;
  /** Of the set gel [Pa]. */
  readonly yieldStress?: number;
  /** At the wall of the nozzle [-]. */
  readonly ohnesorge?: number;
  /** An addition of the bench, from 1. */
  readonly addition?: number;
  /** How many there are of the kind. */
  readonly count?: number;
  /** A share [0 to 1]. */
  readonly share?: number;
  /** The largest that is stated or usual [0 to 1]. */
  readonly shareMax?: number;
  /** What it is about, in the caller's words. */
  readonly of?: string;
  /** The composition that a curve is shifted to: its phases, and its gel former [0 to 1]. */
  readonly phases?: readonly string[];
  /** [0 to 1]. */
  readonly dose?: number;
  readonly direction?: "heating" | "cooling";
  /** By how much a curve is shifted [K]. */
  readonly temperatureDifference?: number;
  /** Where the composition sets that was read, on heating where it dissolves [°C]. */
  readonly temperatureReference?: number;
  /** Film on skin or nail [m]. */
  readonly filmThickness?: number;
  /** Water from which on a film is milk, by mass of the gel; `max` is null where the surer end is not reached. */
  readonly untilMilky?: { readonly min: number; readonly max: number | null } | NotKnown;
  /** Water from which on a film flows off, by mass of the gel. */
  readonly untilFlowing?: { readonly min: number; readonly value?: number; readonly max: number } | NotKnown;
  /** What the gel is with some water in it. */
  readonly along?: readonly DilutedGel[] | NotKnown;
  /** How far it is drawn into a line, where it holds to the walls [m]. */
  readonly distance?: number | NotKnown;
  /** The thickest film that does not run down an upright wall [m]. */
  readonly thickness?: number;
  /** Water that a pack takes up from the room, by two laws; below 0 what it gives off [kg]. */
  readonly water?: { readonly min: number; readonly max: number } | NotKnown;
  /** [s]. */
  readonly duration?: number;
  /** How far the index of the outer phase then is from the oil's. */
  readonly mismatch?: { readonly min: number; readonly max: number };
  /** Why it has no figure. */
  readonly notKnown?: Reason;
}

/** The gel with some water in its outer phase. */
export interface DilutedGel {
  /** Water that has gone in, by mass of the gel. */
  readonly water: number;
  /** Of the outer phase. */
  readonly refractiveIndexOuter: number;
  /** Index of the oil less that of the outer phase. */
  readonly mismatch: number;
  /** Of oil in oil and outer phase. */
  readonly volumeFractionOil: number;
  /** Between two pictures of the droplets and the ends of the mismatch [1/m]. */
  readonly turbidity: Ends;
  /** By the law of packed droplets [Pa]; left out where that does not reach, or the interfacial tension is not known. */
  readonly yieldStress?: { readonly min: number; readonly value?: number; readonly max: number };
}
