import { list, notNegative, record, refuse, result } from "../guards.js";

/** The share of each part in the sum of one of its fields: masses, volumes or moles, of which only the proportions count. */
export function fractionsOf<Field extends string>(
  parts: readonly { readonly [field in Field]: number }[],
  field: Field,
): readonly number[] {
  const amounts = list(parts, "parts", 1).map((part, i) =>
    notNegative(record(part, `parts[${i}]`)[field], `parts[${i}].${field}`),
  );
  const total = result(
    amounts.reduce((sum, amount) => sum + amount, 0),
    `sum of ${field}`,
  );
  return total > 0 ? amounts.map((amount) => amount / total) : refuse("input", "parts", 0, `a sum of ${field} above 0`);
}

/** The mean of a value of the parts, weighted with their fractions. */
export function meanOf(fractions: readonly number[], valueAt: (i: number) => number): number {
  return fractions.reduce((sum, fraction, i) => sum + fraction * valueAt(i), 0);
}
