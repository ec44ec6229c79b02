// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const certificationShortfalls: Known = [["lines", "figure"], []];
export const certifiedShares: Known = [["lines"], ["productType", "table"]];
export const certifiedThreshold: Known = [
  ["productType", "figure"],
  ["min", "max"],
];
export const change: Known = [
  ["cause", "initial"],
  ["min", "max", "rate"],
];
export const claimFigure: Known = [["lines", "basis"], ["decimals"]];
export const fragranceAllergens: Known = [["lines", "use", "table"], []];
export const ingredientList: Known = [["lines"], ["rule", "allergens"]];
export const listedAllergen: Known = [["name"], ["members"]];
export const microplasticFlag: Known = [["particles", "productType", "date", "table"], []];
export const particle: Known = [["name", "amount"], ["nature"]];
export const periodAfterOpening: Known = [["changes"], []];
