import { readFileSync, writeFileSync } from "node:fs";
import { root } from "../support/rooms.js";
import type { Mutant } from "./instrumented.js";

/** What was found of a file. Texts are counted by themselves. */
export interface Score {
  /** How many mutants there are. */
  mutants: number;
  /** How many of them were tried. */
  tried: number;
  killed: number;
  stringsTried: number;
  stringsKilled: number;
  /** Those that no test failed on, by their keys. */
  left: string[];
}

type Scores = Readonly<Record<string, Score>>;

/** Why a mutant is left, by its key: it changes nothing that could be seen, as a rule. */
export type Reasons = Readonly<Record<string, string>>;

/** The share of mutants that has to be killed in what was tried of a folder or file, texts aside. */
export const minShares: Readonly<Record<string, number>> = {
  "src/batch": 0.9,
  "src/exposure": 0.9,
  "src/formula": 0.9,
  "src/gel": 0.9,
  "src/heat": 0.9,
  "src/labelling": 0.9,
  "src/laws": 0.9,
  "src/mixing": 0.9,
  "src/natural-origin": 0.9,
  "src/numeric": 0.9,
  "src/oils": 0.9,
  "src/packing": 0.9,
  "src/particles": 0.9,
  "src/rheology": 0.9,
  "src/stability": 0.9,
  "src/transient": 0.9,
  "src/units": 0.9,
  "src/plan": 0.85,
  "src/plan/judge.ts": 0.9,
  "src/plan/questions": 0.9,
  "src/plan/steps": 0.9,
};

const path = `${root}tests/mutants/scores.json`;

/** What was found so far, by file. */
export function readScores(): Scores {
  return JSON.parse(readFileSync(path, "utf8")) as Scores;
}

/** Keeps what was found. */
export function writeScores(scores: Scores): void {
  const sorted = Object.entries(scores).sort(([a], [b]) => (a < b ? -1 : 1));
  writeFileSync(path, `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`);
}

/** Why mutants are left. */
export function readReasons(): Reasons {
  return JSON.parse(readFileSync(`${root}tests/mutants/reasons.json`, "utf8")) as Reasons;
}

/** How many of those left are explained, texts aside. */
export function explainedIn({ left }: Score, reasons: Reasons): number {
  return left.filter((key) => reasons[key] !== undefined && !key.includes(": StringLiteral: ")).length;
}

/** A name for every mutant that stays the same when lines move: file, which of Stryker's mutators, and what becomes what. */
export function keysOf(mutants: readonly Mutant[]): ReadonlyMap<number, string> {
  const counts = new Map<string, number>();
  return new Map(
    mutants.map(({ index, file, mutator, original, replacement }) => {
      const cut = (text: string): string => (text.length > 90 ? `${text.slice(0, 60)} … ${text.slice(-25)}` : text);
      const key = `${file}: ${mutator}: ${cut(original)} → ${cut(replacement)}`;
      const count = (counts.get(key) ?? 0) + 1;
      counts.set(key, count);
      return [index, count === 1 ? key : `${key} (${count})`];
    }),
  );
}

/** Killed of tried below a folder, texts aside, as a share and in words, with what was asked for. */
export function shareOf(
  target: string,
  scores: Scores,
  reasons: Reasons,
): { readonly value: number; readonly min: number; readonly line: string } {
  const targets = target.split(",");
  const some = Object.entries(scores)
    .filter(([file]) => targets.some((one) => file === one || file.startsWith(`${one}/`)))
    .map(([, score]) => score);
  const sum = (of: (score: Score) => number): number => some.reduce((total, score) => total + of(score), 0);
  const [tried, killed, mutants] = [sum((one) => one.tried), sum((one) => one.killed), sum((one) => one.mutants)];
  const explained = sum((score) => explainedIn(score, reasons));
  const texts = `texts ${sum((one) => one.stringsKilled)} of ${sum((one) => one.stringsTried)}`;
  const value = tried === 0 ? 0 : killed / tried;
  return {
    value,
    min: Math.max(0, ...targets.map((one) => minShares[one] ?? 0)),
    line: `${target}: ${killed} of ${tried} killed (${(100 * value).toFixed(1)} %), ${mutants} in all, ${explained} of those left explained; ${texts}`,
  };
}
