import { record, refuse } from "../guards.js";

/** Where and when the rows of a table hold: law differs by place and changes with time. */
export interface DatedTable {
  /** Where it holds, or the standard that it belongs to: `"EU"`. */
  readonly jurisdiction: string;
  /** The day whose state of the law it gives, as `"2026-11-28"`. */
  readonly date: string;
}

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A day as `"2027-10-17"`: two of them compare as texts do. */
export function readDate(text: string, path: string): string {
  const [, year, month, day] = (typeof text === "string" && /^(\d{4})-(\d\d)-(\d\d)$/.exec(text)) || [];
  const leap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0);
  const length = month === "02" && leap ? 29 : (monthLengths[Number(month) - 1] ?? 0);
  if (Number(day) >= 1 && Number(day) <= length) return text;
  return refuse("input", path, text, 'a day of the calendar, such as "2027-10-17"');
}

/** A text that says something. */
export function readText(text: string, path: string): string {
  return typeof text === "string" && text.trim() ? text : refuse("input", path, text, "a text that is not empty");
}

/** Where and when a table holds, checked. */
export function readDatedTable(table: DatedTable, path: string): DatedTable {
  const { jurisdiction, date } = record(table, path);
  return { jurisdiction: readText(jurisdiction, `${path}.jurisdiction`), date: readDate(date, `${path}.date`) };
}
