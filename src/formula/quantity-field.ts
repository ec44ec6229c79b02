import { description, type GenericSchema, pipe, string } from "valibot";
import type { Dimension, Quantity } from "../units/index.js";

/**
 * Text that holds a quantity. The shape pass asks for text only: what the text says is the parser's business,
 * which gives the better message; the example is for the reader of the JSON Schema.
 */
export function quantity<D extends Dimension>(
  _dimension: D,
  example: Quantity<D>,
): GenericSchema<unknown, Quantity<D>> {
  return pipe(string(), description(`a quantity with its unit, such as ${example}`)) as unknown as GenericSchema<
    unknown,
    Quantity<D>
  >;
}
