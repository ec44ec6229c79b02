import { CalculationError } from "../error.js";

/** What a kernel gives, or what it says when it refuses. */
export function attempt<T>(find: () => T): T | string;
/** What a kernel gives, or what stands in its place when it refuses. */
export function attempt<T, Other>(find: () => T, otherwise: (refusal: CalculationError) => Other): T | Other;
export function attempt<T, Other>(find: () => T, otherwise?: (refusal: CalculationError) => Other): T | Other | string {
  try {
    return find();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return otherwise ? otherwise(error) : error.message;
  }
}
