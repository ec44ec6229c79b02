import type { Place } from "./place.js";

/** Where a text stops being JSON, and what is wrong there. */
export interface Broken {
  readonly place: Place;
  readonly found: string;
  readonly expected: string;
}

/** What may come next: a value, the first or a later entry of a list or an object, or what follows a value. */
type State = "value" | "first entry" | "first key" | "key" | "colon" | "after";

/** A comment; a text; a number or a word of JSON; a sign; anything else. What a text may not hold is looked at by `isText`. */
const tokens =
  /[ \t\r\n]*(?:(\/\/[^\n]*|\/\*[\s\S]*?(?:\*\/|$)|#[^\n]*)|("(?:[^"\\\n]|\\[^\n])*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.+-])|(?:true|false|null)(?!\w))|([{}[\],:])|([^ \t\r\n,:[\]{}"]+|"[^\n]*))/y;

/** Whether what stands between quotation marks is a text to JSON: no tab as it is, no escape that JSON does not have. */
function isText(quoted: string): boolean {
  try {
    return typeof JSON.parse(quoted) === "string";
  } catch {
    return false;
  }
}

/** The first place at which a text is no JSON. Every browser words this differently, and some give no place. */
export function brokenAt(text: string): Broken | undefined {
  const open: ("{" | "[")[] = [];
  let state: State = "value";
  let at = 0;
  for (;;) {
    tokens.lastIndex = at;
    const match = tokens.exec(text);
    if (!match) break;
    const [, comment, quoted, plain, sign, odd] = match;
    const word = comment ?? quoted ?? plain ?? sign ?? odd ?? "";
    at = tokens.lastIndex;
    const place = { start: at - word.length, end: at };
    const fault = (expected: string): Broken => ({ place, found: named(word, comment), expected });
    if (comment !== undefined) return fault("no comment: JSON has none");
    if (quoted !== undefined && !isText(quoted)) return fault("text without a tab, and with \\\\ for a backslash");
    if (odd !== undefined)
      return fault(odd.startsWith('"') ? "text that ends with a quotation mark in its line" : wanted(state, open));
    const next = step(
      state,
      { quoted: quoted !== undefined, value: quoted !== undefined || plain !== undefined, sign },
      open,
    );
    if (next === undefined) return fault(wanted(state, open));
    state = next;
  }
  if (state === "after" && open.length === 0) return undefined;
  const end = text.trimEnd().length;
  return { place: { start: end, end: text.length }, found: "the end of the text", expected: wanted(state, open) };
}

interface Token {
  readonly quoted: boolean;
  readonly value: boolean;
  readonly sign: string | undefined;
}

/** The state after a token, or nothing where the token may not stand. */
function step(state: State, { quoted, value, sign }: Token, open: ("{" | "[")[]): State | undefined {
  const inner = open.at(-1);
  switch (state) {
    case "first entry":
      if (sign === "]") return close(open);
      return begin({ value, sign }, open);
    case "value":
      return begin({ value, sign }, open);
    case "first key":
      if (sign === "}") return close(open);
      return quoted ? "colon" : undefined;
    case "key":
      return quoted ? "colon" : undefined;
    case "colon":
      return sign === ":" ? "value" : undefined;
    case "after":
      if (inner === undefined) return undefined;
      if (sign === ",") return inner === "{" ? "key" : "value";
      return sign === (inner === "{" ? "}" : "]") ? close(open) : undefined;
  }
}

function begin({ value, sign }: Omit<Token, "quoted">, open: ("{" | "[")[]): State | undefined {
  if (value) return "after";
  if (sign !== "{" && sign !== "[") return undefined;
  open.push(sign);
  return sign === "{" ? "first key" : "first entry";
}

function close(open: ("{" | "[")[]): State {
  open.pop();
  return "after";
}

function wanted(state: State, open: readonly ("{" | "[")[]): string {
  switch (state) {
    case "value":
      return "a value";
    case "first entry":
      return "a value, or ] for the end of the list";
    case "first key":
      return "a name in quotation marks, or }";
    case "key":
      return "a name in quotation marks after the comma";
    case "colon":
      return "a colon after the name";
    case "after":
      if (open.length === 0) return "nothing more: the document has ended";
      return open.at(-1) === "{" ? "a comma, or } for the end" : "a comma, or ] for the end of the list";
  }
}

function named(word: string, comment: string | undefined): string {
  const short = word.length > 24 ? `${word.slice(0, 24)}…` : word;
  return comment === undefined ? short : `a comment, ${short}`;
}

/** Line and column of a place, both counted from 1. */
export function lineAndColumn(text: string, start: number): { readonly line: number; readonly column: number } {
  const lines = text.slice(0, start).split("\n");
  return { line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}
