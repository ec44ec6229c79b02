import { readFileSync } from "node:fs";
import { root } from "../support/rooms.js";

/** Measurements of others as they stand in `tests/measured/data`: what was measured, and how sure our figure is said to be. */
export interface MeasuredData {
  readonly id: string;
  readonly title: string;
  /** Who measured, and where the figures were read. */
  readonly source: string;
  /** The source's key in `docs/bibliography.json`. */
  readonly bibliography: string;
  readonly read: "first-hand" | "second-hand";
  /** The function that gives our figure, and what it was fed with. */
  readonly ours: string;
  /** One standard uncertainty of our figure; where both are given they add as squares. */
  readonly uncertainty: {
    readonly relative?: number;
    readonly absolute?: number;
    /** Whether it was stated somewhere without these points in view, or judged by us with them known. */
    readonly kind: "stated" | "judged";
    readonly from: string;
  };
  /** What the deviations tell. */
  readonly tells: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly unknown[])[];
}

/** One measured point beside our figure. */
export interface MeasuredPoint {
  readonly measured: number;
  readonly ours: number;
}

/** The data of a case. */
export function readMeasured(id: string): MeasuredData {
  return JSON.parse(readFileSync(`${root}tests/measured/data/${id}.json`, "utf8")) as MeasuredData;
}

/** How far our figure is off, in standard uncertainties. */
export function inUncertainties({ measured, ours }: MeasuredPoint, { uncertainty }: MeasuredData): number {
  const { relative = 0, absolute = 0 } = uncertainty;
  return (ours - measured) / Math.hypot(relative * measured, absolute);
}
