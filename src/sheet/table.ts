import { visible } from "./escape.js";

/** How a figure is come by: read on an instrument, between such readings, or by a law. */
export type Grade = "measured" | "interpolated" | "predicted";

/** A figure whose look says how it is come by. */
export interface Graded {
  readonly text: string;
  readonly grade: Grade;
}

/** What stands in a cell: text, a figure with its grade, or several lines. */
export type Cell = string | Graded | readonly string[];

/** One table of a sheet: a heading a column, and rows of text. */
export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** Lines whose figures are come by in one way. */
export function graded(grade: Grade, lines: readonly string[]): readonly Graded[] {
  return lines.map((text) => ({ text, grade }));
}

/** How a figure is come by that rests on these: a law makes it a prediction. */
export function gradeOf(bases: readonly { readonly kind: string }[]): Grade {
  return bases.some(({ kind }) => kind === "law") ? "predicted" : "measured";
}

/** What a cell says, without its look. */
export function plainCell(cell: Cell): string {
  if (typeof cell === "string") return cell;
  return isLines(cell) ? cell.join(" · ") : cell.text;
}

/** Whether a cell has several lines. */
export function isLines(cell: Cell): cell is readonly string[] {
  return Array.isArray(cell);
}

/** A table as CSV after RFC 4180, which a spreadsheet opens without running anything that stands in it. */
export function csvTable({ columns, rows }: Table): string {
  return [columns, ...rows.map((row) => row.map(plainCell))]
    .map((cells) => `${cells.map((cell) => csvCell(visible(cell))).join(",")}\r\n`)
    .join("");
}

function csvCell(text: string): string {
  // A leading =, +, - or @ would be taken for a formula; plain numbers are let through.
  const inert = /^[=+\-@\t\r]/.test(text) && !Number.isFinite(Number(text)) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}
