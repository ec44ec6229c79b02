import { keysOf } from "../in-page/paths.js";

/** From where to where something stands in a text. */
export interface Place {
  readonly start: number;
  readonly end: number;
}

/** Where a path leads in a text of JSON: to its value, or to as near as there is. The text is sound JSON. */
export function placeOf(text: string, path: string): Place {
  let at = skip(text, 0);
  for (const key of keysOf(path).map(String)) {
    const next = member(text, at, key);
    if (next === undefined) break;
    at = next;
  }
  return { start: at, end: endOf(text, at) };
}

const skip = (text: string, at: number) => at + (/^\s*/.exec(text.slice(at))?.[0].length ?? 0);

/** The start of the value under a key of the object, or at an index of the list, that starts at `at`. */
function member(text: string, at: number, key: string): number | undefined {
  const list = text[at] === "[";
  if (!list && text[at] !== "{") return undefined;
  let place = skip(text, at + 1);
  for (let index = 0; text[place] !== "]" && text[place] !== "}"; index++) {
    let name = String(index);
    if (!list) {
      const end = endOf(text, place);
      name = JSON.parse(text.slice(place, end)) as string;
      place = skip(text, skip(text, end) + 1);
    }
    if (name === key) return place;
    place = skip(text, endOf(text, place));
    if (text[place] === ",") place = skip(text, place + 1);
  }
  return undefined;
}

/** Behind the value that starts at `at`. */
function endOf(text: string, at: number): number {
  let depth = 0;
  const tokens = /"(?:[^"\\]|\\.)*"|[[\]{}]|[^\s,:[\]{}"]+/g;
  tokens.lastIndex = at;
  for (let token = tokens.exec(text); token; token = tokens.exec(text)) {
    if (token[0] === "[" || token[0] === "{") depth++;
    if (token[0] === "]" || token[0] === "}") depth--;
    if (depth === 0) return tokens.lastIndex;
  }
  return text.length;
}
