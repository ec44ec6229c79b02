// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const certificationShortfalls: Known = [["lines", "figure"], []];
export const certifiedShares: Known = [["lines"], ["productType", "table"]];
export const claimFigure: Known = [["lines", "basis"], ["decimals"]];
export const fragranceAllergens: Known = [["lines", "use", "table"], []];
export const ingredientList: Known = [["lines"], ["rule", "allergens"]];
export const microplasticFlag: Known = [["particles", "productType", "date", "table"], []];
export const periodAfterOpening: Known = [["changes"], []];
