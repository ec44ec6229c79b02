import { type Amount, readAmount } from "./amount.js";
import { type Draft, type Findings, join } from "./document.js";
import type { LineDocument } from "./types.js";

/** Percentages are typed by people: a sum this near to 100 % is 100 %. */
const sumTolerance = 1e-9;

/** A line and where it stands. */
export interface Placed {
  readonly line: Draft<LineDocument> | undefined;
  readonly path: string;
}

/** A line whose amount could be read. */
interface ReadLine {
  readonly amount: Amount;
  readonly path: string;
}

/** The shares of a list of lines, in their order; NaN where a line could not be read. */
export interface Shares {
  readonly massFractions: readonly number[];
  /** Place of the line that takes the rest, or -1. */
  readonly rest: number;
}

/**
 * From amounts to mass fractions that sum to 1.
 *
 * Shares (%, ppm) speak of the whole. Parts and masses divide what the shares leave. One line may take the rest.
 * Whatever leaves the whole open (parts beside masses, either beside a rest) is a fault.
 *
 * @param path - Where the whole stands, for what is wrong with the lines together.
 * @param strengthOf - The strength of a line that speaks of its active part; 1 for all others.
 */
export function shares(
  entries: readonly Placed[],
  path: string,
  strengthOf: (line: Draft<LineDocument>) => number,
  findings: Findings,
): Shares {
  const read = entries.map(({ line, path: place }): ReadLine | undefined => {
    const at = join(place, "amount");
    const amount = line?.amount === undefined ? undefined : readAmount(line.amount, at, findings);
    if (!line || !amount) return undefined;
    if (amount.basis === "rest" && line.as === "active")
      findings.note(join(place, "as"), "active", "no such word on a q.s. line: the rest is taken as supplied");
    return { amount: { ...amount, value: amount.value / strengthOf(line) }, path: at };
  });
  const known = read.filter((line) => line !== undefined);
  const of = (basis: Amount["basis"]): readonly ReadLine[] => known.filter((line) => line.amount.basis === basis);
  const rests = of("rest");
  for (const extra of rests.slice(1))
    findings.note(extra.path, "q.s.", `one q.s. line only (the first is ${(rests[0] as ReadLine).path})`);
  const measured = of("mass").length > 0 ? of("mass") : of("parts");
  const measure = measured[0]?.amount.basis;
  if (of("mass").length > 0 && of("parts").length > 0)
    findings.note(path, "lines in masses beside lines in parts", "one of the two: nothing says what a part weighs");
  if (measured.length > 0 && rests.length > 0)
    findings.note(
      path,
      `lines in ${measure} beside a q.s. line`,
      "all other lines in % or ppm where one line takes the rest",
    );

  const sum = (lines: readonly ReadLine[]): number => lines.reduce((total, line) => total + line.amount.value, 0);
  const left = 1 - sum(of("share"));
  // A sum is judged only where every line of it could be read: one fault must not breed another.
  if (known.length === entries.length && !findings.lacks("lines", path)) {
    const total = `${percent(sum(of("share")))} %`;
    if (rests.length === 0 && measured.length === 0 && Math.abs(left) > sumTolerance)
      findings.note(path, `lines that sum to ${total}`, "lines that sum to 100 %, or one q.s. line");
    if (rests.length > 0 && left < -sumTolerance)
      findings.note(
        (rests[0] as ReadLine).path,
        `a q.s. line below zero: the other lines sum to ${total}`,
        "other lines that sum to 100 % at most",
      );
    if (measured.length > 0 && left <= 0)
      findings.note(
        path,
        `shares that sum to ${total} and leave nothing for the lines in ${measure}`,
        "shares below 100 %",
      );
  }
  const perMeasure = left / sum(measured);
  return {
    massFractions: read.map((line) => {
      if (!line) return Number.NaN;
      const { basis, value } = line.amount;
      if (basis === "rest") return Math.max(left, 0);
      return basis === "share" ? value : value * perMeasure;
    }),
    rest: read.findIndex((line) => line?.amount.basis === "rest"),
  };
}

/** A share as per cent, without the noise of doubles. */
export function percent(fraction: number): string {
  return String(Number((fraction * 100).toPrecision(10)));
}
