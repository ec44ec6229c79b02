import { logGamma } from "../numeric/log-gamma.js";
import { normalBelow } from "../numeric/normal.js";
import { integrate } from "../numeric/quadrature.js";
import { root } from "../numeric/root.js";
import { quadraticOf, type Truncated } from "./truncated.js";

/**
 * How often the mean of a sample fails: z̄ + k s below −δ, exactly, for normal packs.
 *
 * Mean and standard deviation of a normal sample are independent, so one integral over the latter does.
 *
 * @param excess - δ: mean of the batch above nominal, in standard deviations.
 * @source abramowitz-stegun-1964 26.4.1 for the distribution of s²
 */
function meanFails(size: number, factor: number, excess: number): number {
  const scale = Math.sqrt(size);
  if (factor === 0) return normalBelow(-scale * excess);
  const degrees = size - 1;
  const log = Math.log(2) + (degrees / 2) * Math.log(degrees / 2) - logGamma(degrees / 2);
  const width = 1 / Math.sqrt(2 * degrees);
  const [low, high] = [Math.max(0, 1 - 10 * width), 1 + 14 * width];
  const [share = 0] = integrate(
    [low, 1, high],
    (s, values) => {
      const density = Math.exp(log + (degrees - 1) * Math.log(s) - (degrees * s * s) / 2);
      values[0] = density * normalBelow(-scale * (excess + factor * s));
    },
    1,
    "mean of a sample",
  );
  return Math.min(1, share);
}

/** A sample of which it is known how many packs are short. */
interface Known {
  readonly size: number;
  readonly factor: number;
  readonly short: Truncated;
  readonly rest: Truncated;
}

/** How far z̄ + k s lies above −δ, in its own standard deviations, where so many packs of the sample are short. */
function marginOf({ size, factor, short, rest }: Known, excess: number, count: number): number {
  const over = (of: (part: Truncated) => number): number => count * of(short) + (size - count) * of(rest);
  const middle = over(({ powers }) => powers[0]) / size;
  const varianceOfMean = over(({ powers }) => powers[1] - powers[0] ** 2) / size ** 2;
  const square = size > 1 ? (over(({ powers }) => powers[1]) - size * (varianceOfMean + middle ** 2)) / (size - 1) : 1;
  const deviation = Math.sqrt(Math.max(square, 1e-12));
  const beta = size > 1 ? factor / (2 * deviation * (size - 1)) : 0;
  const variance = over((part) => quadraticOf(part, 1 / size, beta, middle).variance);
  return (middle + factor * deviation + excess) / Math.sqrt(Math.max(variance, 1e-300));
}

/**
 * How often the mean of a sample passes where so many of its packs are short, as a function of their number.
 *
 * Given the number, mean and standard deviation together are close to normal; what is missing is set right by one shift,
 * such that over all numbers the share is the exact one of `meanFails`.
 *
 * @param shareOf - How often so many packs of the sample are short.
 */
export function meanPasses(
  sample: Known & { readonly all: Truncated },
  excess: number,
  shareOf: (count: number) => number,
): (count: number) => number {
  const { size, factor } = sample;
  const exact = meanFails(size, factor, excess);
  // Where the mean never fails there is nothing to share out; a strong factor of a few packs is far from normal.
  if (exact < 1e-13) return () => 1;
  const margins: { readonly share: number; readonly margin: number }[] = [];
  for (let count = 0; count <= size; count += 1) {
    const share = shareOf(count);
    if (share > 1e-17) margins.push({ share, margin: marginOf({ ...sample, short: sample.all }, excess, count) });
  }
  const total = margins.reduce((sum, { share }) => sum + share, 0);
  const wide = 40 + margins.reduce((most, { margin }) => Math.max(most, Math.abs(margin)), 0);
  const fails = (shift: number): number =>
    margins.reduce((sum, { share, margin }) => sum + share * normalBelow(-margin - shift), 0) - exact * total;
  const shift = root(fails, -wide, wide, "mean test", 1e-12);
  return (count) => normalBelow(marginOf(sample, excess, count) + shift);
}
