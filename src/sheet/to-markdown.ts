import type { Block } from "./blocks.js";
import { markdownLine, markdownText } from "./escape.js";
import { type Cell, type Grade, isLines, plainCell, type Table } from "./table.js";

/** Pieces of a sheet as Markdown (GitHub flavour); no text of the documents is taken for mark-up. */
export function markdownOf(blocks: readonly Block[]): string {
  return [...blocks.flatMap(blockOf), ""].join("\n\n");
}

function blockOf(block: Block): readonly string[] {
  switch (block.kind) {
    case "title":
    case "part":
      return [`# ${markdownLine(block.text)}`];
    case "section":
      return [`## ${markdownLine(block.text)}`];
    case "subsection":
      return [`### ${markdownLine(block.text)}`];
    case "text":
      return [paragraph(block)];
    case "list":
      return [markdownList(block.lines)];
    case "table":
      return [markdownTable(block.table)];
    case "figure":
      return [];
  }
}

function paragraph({ text, strong, isSmall }: Extract<Block, { readonly kind: "text" }>): string {
  const plain = strong === undefined ? markdownLine(text) : markdownText(text);
  if (isSmall) return `_${plain}_`;
  if (strong === undefined) return plain;
  return `**${markdownText(strong)}**${plain === "" ? "" : ` ${plain}`}`;
}

/** Lines as a list with dots. */
export function markdownList(lines: readonly Cell[]): string {
  return lines.map((line) => `- ${typeof line === "string" ? markdownLine(line) : cellOf(line)}`).join("\n");
}

/** A table; text of the documents cannot break out of its cell. */
export function markdownTable({ columns, rows }: Table): string {
  const line = (cells: readonly Cell[]): string => `| ${cells.map(cellOf).join(" | ")} |`;
  return [line(columns), `|${columns.map(() => "---").join("|")}|`, ...rows.map(line)].join("\n");
}

/** Measured in bold, predicted in italics, what lies between readings as it is. */
const marks: Readonly<Record<Grade, string>> = { measured: "**", interpolated: "", predicted: "_" };

function cellOf(cell: Cell): string {
  if (typeof cell === "string" || isLines(cell)) return markdownText(plainCell(cell));
  const mark = cell.text === "" ? "" : marks[cell.grade];
  return `${mark}${markdownText(cell.text)}${mark}`;
}
