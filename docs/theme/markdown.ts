import { existsSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { tex } from "@mdit/plugin-tex";
import katex from "katex";
import type MarkdownIt from "markdown-it";
import { boxTables } from "../in-page/wide-tables.js";
import { docs } from "./documents.js";

/** Equations become MathML while the site is built: no fonts, no script, no other host, and a bad one fails the build. */
function equation(text: string, displayMode: boolean): string {
  const options = { displayMode, output: "mathml", throwOnError: true, strict: "error" } as const;
  if (!displayMode) return katex.renderToString(text, options);
  const parts = besides(text).map((part) => `<div>${katex.renderToString(part, options)}</div>`);
  return `<div class="wide equation">${parts.join("")}</div>`;
}

/** Equations that stand beside each other, by themselves: where there is no room they go below each other. */
function besides(text: string): string[] {
  const parts = text.split(/\\qquad/);
  const isWhole = (part: string) => {
    const count = (sign: RegExp) => part.match(sign)?.length ?? 0;
    return (
      part.trim() !== "" &&
      count(/(?<!\\)\{/g) === count(/(?<!\\)\}/g) &&
      count(/\\left\b/g) === count(/\\right\b/g) &&
      count(/\\begin\b/g) === count(/\\end\b/g)
    );
  };
  return parts.every(isWhole) ? parts : [text];
}

/** A figure stands in the page itself, so that it takes the page's colours, with its description beneath. */
export function figure(file: string): string {
  const svg = readFileSync(file, "utf8").replace(/<style>.*?<\/style>/s, "");
  const description = /<desc\b[^>]*>(.*?)<\/desc>/s.exec(svg)?.[1] ?? "";
  return `<span class="figure"><span class="wide">${svg}</span><small>${description}</small></span>`;
}

/** What the site's Markdown knows beyond the usual: equations, figures, and tables that scroll by themselves. */
export function extendMarkdown(parser: MarkdownIt): void {
  // A source that is named by its address is no link to elsewhere.
  parser.set({ linkify: false });
  parser.use(tex, { render: equation });
  boxTables(parser);
  const { rules } = parser.renderer;
  const { image } = rules;
  rules.image = (tokens, index, ...rest) => {
    const file = `${docs}pages/${basename(tokens[index]?.attrGet("src") ?? "")}`;
    if (file.endsWith(".svg") && existsSync(file)) return figure(file);
    return image?.(tokens, index, ...rest) ?? "";
  };
}
