export { CalculationError } from "./error.js";
export * as heat from "./heat/index.js";
