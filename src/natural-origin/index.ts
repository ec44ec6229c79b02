export { type DerivedIndex, indexByMolarMass, indexByRenewableCarbon } from "./derived-index.js";
export { type ExtractedPlant, type ExtractIndices, type ExtractionSolvents, extractIndex } from "./extract-index.js";
export { indexAsSupplied } from "./index-as-supplied.js";
export type { ContentBounds, IndexName, Ingredient } from "./ingredient.js";
export { type LargestShare, largestShare } from "./largest-share.js";
export { molarMassOf } from "./molar-mass.js";
export { type Content, productContent } from "./product-content.js";
export { type Shortfall, shortfalls } from "./shortfalls.js";
