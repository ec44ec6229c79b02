import type { Block } from "./blocks.js";
import { cssText, htmlText } from "./escape.js";
import { style } from "./style.js";
import { type Cell, type Grade, isLines, plainCell, type Table } from "./table.js";

/** Pieces of a sheet as one self-contained HTML file without script; no text of the documents is taken for mark-up. */
export function htmlOf(blocks: readonly Block[], language: string, foot: string): string {
  const title = blocks.find((block) => block.kind === "title")?.text ?? "";
  return [
    "<!doctype html>",
    `<html lang="${htmlText(language)}">`,
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${htmlText(title)}</title>`,
    `<style>${style}${footOf(foot)}</style>`,
    "</head>",
    "<body>",
    "<main>",
    ...blocks.map(blockOf),
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** What stands at the foot of each printed page, so that one that got loose is found again: the text, and which page it is of how many. */
function footOf(text: string): string {
  return `@page{@bottom-left{content:${cssText(text)};font-size:7pt}@bottom-right{content:counter(page) " / " counter(pages);font-size:7pt}}\n`;
}

function blockOf(block: Block): string {
  switch (block.kind) {
    case "title":
      return `<h1>${htmlText(block.text)}</h1>`;
    case "part":
      return `<h1 class="part">${htmlText(block.text)}</h1>`;
    case "section":
      return `<h2>${htmlText(block.text)}</h2>`;
    case "subsection":
      return `<h3>${htmlText(block.text)}</h3>`;
    case "text":
      return paragraph(block);
    case "list":
      return `<ul>\n${block.lines.map((line) => `<li>${innerOf(line)}</li>`).join("\n")}\n</ul>`;
    case "table":
      return tableOf(block.table, lookOf(block));
    case "figure":
      return `<figure>\n${block.svg}\n<figcaption>${htmlText(block.caption)}</figcaption>\n</figure>`;
  }
}

function paragraph({ text, strong, isSmall }: Extract<Block, { readonly kind: "text" }>): string {
  const bold = strong === undefined ? "" : `<strong>${htmlText(strong)}</strong> `;
  return `<p${isSmall ? ' class="small"' : ""}>${bold}${htmlText(text)}</p>`;
}

function lookOf({ isForm, isDense, side }: Extract<Block, { readonly kind: "table" }>): string {
  return [...(isForm ? ["form"] : []), ...(isDense ? ["dense"] : []), ...(side ? [side] : [])].join(" ");
}

function tableOf({ columns, rows }: Table, look: string): string {
  const head = columns.map((column) => `<th scope="col">${htmlText(column)}</th>`).join("");
  const body = rows.map((row) => `<tr>${row.map(cellOf).join("")}</tr>`);
  return [
    `<table${look === "" ? "" : ` class="${look}"`}>`,
    `<thead><tr>${head}</tr></thead>`,
    "<tbody>",
    ...body,
    "</tbody>",
    "</table>",
  ].join("\n");
}

/** A figure looks measured in bold and predicted in italics, on paper as on a screen. */
const elements: Readonly<Record<Grade, string>> = { measured: "b", interpolated: "span", predicted: "i" };

function cellOf(cell: Cell): string {
  // A box to write in by hand: its width counts, whatever else is in the table.
  if (cell === "") return '<td class="empty"><div></div></td>';
  const text = plainCell(cell);
  const isShort = !isLines(cell) && (isFigure(text) || text.length <= wordsMax);
  return `<td${isShort ? ' class="figure"' : ""}>${innerOf(cell)}</td>`;
}

function innerOf(cell: Cell): string {
  if (typeof cell === "string") return htmlText(cell);
  if (isLines(cell)) return cell.map((line) => `<div>${htmlText(line)}</div>`).join("");
  const element = elements[cell.grade];
  return `<${element}>${htmlText(cell.text)}</${element}>`;
}

/** A cell of so few letters is never broken. */
const wordsMax = 18;

/** Up to so many letters a figure with its unit and its band stays on one line. */
const figureMax = 28;

function isFigure(text: string): boolean {
  return text.length <= figureMax && /^[-\d]/.test(text);
}
