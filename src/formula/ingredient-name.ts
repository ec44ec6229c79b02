import { readText } from "./dated-table.js";

/** The name without spaces that say nothing. */
export function plainName(name: string): string {
  return name.trim().replace(/\s+/g, " ");
}

/** What two spellings of one ingredient's name have in common: capitals and spaces tell no ingredients apart. */
export function nameKey(name: string, path: string): string {
  return plainName(readText(name, path).normalize("NFKC")).toLowerCase();
}

/** Names in an order that depends on no locale. */
export function byName(left: { readonly name: string }, right: { readonly name: string }): number {
  return left.name < right.name ? -1 : left.name > right.name ? 1 : 0;
}
