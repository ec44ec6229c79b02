// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const extractIndex: Known = [["plant", "solvents"], []];
export const indexAsSupplied: Known = [["index", "strength", "carrierIndex"], []];
export const indexByMolarMass: Known = [["molarMassNatural", "molarMass"], []];
export const indexByRenewableCarbon: Known = [["carbonRenewable", "carbonTotal"], []];
export const largestShare: Known = [
  ["ingredients", "ingredient", "claim"],
  ["replacing", "content"],
];
export const productContent: Known = [["ingredients"], []];
export const shortfalls: Known = [["ingredients"], ["content"]];
