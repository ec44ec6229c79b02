/** A row of a Markdown table. */
function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll("|", "\\|").replaceAll("\n", " ")).join(" | ")} |`;
}

/** A Markdown table; the columns after the first `words` hold numbers and stand to the right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], words: number): string[] {
  return [row(head), row(head.map((_, column) => (column < words ? "---" : "---:"))), ...rows.map(row)];
}
