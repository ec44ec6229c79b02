// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const changesToMarkdown: Known = [
  ["before", "after"],
  ["documents", "words", "formats"],
];
export const exposureToMarkdown: Known = [["exposure"], ["words", "formats"]];
export const fillCheckToMarkdown: Known = [["plan"], ["words", "formats"]];
export const labelToMarkdown: Known = [["label"], ["words", "formats"]];
export const scalesToMarkdown: Known = [["plans"], ["labels", "documents", "words", "formats"]];
export const stabilityToMarkdown: Known = [["plan"], ["words", "formats"]];
export const sweepToMarkdown: Known = [["sweep"], ["words", "formats"]];
export const toCsv: Known = [
  ["plan", "table"],
  ["words", "formats"],
];
export const toHtml: Known = [["plan"], ["series", "label", "exposure", "words", "formats"]];
export const toJson: Known = [["plan"], []];
export const toMarkdown: Known = [["plan"], ["label", "exposure", "words", "formats"]];
