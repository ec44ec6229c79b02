import { notNegative, positive, record, refuse, result, show } from "../guards.js";
import { normalQuantile } from "../numeric/normal.js";
import { root } from "../numeric/root.js";
import { type BatchTest, readTest } from "./batch-test.js";
import * as known from "./known.js";
import { inDeviations, rejected } from "./share-rejected.js";

/** A mean fill to aim at. */
export interface TargetFill {
  /** Mean content to aim at [kg], never below nominal. */
  readonly mass: number;
  /** The same above nominal [kg]. */
  readonly overfill: number;
  /** Share of batches that the test rejects at that mean, 0 to 1. */
  readonly shareRejected: number;
  /** What sets it: the nominal quantity itself, the test of the mean, or that of single packs. */
  readonly limitedBy: "nominal" | "mean" | "single packs";
}

/** A share that is so small at least, and below a half. */
function shareBelowHalf(share: number, path: string, min: number): number {
  if (!(typeof share === "number" && share >= min && share < 0.5))
    refuse("input", path, show(share), `a number from ${min} to below 0.5`);
  return share;
}

/**
 * The mean fill to aim at, so that no more than a wanted share of batches fails the test that they face.
 *
 * $$P_\mathrm{rejected}(\mu) = p, \qquad \mu \ge Q_n$$
 *
 * A larger spread never lowers it. At the nominal quantity itself a test that allows the mean nothing rejects half of the
 * batches; the tests of acts allow it some standard deviations of the sample, which is for the inspector's doubt and not
 * for the packer to use: the mean of the batch may not be below nominal, and the target is not.
 *
 * @param input.test - The test that the batch faces: of an act by `batchTestFor`, or your own.
 * @param input.nominal - Nominal quantity [kg], above 0; of a volume, its mass at 20 °C by `fillMass`.
 * @param input.tolerableError - [kg], above 0; of a volume, its mass at 20 °C.
 * @param input.spread - Standard deviation of the content of packs [kg], 0 or more: `spreadOfFill` takes the tare out.
 * @param input.shareRejectedMax - Share of batches that may fail, from 1e-9 to below 0.5.
 * @returns The mean to aim at [kg], the overfill [kg], the share rejected there, and what sets it.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source eec-76-211 Annexes I and II for the form of the test; worked by hand
 * @example
 * ```ts
 * import { batchTestFor, batchTestsUk2006, targetFill } from "gelwright/packing";
 * const test = batchTestFor({ table: batchTestsUk2006, packs: 5000 });
 * const pack = { nominal: 0.05, tolerableError: 0.0045, test, shareRejectedMax: 0.01 };
 * targetFill({ ...pack, spread: 0.0006 }).limitedBy; // => "nominal"
 * (1000 * targetFill({ ...pack, spread: 0.0025 }).mass).toFixed(2); // => "50.46"
 * ```
 */
export function targetFill(input: {
  readonly test: BatchTest;
  readonly nominal: number;
  readonly tolerableError: number;
  readonly spread: number;
  readonly shareRejectedMax: number;
}): TargetFill {
  const { test, nominal, tolerableError, spread, shareRejectedMax } = record(input, "input", known.targetFill);
  const plan = readTest(test, "test");
  const wanted = positive(nominal, "nominal");
  const error = positive(tolerableError, "tolerableError");
  const deviation = notNegative(spread, "spread");
  const allowed = shareBelowHalf(shareRejectedMax, "shareRejectedMax", 1e-9);
  if (deviation === 0) return { mass: wanted, overfill: 0, shareRejected: 0, limitedBy: "nominal" };
  const tolerable = inDeviations(error, deviation);
  const share = (excess: number): number => rejected(plan, excess, tolerable);
  const atNominal = share(0);
  if (atNominal <= allowed) return { mass: wanted, overfill: 0, shareRejected: atNominal, limitedBy: "nominal" };
  // Ten standard deviations above nominal no pack is short and no mean too low.
  const excess = root((x) => share(x) - allowed, 0, 10, "target fill", 1e-12);
  const overfill = result(excess * deviation, "overfill");
  const single = rejected(plan, excess, tolerable, "single packs");
  return {
    mass: result(wanted + overfill, "mass"),
    overfill,
    shareRejected: share(excess),
    limitedBy: single > allowed / 2 ? "single packs" : "mean",
  };
}

/**
 * The mean fill at which a batch itself keeps the packers' rules: mean, share beyond one tolerable error, share beyond two.
 *
 * $$\mu = \max\left(Q_n,\; Q_n - T + z_{1-p_1}\,s,\; Q_n - 2T + z_{1-p_2}\,s\right)$$
 *
 * It asks what the batch is, not what a sample of it would show: `targetFill` does the latter. Take the larger of the two.
 * The rules say that none may be beyond two errors; a normal distribution has no end, so a share has to be named. Guidance
 * in the United Kingdom took 2.5 % beyond one and 1 in 10 000 beyond two, the latter from memory.
 *
 * @param input.nominal - Nominal quantity [kg], above 0.
 * @param input.tolerableError - [kg], above 0.
 * @param input.spread - Standard deviation of the content of packs [kg], 0 or more.
 * @param input.shareBeyondOneMax - Share of packs that may be short by more than one tolerable error, from 1e-12 to below 0.5.
 * @param input.shareBeyondTwoMax - Share of packs that may be short by more than two, from 1e-12 to below 0.5.
 * @returns The mean to aim at [kg].
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source eec-76-211 Annex I 1.1 to 1.3; uk-packers-guidance-2015 for the shares, from memory
 * @example
 * ```ts
 * import { targetByRules } from "gelwright/packing";
 * const shares = { shareBeyondOneMax: 0.025, shareBeyondTwoMax: 1e-4 };
 * targetByRules({ nominal: 0.1, tolerableError: 0.0045, spread: 0.002, ...shares }); // => 0.1
 * (1000 * targetByRules({ nominal: 0.1, tolerableError: 0.0045, spread: 0.003, ...shares })).toFixed(2); // => "102.16"
 * ```
 */
export function targetByRules(input: {
  readonly nominal: number;
  readonly tolerableError: number;
  readonly spread: number;
  readonly shareBeyondOneMax: number;
  readonly shareBeyondTwoMax: number;
}): number {
  const { nominal, tolerableError, spread, shareBeyondOneMax, shareBeyondTwoMax } = record(
    input,
    "input",
    known.targetByRules,
  );
  const wanted = positive(nominal, "nominal");
  const error = positive(tolerableError, "tolerableError");
  const deviation = notNegative(spread, "spread");
  const above = (share: number, path: string): number =>
    -normalQuantile(shareBelowHalf(share, path, 1e-12)) * deviation;
  const beyondOne = wanted - error + above(shareBeyondOneMax, "shareBeyondOneMax");
  const beyondTwo = wanted - 2 * error + above(shareBeyondTwoMax, "shareBeyondTwoMax");
  return result(Math.max(wanted, beyondOne, beyondTwo), "target");
}
