/** One table of a sheet: a heading a column, and rows of text. */
export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A table in GitHub-flavoured Markdown; text of the documents cannot break out of its cell. */
export function markdownTable({ columns, rows }: Table): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(markdownCell).join(" | ")} |`;
  return [line(columns), `|${columns.map(() => "---").join("|")}|`, ...rows.map(line)].join("\n");
}

/** Text that Markdown prints as it is. */
export function markdownText(text: string): string {
  return text.replace(/[\\`*_[\]<>#]/g, "\\$&").replace(/\s*[\r\n]+\s*/g, " ");
}

function markdownCell(text: string): string {
  return markdownText(text).replaceAll("|", "\\|");
}

/** A table as CSV after RFC 4180, which a spreadsheet opens without running anything that stands in it. */
export function csvTable({ columns, rows }: Table): string {
  return [columns, ...rows].map((cells) => `${cells.map(csvCell).join(",")}\r\n`).join("");
}

function csvCell(text: string): string {
  // A leading =, +, - or @ would be taken for a formula; plain numbers are let through.
  const inert = /^[=+\-@\t\r]/.test(text) && !Number.isFinite(Number(text)) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

/** Lines as a list with dots; their text is escaped. */
export function markdownList(lines: readonly string[]): string {
  return lines.map((line) => `- ${markdownText(line)}`).join("\n");
}
