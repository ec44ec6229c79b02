import { isRest } from "../formula/amount.js";
import { list, record, refuse } from "../guards.js";
import { asPercent, exactQuantity, exactShare } from "../units/exact.js";
import { numberIn } from "../units/parse.js";
import { compare, minus, nought, one, over, type Rational, total } from "../units/rational.js";
import { plainSpelling } from "../units/spelling.js";
import { siName } from "../units/unit.js";

const wanted = 'an amount above zero: "9 %", "500 ppm", "45 g" or "q.s." (decimal point, no comma)';

/** A line of a formula with the place where it stands and its exact share of the whole. */
export interface Weighed<Line> {
  readonly line: Line;
  readonly at: string;
  readonly share: Rational;
}

function isMass(text: string): boolean {
  const unit = text.trim().slice(numberIn(text.trim()).matched.length);
  return siName("mass", plainSpelling(unit.trim())) !== undefined;
}

/**
 * The lines with their shares, which add up to 1: amounts are all masses, or all shares of which one may be `"q.s."`.
 */
export function withShares<Line extends { readonly amount: string }>(
  lines: readonly Line[],
  path: string,
): readonly Weighed<Line>[] {
  const stated = list(lines, path, 1).map((line, i) => {
    const at = `${path}[${i}]`;
    const { amount } = record(line, at);
    const text = typeof amount === "string" ? amount : refuse("input", `${at}.amount`, amount, wanted);
    return { line, at, text };
  });
  const rest = stated.findIndex(({ text }) => isRest(text));
  const masses = stated.filter(({ text }) => isMass(text));
  const [mass] = masses;
  if (mass && masses.length < stated.length)
    refuse("input", `${mass.at}.amount`, mass.text, "a mass on every line, or a share of the whole on every line");
  const read = stated.map(({ line, at, text }, i) => {
    if (i === rest) return { line, at, amount: nought };
    const amount = mass ? exactQuantity(text, "mass", `${at}.amount`) : exactShare(text, `${at}.amount`);
    return compare(amount, nought) > 0 ? { line, at, amount } : refuse("input", `${at}.amount`, text, wanted);
  });
  const sum = total(read.map(({ amount }) => amount));
  if (mass) return read.map(({ line, at, amount }) => ({ line, at, share: over(amount, sum) }));
  const left = minus(one, sum);
  if (rest >= 0 && compare(left, nought) <= 0)
    refuse("input", path, asPercent(sum), 'less than 100 % beside the line "q.s."');
  if (rest < 0 && compare(left, nought) !== 0)
    refuse("input", path, asPercent(sum), 'shares that add up to exactly 100 %, or one line "q.s."');
  return read.map(({ line, at, amount }, i) => ({ line, at, share: i === rest ? left : amount }));
}
