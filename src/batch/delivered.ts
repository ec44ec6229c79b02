import { notNegative, positive, record, refuse, result } from "../guards.js";
import { type Allowance, type NamedLoss, takings } from "./allowance.js";
import * as known from "./known.js";
import { each } from "./named.js";

/** What arrives from a charge. */
export interface Delivered {
  /** Finished product [kg]. */
  readonly mass: number;
  /** Mass [kg] of each line in it, and its share [0 to 1] of the product. */
  readonly lines: readonly { readonly name: string; readonly mass: number; readonly massFraction: number }[];
  /** Mass [kg] that each allowance took. */
  readonly allowances: readonly LossMass[];
}

/** What a loss took. */
export interface LossMass extends NamedLoss {
  /** Mass [kg]. */
  readonly mass: number;
}

/**
 * The finished product that a charge yields after the allowances; the inverse of `chargeFor`.
 *
 * $$y = (1-f)\,y' \qquad y = y' - m\,\frac{y'}{\sum_j y'_j}$$
 *
 * @param input.charge - Name and mass [kg] of each line as weighed, 0 or more.
 * @param input.allowances - Losses in the order of the process.
 * @returns The finished product [kg], its lines, and what each allowance took [kg].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where a fixed loss takes all that is there.
 * @source definition
 * @example
 * ```ts
 * import { deliveredFrom } from "gelwright/batch";
 * deliveredFrom({
 *   charge: [{ name: "oil", mass: 36 }, { name: "gel former", mass: 4 }],
 *   allowances: [{ kind: "fixed", name: "hold-up of the filler", mass: 1.5 }],
 * }).mass; // => 38.5
 * ```
 */
export function deliveredFrom(input: {
  readonly charge: readonly { readonly name: string; readonly mass: number }[];
  readonly allowances: readonly Allowance[];
}): Delivered {
  const { charge, allowances } = record(input, "input", known.deliveredFrom);
  const stock = each(charge, "charge", ({ name, mass }, at) => ({ name, mass: notNegative(mass, `${at}.mass`) }));
  const losses = takings(allowances, stock).map(({ kind, called, at, amount, from }) => {
    const present = from.reduce((sum, line) => sum + line.mass, 0);
    if (kind === "fixed" && !(amount < present))
      refuse("unreachable", at, `a loss of ${amount} kg from ${present} kg`, "a loss of less than what is there");
    const lost = kind === "fixed" ? amount / present : amount;
    for (const line of from) line.mass -= line.mass * lost;
    return { mass: lost * present, ...called };
  });
  const mass = result(
    positive(
      stock.reduce((sum, line) => sum + line.mass, 0),
      "mass delivered",
    ),
    "mass delivered",
  );
  return { mass, lines: stock.map((line) => ({ ...line, massFraction: line.mass / mass })), allowances: losses };
}
