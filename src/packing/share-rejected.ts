import { notNegative, positive, record } from "../guards.js";
import { logGamma } from "../numeric/log-gamma.js";
import { type BatchTest, readTest } from "./batch-test.js";
import * as known from "./known.js";
import { meanPasses } from "./mean-test.js";
import { truncated } from "./truncated.js";

/** How often d of n packs are short and all others are not, where one is with share `short` and the others with `rest`. */
function countShare(n: number, d: number, short: number, rest: number): number {
  const ways = logGamma(n + 1) - logGamma(d + 1) - logGamma(n - d + 1);
  return Math.exp(ways + (d > 0 ? d * Math.log(short) : 0) + (d < n ? (n - d) * Math.log(rest) : 0));
}

/** How often at most so many of n packs are short. */
function countUpTo(n: number, most: number, short: number, rest: number): number {
  let sum = 0;
  for (let d = 0; d <= Math.min(most, n); d += 1) sum += countShare(n, d, short, rest);
  return Math.min(1, sum);
}

/** The share rejected, for arguments that have been checked; by the test of single packs alone where that is asked for. */
export function rejected(
  test: BatchTest,
  excess: number,
  tolerable: number,
  rules: "all" | "single packs" = "all",
): number {
  const { sampleSize, defectivesMax, second, mean, noneBeyondTwo } = test;
  const edge = -(excess + tolerable);
  const all = truncated(Number.NEGATIVE_INFINITY, edge);
  const short = noneBeyondTwo ? truncated(edge - tolerable, edge) : all;
  const rest = truncated(edge, Number.POSITIVE_INFINITY);
  const { sampleSize: size, factor } = mean;
  const passes =
    rules === "single packs"
      ? () => 1
      : meanPasses({ size, factor, short, all, rest }, excess, (d) => countShare(size, d, all.share, rest.share));
  // What the second sample lets pass, by the short packs of the first, which are fewer than reject it at once.
  const afterwards = (count: number): number => {
    if (!second || count <= defectivesMax) return 1;
    return countUpTo(second.sampleSize, second.defectivesMax - count, short.share, rest.share);
  };
  const others = sampleSize - size;
  const most = Math.min(sampleSize, second ? second.rejectedFrom - 1 : defectivesMax);
  let passed = 0;
  for (let d = 0; d <= Math.min(most, size); d += 1) {
    const share = countShare(size, d, short.share, rest.share);
    let onwards = 0;
    for (let more = 0; more <= Math.min(most - d, others); more += 1)
      onwards += countShare(others, more, short.share, rest.share) * afterwards(d + more);
    passed += share * passes(d) * onwards;
  }
  return Math.min(1, Math.max(0, 1 - passed));
}

/**
 * The share of batches that a test rejects, for a mean fill and a spread: the operating characteristic of the plan.
 *
 * $$P = 1 - \sum_d P(d)\,P\!\left(\bar x + k\,s \ge Q_n \mid d\right)P(\text{rest of the plan} \mid d)$$
 *
 * Packs are taken as normal about the mean of the batch. The share that fails by the mean alone is exact; that both rules
 * are asked of one sample is counted by the packs that are short in it, which leaves the share right to about 0.1 % of
 * batches (held against up to four million simulated ones). A filler whose mean wanders within the batch has a larger
 * spread: measure that one.
 *
 * @param input.test - The test that the batch faces: of an act by `batchTestFor`, or your own.
 * @param input.nominal - Nominal quantity [kg], above 0.
 * @param input.tolerableError - [kg], above 0: by `tolerableError`, or what the buyer wants.
 * @param input.massFill - Mean content of the batch [kg], above 0.
 * @param input.spread - Standard deviation of the content of packs [kg], 0 or more.
 * @returns The share of batches rejected, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source eec-76-211 Annex II for the form of the test; abramowitz-stegun-1964 26.4.1 and 26.7.1; worked by hand
 * @example
 * ```ts
 * import { batchTestFor, batchTestsUk2006, shareRejected } from "gelwright/packing";
 * const test = batchTestFor({ table: batchTestsUk2006, packs: 5000 });
 * const pack = { nominal: 0.05, tolerableError: 0.0045, spread: 0.0006 };
 * shareRejected({ ...pack, test, massFill: 0.05 }).toFixed(4); // => "0.0050"
 * const strict = { ...test, mean: { ...test.mean, factor: 0 } };
 * shareRejected({ ...pack, test: strict, massFill: 0.05 }).toFixed(4); // => "0.5000"
 * ```
 */
export function shareRejected(input: {
  readonly test: BatchTest;
  readonly nominal: number;
  readonly tolerableError: number;
  readonly massFill: number;
  readonly spread: number;
}): number {
  const { test, nominal, tolerableError, massFill, spread } = record(input, "input", known.shareRejected);
  const plan = readTest(test, "test");
  const wanted = positive(nominal, "nominal");
  const error = positive(tolerableError, "tolerableError");
  const content = positive(massFill, "massFill");
  const deviation = notNegative(spread, "spread");
  if (deviation === 0) return content < wanted ? 1 : 0;
  return rejected(plan, inDeviations(content - wanted, deviation), inDeviations(error, deviation));
}

/** A mass in standard deviations, above 0; so many of them that no share is left count as that many. */
export function inDeviations(mass: number, deviation: number): number {
  const most = 1e6;
  return Math.max(-most, Math.min(most, mass / deviation));
}
