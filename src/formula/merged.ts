import { compare, plus, type Rational } from "../units/rational.js";
import { byName } from "./ingredient-name.js";

/** A name with its exact share of the product. */
export interface Named {
  readonly name: string;
  /** What its name has in common with other spellings of it. */
  readonly key: string;
  readonly share: Rational;
}

/**
 * One entry for each name, the larger share first, equal shares by name: the same whatever the order of the lines.
 *
 * Of several spellings the one that sorts first is kept.
 */
export function merged(entries: readonly Named[]): readonly Named[] {
  const byKey = new Map<string, Named>();
  for (const { name, key, share } of entries) {
    const before = byKey.get(key);
    byKey.set(key, {
      name: before && before.name < name ? before.name : name,
      key,
      share: before ? plus(before.share, share) : share,
    });
  }
  return [...byKey.values()].sort(byShare);
}

/** The larger share first, equal shares by name. */
export function byShare(left: Named, right: Named): number {
  return compare(right.share, left.share) || byName(left, right);
}
