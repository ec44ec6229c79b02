import { result } from "../guards.js";
import { increment as decimal, multiple, slack } from "../numeric/decimal.js";

/** A mass that is cut into portions on the steps of a balance, in whole numbers of its finest decimal. */
export interface Portions {
  /** The whole [units]. */
  readonly total: number;
  /** One step of the balance [units]; 0 where there is no balance. */
  readonly step: number;
  /** Units of a mass [kg]. */
  readonly of: (mass: number) => number;
  /** Mass [kg] of so many units: as a decimal, without the noise of adding. */
  readonly mass: (units: number) => number;
  /** So much, or the last step of the balance below it [units]. */
  readonly down: (units: number) => number;
}

/** A mass with the steps it may be cut at; without an increment, anywhere. */
export function portionsOf(mass: number, increment: number | undefined): Portions {
  if (increment === undefined)
    return { total: mass, step: 0, of: (kilograms) => kilograms, mass: (units) => units, down: (units) => units };
  const [whole, step] = [decimal(mass, "massToAdd"), decimal(increment, "increment")];
  const exponent = Math.min(whole.exponent, step.exponent);
  const scale = result(10 ** -exponent, "increment");
  const unitsOf = ({ digits, exponent: own }: typeof whole, path: string): number =>
    multiple(1, { digits, exponent: own - exponent }, path);
  const units = unitsOf(step, "increment");
  return {
    total: unitsOf(whole, "massToAdd"),
    step: units,
    of: (kilograms) => kilograms * scale,
    mass: (count) => multiple(count, { digits: 1, exponent }, "addition"),
    down: (count) => Math.floor((count / units) * (1 + slack)) * units,
  };
}
