import { slopeAndOffset } from "./engine.js";
import { commonDivisor } from "./rational.js";
import type { Dimension } from "./unit.js";

/** A conversion in whole numbers, in lowest terms: target = (value · numerator + shift) / denominator. */
export interface Pair {
  readonly numerator: bigint;
  readonly shift: bigint;
  readonly denominator: bigint;
}

/** The engine's slope and offset, brought to one denominator. */
export function pairOf(dimension: Dimension, from: string, to: string): Pair {
  const { slope, offset } = slopeAndOffset(dimension, from, to);
  const common = commonDivisor(slope.denominator, offset.denominator);
  const stretch = offset.denominator / common;
  return {
    numerator: slope.numerator * stretch,
    shift: offset.numerator * (slope.denominator / common),
    denominator: slope.denominator * stretch,
  };
}
