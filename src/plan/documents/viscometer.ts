import { type Entry, fields, listOf, plain, quantity } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";

/** A cylinder that turns in a cup. */
export interface CylinderDocument {
  /** Of the cylinder. */
  readonly diameter: Quantity<"length">;
  /** Inner diameter of the cup: up to 1.2 times that of the cylinder. */
  readonly cup: Quantity<"length">;
  /** Wetted length of the cylinder, its cone aside. */
  readonly length: Quantity<"length">;
  /** By how much its ends raise the torque: from the certificate of the viscometer. */
  readonly endEffectFactor: number;
}

/** Readings of a viscometer as it gave them, at one speed. */
export interface TakenDocument {
  readonly cylinder: CylinderDocument;
  readonly speed: Quantity<"rotationalSpeed">;
  /** At least two temperatures. */
  readonly readings: readonly {
    /** Temperature of the reading. */
    readonly at: Quantity<"temperature">;
    /** On the cylinder. */
    readonly torque: Quantity<"torque">;
  }[];
}

const above = { above: 0 } as const;
const length = quantity("length", above);

/** Reads what a viscometer gave. */
export const taken: Entry<TakenDocument> = fields<TakenDocument>({
  cylinder: fields<CylinderDocument>({ diameter: length, cup: length, length, endEffectFactor: plain({ min: 1 }) }),
  speed: quantity("rotationalSpeed", above),
  readings: listOf(
    fields<TakenDocument["readings"][number]>({
      at: quantity("temperature"),
      torque: quantity("torque", above),
    }),
    2,
  ),
});
