import type { NoteCode } from "../codes.js";

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
}
