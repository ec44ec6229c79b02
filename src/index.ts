export * as batch from "./batch/index.js";
export { CalculationError } from "./error.js";
export * as gel from "./gel/index.js";
export * as heat from "./heat/index.js";
export * as naturalOrigin from "./natural-origin/index.js";
export * as units from "./units/index.js";
