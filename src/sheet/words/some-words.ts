import { refuse, show } from "../../guards.js";
import { english } from "./english.js";
import type { Words } from "./types.js";

/** A table of words in part, at any depth: what it leaves out stays as it is. */
type Some<T> = T extends string | ((...parameters: never) => unknown)
  ? T
  : { readonly [Key in keyof T]?: Some<T[Key]> };

/** Words in place of English ones, in whole or in part: a part that is given replaces that part only. */
export type SomeWords = Some<Words>;

/** The English words with some of them replaced. */
export function wordsWith(some: SomeWords): Words {
  return replaced(english, some, "words") as Words;
}

/** One part of a table: text replaces text, a function a function. */
function replaced(words: unknown, some: unknown, path: string): unknown {
  if (some === undefined) return words;
  if (typeof words === "object" && words !== null) {
    if (typeof some !== "object" || some === null) return refuse("input", path, show(some), "an object of words");
    const own = words as Readonly<Record<string, unknown>>;
    const entries = Object.entries(some).map(([key, entry]) => [key, replaced(own[key], entry, `${path}.${key}`)]);
    return { ...own, ...Object.fromEntries(entries) };
  }
  // A practice that English has no words for may be added: it is text.
  const kind = typeof (words ?? "");
  if (typeof some !== kind)
    return refuse("input", path, show(some), kind === "string" ? "text" : "a function that gives text");
  return some;
}
