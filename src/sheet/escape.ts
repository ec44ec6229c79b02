/**
 * Marks that turn the direction of what follows, and control characters: none belongs into a name, and the former let a
 * line be read as another one than it is.
 */
const misleading = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u2028\u2029]/gu;

/** Text with a mark in place of each character that is not to be seen; lines may break. */
export function visible(text: string): string {
  return text.replace(misleading, (letter) => (/[\r\n\t]/.test(letter) ? letter : "\ufffd"));
}

/** The same on one line. Each run of spaces is read once: a pattern with a break in its middle would start again at every space. */
function oneLine(text: string): string {
  return visible(text.replace(/\s+/g, (space) => (/[\r\n\t\u2028\u2029]/.test(space) ? " " : space)));
}

/** Text that Markdown prints as it is: no mark-up, no entity, no link. */
export function markdownText(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_[\]<>#~|&]/g, "\\$&")
    .replace(/:(?=\/\/)/g, "\\:")
    .replace(/\b(www)\./gi, "$1\\.");
}

/** The same where a line begins, and would be taken for a list, a heading or a rule. */
export function markdownLine(text: string): string {
  return markdownText(text.trim())
    .replace(/^(?:[-+](?=\s|$)|-(?=[-\s]*$)|=(?==*$))/, "\\$&")
    .replace(/^(\d+)([.)])(?=\s|$)/, "$1\\$2");
}

const entities = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text that HTML shows as it is, in an element or in an attribute; a number stays on one line with its unit. */
export function htmlText(text: string): string {
  return oneLine(text)
    .replace(/[&<>"']/g, (letter) => entities[letter as keyof typeof entities])
    .replace(/([\d)]) (?=[\p{Lu}°%µ]|(?:k?g|mg|m?L|mm|rpm|h|min|s|kW)\b)/gu, "$1\u00a0");
}

/** Text as a string of CSS: whatever is no plain letter, digit or space is written by its number. */
export function cssText(text: string): string {
  const written = oneLine(text).replace(/[^a-zA-Z0-9 ]/gu, (letter) => `\\${letter.codePointAt(0)?.toString(16)} `);
  return `"${written}"`;
}
