import { readFileSync } from "node:fs";

const guide = readFileSync(new URL("../../docs/units.md", import.meta.url), "utf8");

/** The rows of the table under a heading of docs/units.md, cell by cell, without its head. */
export function rowsUnder(heading: string): string[][] {
  const section = guide.split(/^## /m).find((text) => text.startsWith(heading)) ?? "";
  const rows = section.split("\n").filter((line) => line.startsWith("| "));
  return rows.slice(1).map((row) => row.slice(2, -2).split(" | "));
}
