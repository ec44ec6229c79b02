import type { Calculator, Field } from "./calculator-data.js";
import { type Entries, type Entry, inUnit } from "./calculator-values.js";

/** The words that a field may hold now: of two fields of units, the second has those that convert into the first. */
export function choicesNow(
  field: Pick<Field, "path" | "kind" | "choices">,
  { fields }: Pick<Calculator, "fields">,
  entries: Entries,
): readonly string[] {
  const { path, kind, choices } = field;
  if (kind === "boolean") return ["true", "false"];
  const first = fields.find((one) => one.kind === "choice" && one.choices.length === choices.length);
  // Fields of few words are no lists of units.
  if (!first || first.path === path || choices.length <= 20) return choices;
  const unit = entries.get(first.path)?.text;
  return choices.filter((one) => converts(one, unit));
}

/** Where a word is none of those that its field may hold any more, the first of them takes its place; whether one did. */
export function refit(calculator: Pick<Calculator, "fields">, entries: Map<string, Entry>): boolean {
  const unfit = calculator.fields.flatMap((field) => {
    const text = entries.get(field.path)?.text;
    if (field.kind !== "choice" || text === undefined || (text === "" && field.optional)) return [];
    const choices = choicesNow(field, calculator, entries);
    const [first] = choices;
    return first === undefined || choices.includes(text) ? [] : [[field.path, first]];
  });
  for (const [path = "", text = ""] of unfit) entries.set(path, { text });
  return unfit.length > 0;
}

function converts(from: string, to: string | undefined): boolean {
  try {
    inUnit(1, from, to);
    return true;
  } catch {
    return false;
  }
}
