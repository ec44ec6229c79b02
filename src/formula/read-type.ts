import type { Quantity } from "../units/index.js";
import type { Price, PriceText } from "./price.js";

/** What was read of a document: the same names, with a number in the base unit for every quantity. */
export type Read<T> = T extends Quantity
  ? number
  : T extends PriceText
    ? Price
    : T extends string | number | boolean | undefined
      ? T
      : T extends readonly (infer Member)[]
        ? readonly Read<Member>[]
        : { readonly [Key in keyof T]: Read<T[Key]> };
