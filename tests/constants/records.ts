import { readFileSync, writeFileSync } from "node:fs";
import { root } from "../support/rooms.js";
import type { Constant } from "./constants.js";
import type { Change } from "./mutants.js";

/** What was found for a constant: the id of the check that catches a change by 1 %, and what no check catches. */
export type Found = string | { readonly by?: string; readonly survives: readonly Change[] };

/** By file, and in it by the constant's name and path. */
export type Records = Readonly<Record<string, Readonly<Record<string, Found>>>>;

const place = `${root}tests/constants/proofs.json`;

/** The findings of the last whole run. */
export function readRecords(): Records {
  return JSON.parse(readFileSync(place, "utf8")) as Records;
}

/** Keeps the findings, sorted by file. */
export function writeRecords(records: Records): void {
  writeFileSync(place, `${JSON.stringify(records, null, 1)}\n`);
}

/** A constant's key within its file. */
export function withinFile({ key, file }: Constant): string {
  return key.slice(file.length + 1);
}

/** Why a constant survives. */
export interface Reason {
  /**
   * - `figure`: a figure of a source, which no check holds yet.
   * - `judgement`: a band, a tolerance or a default of ours: no source prints it.
   * - `setting`: where a search begins, how finely it goes, a limit that refuses: 1 % more moves no figure.
   */
  readonly sort: "figure" | "judgement" | "setting";
  readonly reason: string;
}

/** Why constants survive, by the beginning of their key; `logarithm` is for those whose base does not matter. */
export function readReasons(): Readonly<Record<string, Reason>> {
  return JSON.parse(readFileSync(`${root}tests/constants/reasons.json`, "utf8")) as Record<string, Reason>;
}

/** Files that are tables of data, written down row by row: the rest are constants and correlations. */
export const isTable = (file: string): boolean =>
  /^src\/(oils\/(standard-|castor-oil|compounds|medium-chain)|packing\/(error-tables|batch-tests)|exposure\/exposure-table|units\/tables)/.test(
    file,
  );

/** The reason that fits a survivor: the longest beginning of its key, or the one for logarithms. */
export function reasonOf(
  reasons: Readonly<Record<string, unknown>>,
  key: string,
  survives: readonly Change[],
): string | undefined {
  const [longest] = Object.keys(reasons)
    .filter((start) => key.startsWith(start))
    .sort((a, b) => b.length - a.length);
  return longest ?? (survives.every((change) => / for l/.test(change)) ? "logarithm" : undefined);
}
