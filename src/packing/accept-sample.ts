import { finite, list, positive, record, refuse, result } from "../guards.js";
import { slack } from "../numeric/decimal.js";
import { momentsOf } from "../numeric/moments.js";
import { type BatchTest, readTest } from "./batch-test.js";
import * as known from "./known.js";

/** What a measured sample says of its batch. */
export interface SampleVerdict {
  readonly verdict: "accepted" | "rejected" | "second sample needed";
  /** The test of the mean. */
  readonly mean: {
    /** Of the packs that count for it [kg]. */
    readonly value: number;
    /** What it may not be below [kg]. */
    readonly min: number;
    readonly holds: boolean;
  };
  /** Standard deviation of the packs that count for the mean [kg]. */
  readonly spread: number;
  /** The test of single packs. */
  readonly defectives: {
    /** Packs short by more than one tolerable error, of both samples if there are two. */
    readonly count: number;
    /** So many are allowed at this point. */
    readonly max: number;
    readonly holds: boolean;
  };
  /** Packs short by more than two tolerable errors. */
  readonly beyondTwo: {
    /** Packs. */
    readonly count: number;
    readonly holds: boolean;
  };
}

/**
 * Whether a measured sample accepts its batch by a test: mean, packs beyond one tolerable error, packs beyond two.
 *
 * $$\bar x \ge Q_n - k\,s \qquad \#\{x < Q_n - T\} \le c \qquad \#\{x < Q_n - 2T\} = 0$$
 *
 * A packer's own check is no inspection: the inspector takes another sample. Each pack's content is its gross weight less
 * its own tare, or a mean tare where `spreadOfFill` has shown that the tares hardly vary.
 *
 * @param input.test - The test: of an act by `batchTestFor`, or your own.
 * @param input.nominal - Nominal quantity [kg], above 0; of a volume, its mass at 20 °C by `fillMass`.
 * @param input.tolerableError - [kg], above 0.
 * @param input.contents - Content of each pack of the first sample [kg], as many as the test asks for, in the order drawn;
 *   the first of them count for the mean.
 * @param input.contentsSecond - Content of each pack of the second sample [kg], if the first asked for one.
 * @returns The verdict, with the figures of each rule.
 * @throws CalculationError `input` where an argument is out of range or a sample has not the size that the test asks for.
 * @source eec-76-211 Annex II 2.2 and 2.3
 * @example
 * ```ts
 * import { acceptSample, batchTestFor, batchTestsEec1976Destructive } from "gelwright/packing";
 * const test = batchTestFor({ table: batchTestsEec1976Destructive, packs: 2000 });
 * const contents = Array.from({ length: 20 }, (_, i) => 0.0498 + 0.0001 * (i % 5));
 * acceptSample({ test, nominal: 0.05, tolerableError: 0.0045, contents }).verdict; // => "accepted"
 * ```
 */
export function acceptSample(input: {
  readonly test: BatchTest;
  readonly nominal: number;
  readonly tolerableError: number;
  readonly contents: readonly number[];
  readonly contentsSecond?: readonly number[];
}): SampleVerdict {
  const { test, nominal, tolerableError, contents, contentsSecond } = record(input, "input", known.acceptSample);
  const plan = readTest(test, "test");
  const wanted = positive(nominal, "nominal");
  const error = positive(tolerableError, "tolerableError");
  const first = packsOf(contents, "contents", plan.sampleSize);
  const { mean: value, variance } = momentsOf(first.slice(0, plan.mean.sampleSize));
  const spread = result(Math.sqrt(variance), "spread");
  const min = wanted - plan.mean.factor * spread;
  // A pack that stands at a limit is not beyond it, whatever the last bit says.
  const below = (content: number, limit: number): boolean => content < limit - slack * wanted;
  const beyond = (packs: readonly number[], errors: number): number =>
    packs.filter((content) => below(content, wanted - errors * error)).length;
  const inFirst = beyond(first, 1);
  const { second } = plan;
  const undecided = second !== undefined && inFirst > plan.defectivesMax && inFirst < second.rejectedFrom;
  if (contentsSecond !== undefined && !undecided)
    refuse("input", "contentsSecond", "a second sample", "none: the first one decides");
  const more = contentsSecond && second ? packsOf(contentsSecond, "contentsSecond", second.sampleSize) : [];
  const count = inFirst + beyond(more, 1);
  const max = more.length > 0 && second ? second.defectivesMax : plan.defectivesMax;
  const twice = beyond(first, 2) + beyond(more, 2);
  const mean = { value: result(value, "mean"), min: result(min, "limit of the mean"), holds: !below(value, min) };
  const defectives = { count, max, holds: count <= max };
  const beyondTwo = { count: twice, holds: !plan.noneBeyondTwo || twice === 0 };
  const kept = mean.holds && beyondTwo.holds;
  const open = kept && undecided && more.length === 0;
  const verdict = open ? "second sample needed" : kept && defectives.holds ? "accepted" : "rejected";
  return { verdict, mean, spread, defectives, beyondTwo };
}

function packsOf(contents: readonly number[], path: string, size: number): readonly number[] {
  const packs = list(contents, path, 1).map((content, i) => finite(content, `${path}[${i}]`));
  if (packs.length !== size) refuse("input", path, `${packs.length} packs`, `${size}, the size of the sample`);
  return packs;
}
