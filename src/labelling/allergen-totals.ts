import { type DatedTable, readDatedTable } from "../formula/dated-table.js";
import { nameKey, readName } from "../formula/ingredient-name.js";
import { byShare, merged, type Named } from "../formula/merged.js";
import { list, record, refuse } from "../guards.js";
import { exactShare } from "../units/exact.js";
import { type Rational, total } from "../units/rational.js";
import * as known from "./known.js";
import type { Leaf } from "./line.js";

/** Whether a product stays on the skin or is rinsed off. The caller decides. */
export type ProductUse = "leave-on" | "rinse-off";

/** The share above which an allergen is to be named, as text. */
export type AllergenThresholds = Readonly<Record<ProductUse, string>>;

/** A substance that is to be named above the threshold, or a group of them under one name. */
export interface ListedAllergen {
  /** The name that goes on the label. */
  readonly name: string;
  /** Other names that count to this entry, summed with it. */
  readonly members?: readonly string[];
}

/** A list of fragrance allergens with the place and the day for which it holds: the caller's data, with no default. */
export interface AllergenTable extends DatedTable {
  /** The entries, each with a name of its own. */
  readonly substances: readonly ListedAllergen[];
  /** The shares above which an entry is to be named; `euAllergenThresholds` by default if the jurisdiction is `"EU"`. */
  readonly thresholds?: AllergenThresholds;
}

/**
 * The shares above which the EU asks for a fragrance allergen's name: above, so that the share itself is not.
 *
 * @source eu-2023-1545 recitals, as an announcement of the regulation quotes them
 */
export const euAllergenThresholds: AllergenThresholds = { "leave-on": "0.001 %", "rinse-off": "0.01 %" };

/** What there is of one entry of the list. */
export interface AllergenTotal extends Named {
  readonly sources: readonly Named[];
}

/** The sums of a formula by the entries of a list, the larger first, the threshold, and what the sums may lack. */
export interface AllergenTotals extends DatedTable {
  readonly found: readonly AllergenTotal[];
  readonly notStated: readonly string[];
  readonly notInTable: readonly string[];
  readonly threshold: Rational;
}

/** Sums the allergens of a list over all materials, exactly. */
export function allergenTotals(
  leaves: readonly Leaf[],
  { use, table }: { readonly use: ProductUse; readonly table: AllergenTable },
  at = "",
): AllergenTotals {
  const dated = readDatedTable(table, `${at}table`);
  const thresholds = record(table.thresholds ?? thresholdsOf(dated, at), `${at}table.thresholds`);
  if (use !== "leave-on" && use !== "rinse-off") return refuse("input", `${at}use`, use, '"leave-on" or "rinse-off"');
  const entryOf = entries(table, `${at}table.substances`);
  const sources = new Map<Entry, Named[]>();
  const notStated: Named[] = [];
  const notInTable: Named[] = [];
  for (const leaf of leaves) {
    const { name, key, allergens } = leaf;
    const itself = entryOf.get(key);
    // A material that is itself on the list counts whole: what is said of it besides may not count it twice.
    if (itself !== undefined && allergens?.some((each) => entryOf.get(each.key) === itself))
      return refuse("input", "lines", name, `no ${itself.name} among its own allergens, since it counts whole`);
    // An oil that is itself on the list holds others of the list, too: it is asked for them like any material.
    if (!allergens) notStated.push(leaf);
    notInTable.push(...(allergens ?? []).filter((each) => !entryOf.has(each.key)));
    for (const each of [...(itself === undefined ? [] : [leaf]), ...(allergens ?? [])]) {
      const entry = entryOf.get(each.key);
      if (entry !== undefined) sources.set(entry, [...(sources.get(entry) ?? []), { name, key, share: each.share }]);
    }
  }
  const found = [...sources].map(([entry, each]) => ({
    ...entry,
    share: total(each.map(({ share }) => share)),
    sources: merged(each),
  }));
  return {
    found: found.sort(byShare),
    notStated: namesOf(notStated),
    notInTable: namesOf(notInTable),
    threshold: exactShare(thresholds[use], `${at}table.thresholds.${use}`),
    ...dated,
  };
}

/** The thresholds of a place whose table states none: those of the EU are no others' default. */
function thresholdsOf({ jurisdiction }: DatedTable, at: string): AllergenThresholds {
  return nameKey(jurisdiction, `${at}table.jurisdiction`) === "eu"
    ? euAllergenThresholds
    : refuse(
        "input",
        `${at}table.thresholds`,
        undefined,
        `the thresholds of ${jurisdiction}; the EU's are the default for "EU" alone`,
      );
}

/** Each name once, in an order that depends on no locale. */
function namesOf(entries: readonly Named[]): readonly string[] {
  return merged(entries)
    .map(({ name }) => name)
    .sort();
}

type Entry = Pick<Named, "name" | "key">;

/** The entry of the list behind each of the names that count to it. */
function entries({ substances }: AllergenTable, path: string): ReadonlyMap<string, Entry> {
  const entryOf = new Map<string, Entry>();
  for (const [i, substance] of list(substances, path, 1).entries()) {
    const at = `${path}[${i}]`;
    const { name, members = [] } = record(substance, at, known.listedAllergen);
    const key = nameKey(name, `${at}.name`);
    const entry = { name: readName(name, `${at}.name`), key };
    const keys = list(members, `${at}.members`).map((each, j) => nameKey(each, `${at}.members[${j}]`));
    for (const each of new Set([key, ...keys])) {
      if (entryOf.has(each)) refuse("input", at, each, "names that stand in one entry of the list only");
      entryOf.set(each, entry);
    }
  }
  return entryOf;
}
