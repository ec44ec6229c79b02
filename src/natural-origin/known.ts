// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const extractIndex: Known = [["plant", "solvents"], []];
export const indexAsSupplied: Known = [["index", "strength", "carrierIndex"], []];
export const indexByMolarMass: Known = [["molarMassNatural", "molarMass"], []];
export const indexByRenewableCarbon: Known = [["carbonRenewable", "carbonTotal"], []];
export const ingredient: Known = [
  ["mass"],
  ["name", "natural", "naturalOrigin", "organic", "organicOrigin", "formulationWater"],
];
export const largestShare: Known = [
  ["ingredients", "ingredient", "claim"],
  ["replacing", "content"],
];
export const plant: Known = [["mass", "organicShare"], ["freshPerDried"]];
export const productContent: Known = [["ingredients"], []];
export const shortfalls: Known = [["ingredients"], ["content"]];
export const solvents: Known = [[], ["water", "natural", "organic", "derivedNatural", "derivedOrganic"]];
