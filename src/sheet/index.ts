export { toCsv } from "./csv.js";
export { toJson } from "./json.js";
export { toMarkdown } from "./markdown.js";
export { scalesToMarkdown } from "./scales.js";
