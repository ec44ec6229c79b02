import { refuse } from "../guards.js";

/** The share of the bracket that bisection goes. */
const half = 0.5;

/**
 * Where a continuous function passes through zero between `low` and `high`, at whose ends it has opposite signs.
 *
 * Chandrupatla's method: inverse quadratic interpolation where the three last points say that it can be trusted,
 * bisection elsewhere. It never leaves the bracket and never needs more than a few times the steps of bisection.
 *
 * The answer is within a few units in the last place, or within `tolerance` where that is given; an answer near
 * zero needs one, since a bracket around zero has no last place.
 *
 * @throws CalculationError `not-converged` where the ends have the same sign or the function gives no number.
 * @source chandrupatla-1997 from memory
 */
export function root(
  valueAt: (x: number) => number,
  low: number,
  high: number,
  path: string,
  tolerance: number = 0,
): number {
  // The bracket is [here, far]: `here` is the newest point, `third` the one that was dropped last.
  let far = low;
  let valueFar = valueAt(low);
  let here = high;
  let valueHere = valueAt(high);
  if (valueFar === 0) return low;
  if (valueHere === 0) return high;
  if (Math.sign(valueFar) * Math.sign(valueHere) !== -1)
    refuse("not-converged", path, `${valueFar} at ${low} and ${valueHere} at ${high}`, "opposite signs at both ends");
  let share = half;
  for (let step = 0; step < 400; step += 1) {
    const next = here + share * (far - here);
    const valueNext = valueAt(next);
    let third = here;
    let valueThird = valueHere;
    if (valueNext > 0 !== valueHere > 0) {
      third = far;
      valueThird = valueFar;
      far = here;
      valueFar = valueHere;
    }
    here = next;
    valueHere = valueNext;
    const best = Math.abs(valueHere) < Math.abs(valueFar) ? here : far;
    const min = (2 * Number.EPSILON * Math.abs(best) + tolerance / 2) / Math.abs(far - here);
    if (valueHere === 0 || !(min < 0.5)) {
      if (Number.isNaN(valueHere)) break;
      return best;
    }
    const along = (here - far) / (third - far);
    const up = (valueHere - valueFar) / (valueThird - valueFar);
    share = half;
    if (up * up < along && (1 - up) * (1 - up) < 1 - along) {
      const interpolated =
        (valueHere / (valueFar - valueHere)) * (valueThird / (valueFar - valueThird)) +
        ((third - here) / (far - here)) * (valueHere / (valueThird - valueHere)) * (valueFar / (valueThird - valueFar));
      share = Math.min(1 - min, Math.max(min, interpolated)) || half;
    }
  }
  return refuse("not-converged", path, `${valueHere} at ${here}`, "a function that passes through zero");
}
