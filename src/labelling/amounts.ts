import { list, refuse } from "../guards.js";
import {
  compare,
  exactQuantity,
  exactShare,
  minus,
  nearest,
  nought,
  one,
  over,
  type Rational,
  times,
  total,
} from "../units/exact.js";

const wanted = 'an amount above zero: "9 %", "500 ppm", "45 g" or "q.s." (decimal point, no comma)';

const hundred: Rational = { numerator: 100n, denominator: 1n };

/** The unit decides what an amount is; the parser knows best what is wrong with one that is neither. */
function isMass(text: string): boolean {
  return /\d\s*(?:kg|g|mg|µg|ug|t|lb|oz)$/i.test(text.trim());
}

/**
 * The shares of some amounts in their whole, exactly, so that they add up to 1: all masses, or all shares of which one may
 * be `"q.s."`.
 */
export function sharesOf(
  amounts: readonly string[],
  path: string,
  field: (index: number) => string,
): readonly Rational[] {
  const texts = list(amounts, path, 1).map((text, i) =>
    typeof text === "string" ? text : refuse("input", field(i), text, wanted),
  );
  const rest = texts.findIndex((text) => /^q\.? ?s\.?$/i.test(text.trim()));
  const masses = texts.every(isMass);
  const read = texts.map((text, i) => {
    if (i === rest) return nought;
    const amount = masses ? exactQuantity(text, "mass", field(i)) : exactShare(text, field(i));
    return compare(amount, nought) > 0 ? amount : refuse("input", field(i), text, wanted);
  });
  const sum = total(read);
  if (masses) return read.map((mass) => over(mass, sum));
  const left = minus(one, sum);
  const percent = (share: Rational): string => `${nearest(times(share, hundred))} %`;
  if (rest >= 0 && compare(left, nought) > 0) return read.map((share, i) => (i === rest ? left : share));
  if (rest >= 0) return refuse("input", path, percent(sum), 'less than 100 % beside the line "q.s."');
  return compare(left, nought) === 0
    ? read
    : refuse("input", path, percent(sum), 'shares that add up to exactly 100 %, or one line "q.s."');
}
