import { record, refuse } from "../guards.js";

/** Where and when the rows of a table hold: law differs by place and changes with time. */
export interface DatedTable {
  /** Where it holds, or the standard that it belongs to: `"EU"`. */
  readonly jurisdiction: string;
  /** The day whose state of the law it gives, as `"2026-11-28"`. */
  readonly date: string;
}

/** A day as `"2027-10-17"`: two of them compare as texts do. */
export function readDate(text: string, path: string): string {
  const [, year, month, day] = (typeof text === "string" && /^(\d{4})-(\d\d)-(\d\d)$/.exec(text)) || [];
  if (isDay(Number(year), Number(month), Number(day))) return text;
  return refuse("input", path, text, 'a day of the calendar, such as "2027-10-17"');
}

/** Whether there is such a day: long and short months take turns, and begin anew with August. */
function isDay(year: number, month: number, day: number): boolean {
  if (!(month >= 1 && month <= 12 && day >= 1)) return false;
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return day <= (month === 2 ? (isLeap ? 29 : 28) : 30 + ((month + (month >> 3)) % 2));
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
