import type { Band } from "gelwright/laws";
import type { Range } from "../docstring-range.js";

/** A calculator as data: what the build reads from docstrings and hands to the page. */
export interface Calculator {
  readonly room: string;
  readonly name: string;
  readonly question: string;
  readonly parameters: readonly string[];
  /** The arguments of the call that the fields change, in the units of the kernels. */
  readonly start: readonly unknown[];
  readonly fields: readonly Field[];
  /** Lists whose rows a reader may add or take away. */
  readonly lists: readonly string[];
  readonly results: readonly Output[];
  /** The input that the plot goes along. */
  readonly plot?: string;
  /** The result that is plotted and tried for what moves it. */
  readonly main: string;
  /** Bands of the function's own results. */
  readonly bands: readonly OutputBand[];
}

/** How a number is written: its unit, and the units that it may be put in. */
export interface Measure {
  /** Of the kernels; left out for a plain number. */
  readonly unit?: string;
  /** Units that convert into it; left out if it has none but its own. */
  readonly units?: readonly string[];
  /** Which of them suit a reader, the smaller first. */
  readonly handy?: readonly string[];
  /** The field whose word is the unit, in place of a unit of its own. */
  readonly unitOf?: string;
}

export interface Field extends Measure {
  readonly path: string;
  readonly label: string;
  readonly text: string;
  readonly kind: "number" | "choice" | "text" | "boolean";
  readonly range: Range;
  readonly choices: readonly string[];
  readonly optional: boolean;
  /** What it is where it is left out. */
  readonly default?: string;
  /** Why it starts where it does, if the library itself gives the start. */
  readonly reason?: string;
  /** How sure the start is, if a band says so. */
  readonly band?: Band;
}

export interface Output extends Measure {
  /** With `[*]` for each entry of a list. */
  readonly path: string;
  readonly label: string;
  readonly text: string;
}

export interface OutputBand {
  readonly path: string;
  /** Its name, as the page of bands has it. */
  readonly name: string;
  readonly band: Band;
}

/** One call of a calculator: its function. */
export type Call = (...args: readonly unknown[]) => unknown;
