import { readText } from "./dated-table.js";

/** A name without spaces that say nothing. */
export function readName(name: string, path: string): string {
  return readText(name, path).trim().replace(/\s+/g, " ");
}

/** What two spellings of one ingredient's name have in common: capitals and spaces tell no ingredients apart. */
export function nameKey(name: string, path: string): string {
  return readName(name, path).normalize("NFKC").toLowerCase();
}

/** Names in an order that depends on no locale. */
export function byName(left: { readonly name: string }, right: { readonly name: string }): number {
  return left.name < right.name ? -1 : left.name > right.name ? 1 : 0;
}
