import type { Calculator } from "./calculator-data.js";
import type { Entries, Entry } from "./calculator-values.js";

/** What stands behind `#` in a link that holds the inputs. */
export function hashOfEntries(entries: Entries): string {
  const parts = [...entries].map(([path, { text, unit }]): [string, string] => [
    path,
    unit === undefined ? text : `${text} ${unit}`,
  ]);
  return `#${new URLSearchParams(parts).toString()}`;
}

/** The fields that a link holds, as far as the calculator has them. */
export function entriesOfHash(hash: string, { fields }: Pick<Calculator, "fields">): Map<string, Entry> {
  const found = new Map<string, Entry>();
  for (const [path, said] of new URLSearchParams(hash.replace(/^#/, ""))) {
    const field = fields.find((one) => one.path === path);
    if (!field) continue;
    const [, text = "", unit] = /^(\S*)(?: (.+))?$/.exec(said) ?? [];
    if (field.kind !== "number") found.set(path, { text: said });
    else if (unit === undefined || unit === field.unit || field.units?.includes(unit))
      found.set(path, unit === undefined ? { text } : { text, unit });
  }
  return found;
}
