import { notNegative, positive, record, refuse, result } from "../guards.js";
import { type Allowance, type NamedLoss, takings } from "./allowance.js";
import * as known from "./known.js";
import { each } from "./named.js";

/** What to charge of one line. */
export interface LineCharge {
  readonly name: string;
  /** Mass [kg] to weigh. */
  readonly mass: number;
  /** The part of it [kg] that the delivered product and the proportional allowances ask for: it scales with the batch. */
  readonly massProportional: number;
  /** The part of it [kg] that makes up for the fixed allowances. */
  readonly massFixed: number;
  /** Its share of the charge [0 to 1]; not the formula's where a line evaporates. */
  readonly massFraction: number;
}

/** What one allowance takes. */
export interface AllowanceMass extends NamedLoss {
  /** Mass [kg] lost in all. */
  readonly mass: number;
  /** The part of it [kg] that scales with the batch; 0 for a fixed allowance. */
  readonly massProportional: number;
  /** The part of it [kg] that comes of fixed allowances, its own or later ones. */
  readonly massFixed: number;
}

/** What to charge so that what was asked for arrives. */
export interface BatchCharge {
  readonly lines: readonly LineCharge[];
  readonly allowances: readonly AllowanceMass[];
  /** Mass [kg] charged in all: what is delivered and every allowance. */
  readonly total: number;
}

/**
 * The charge of every line, so that the mass wanted reaches the packs with the formula's composition.
 *
 * Calculated backwards through the allowances, last loss first. With the mass y of a line after a loss, the
 * mass before it is
 *
 * $$y' = \frac{y}{1-f} \quad\text{(a fraction f is lost)} \qquad y' = y + m\,\frac{y}{\sum_j y_j} \quad\text{(a mass m of the mixture is lost)}$$
 *
 * The two parts of every mass are kept apart: twice the delivered mass doubles each `massProportional` to the last bit
 * and leaves the fixed allowances as they were.
 *
 * @param input.delivered - Finished product asked for [kg], above 0.
 * @param input.lines - The formula: name and mass fraction of each line; they are taken as shares of their sum.
 * @param input.allowances - Losses in the order of the process, first to last; may be empty. A fraction is 0 to below 1, a mass [kg] above 0.
 * @returns The charge of each line, the loss of each allowance, and the total [kg].
 * @throws CalculationError `input` where an argument is out of range or an allowance names no line; `range` where the charge is too large for a double.
 * @source definition
 * @example
 * ```ts
 * import { chargeFor } from "gelwright/batch";
 * const charge = chargeFor({
 *   delivered: 40,
 *   lines: [{ name: "oil", massFraction: 0.9 }, { name: "gel former", massFraction: 0.1 }],
 *   allowances: [
 *     { kind: "proportional", name: "film on the wall", fraction: 0.02 },
 *     { kind: "fixed", name: "samples", mass: 0.3 },
 *   ],
 * });
 * charge.total; // => 41.12244897959184
 * ```
 */
export function chargeFor(input: {
  readonly delivered: number;
  readonly lines: readonly { readonly name: string; readonly massFraction: number }[];
  readonly allowances: readonly Allowance[];
}): BatchCharge {
  const { delivered, lines, allowances } = record(input, "input", known.chargeFor);
  positive(delivered, "delivered");
  // The state of a line at one point of the process: mass per kilogram delivered, and mass for fixed losses later on.
  const stock = each(lines, "lines", ({ name, massFraction }, at) => ({
    name,
    perDelivered: notNegative(massFraction, `${at}.massFraction`),
    fixed: 0,
  }));
  const sum = positive(total(stock, "perDelivered"), "sum of the mass fractions");
  for (const line of stock) line.perDelivered /= sum;
  const massOf = (line: { perDelivered: number; fixed: number }) => delivered * line.perDelivered + line.fixed;

  const losses = [...takings(allowances, stock)].reverse().map(({ kind, called, at, amount, from }) => {
    if (kind === "fixed") {
      const present = from.reduce((mass, line) => mass + massOf(line), 0);
      if (!(present > 0)) refuse("input", at, `a loss of ${amount} kg from lines without mass`, "lines with a share");
      for (const line of from) line.fixed += amount * (massOf(line) / present);
      return { mass: amount, massProportional: 0, massFixed: amount, ...called };
    }
    for (const line of from) {
      line.perDelivered /= 1 - amount;
      line.fixed /= 1 - amount;
    }
    const massProportional = delivered * (amount * total(from, "perDelivered"));
    const massFixed = amount * total(from, "fixed");
    return { mass: result(massProportional + massFixed, at), massProportional, massFixed, ...called };
  });

  const charged = result(
    stock.reduce((mass, line) => mass + massOf(line), 0),
    "total",
  );
  return {
    lines: stock.map((line) => ({
      name: line.name,
      mass: massOf(line),
      massProportional: delivered * line.perDelivered,
      massFixed: line.fixed,
      massFraction: massOf(line) / charged,
    })),
    allowances: losses.reverse(),
    total: charged,
  };
}

function total<K extends string>(lines: readonly Readonly<Record<K, number>>[], key: K): number {
  return lines.reduce((sum, line) => sum + line[key], 0);
}
