import { record, refuse } from "../guards.js";

/** Where and when the rows of a table hold: law differs by place and changes with time. */
export interface DatedTable {
  /** Where it holds, or the standard that it belongs to: `"EU"`. */
  readonly jurisdiction: string;
  /** The day whose state of the law it gives, as `"2026-11-28"`. */
  readonly date: string;
}

/** To the 28th in every month, the 29th and 30th in all but February, the 31st in seven. */
const ofEveryYear =
  /^\d{4}-(?:(?:0[1-9]|1[0-2])-(?:0[1-9]|1\d|2[0-8])|(?:0[13-9]|1[0-2])-(?:29|30)|(?:0[13578]|1[02])-31)$/;

/** A day as `"2027-10-17"`: two of them compare as texts do. */
export function readDate(text: string, path: string): string {
  if (typeof text === "string" && (ofEveryYear.test(text) || isLeapDay(text))) return text;
  return refuse("input", path, text, 'a day of the calendar, such as "2027-10-17"');
}

function isLeapDay(text: string): boolean {
  const year = Number(text.slice(0, 4));
  return /^\d{4}-02-29$/.test(text) && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
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
