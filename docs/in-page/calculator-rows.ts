import type { Calculator, Field } from "./calculator-data.js";
import { type Entry, valueAt, withValue } from "./calculator-values.js";

/** How many rows a list has. */
export function rowsOf({ fields }: Pick<Calculator, "fields">, list: string): number {
  const rows = fields.flatMap(({ path }) => {
    const [, row] = path.startsWith(`${list}[`) ? (/\[(\d+)\]/.exec(path) ?? []) : [];
    return row === undefined ? [] : [Number(row)];
  });
  return Math.max(-1, ...rows) + 1;
}

/** The calculator with a row more, and in `entries` what stands in its last row. */
export function lengthened(calculator: Calculator, list: string, entries: Map<string, Entry>): Calculator {
  const { fields, parameters, start } = calculator;
  const rows = rowsOf(calculator, list);
  const [last, next] = [`${list}[${rows - 1}]`, `${list}[${rows}]`];
  const before = fields.filter(({ path }) => path.startsWith(last));
  const added = before.map((field) => ({
    ...field,
    path: field.path.replace(last, next),
    label: field.label.replace(` ${rows}`, ` ${rows + 1}`),
  }));
  for (const { path } of before) {
    const entry = entries.get(path);
    if (entry) entries.set(path.replace(last, next), entry);
  }
  const place = fields.indexOf(before.at(-1) as Field) + 1;
  return {
    ...calculator,
    fields: [...fields.slice(0, place), ...added, ...fields.slice(place)],
    start: withValue(parameters, start, next, valueAt(parameters, start, last)),
  };
}

/** The calculator without its last row, which leaves `entries` too. */
export function shortened(calculator: Calculator, list: string, entries: Map<string, Entry>): Calculator {
  const { fields, parameters, start } = calculator;
  const gone = `${list}[${rowsOf(calculator, list) - 1}]`;
  const rows = valueAt(parameters, start, list) as readonly unknown[];
  for (const path of [...entries.keys()]) if (path.startsWith(gone)) entries.delete(path);
  return {
    ...calculator,
    fields: fields.filter(({ path }) => !path.startsWith(gone)),
    start: withValue(parameters, start, list, rows.slice(0, -1)),
  };
}
