import { type Entry, fields, maybe, plain, quantity } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";

/** The gel as it is used, for what is said of it without a verdict. What is left out is not known. */
export interface InUseDocument {
  /** Between which temperatures it is looked at and used; default the room's. */
  readonly temperature?: { readonly min: Quantity<"temperature">; readonly max: Quantity<"temperature"> };
  /** Thickness of its film on skin or nail. */
  readonly film?: Quantity<"length">;
  /** Light that passes straight through a film that still counts as clear, between 0 and 1; default a half (common practice, no source). */
  readonly transmittanceMin?: number;
  /** Surface tension of the gel against air. */
  readonly surfaceTension?: Quantity<"surfaceTension">;
  /** A fine line that is open at the top, beside the film: of the lip, the skin, a seam. Default a closed slit, whatever its width. */
  readonly line?: { readonly width: Quantity<"length">; readonly depth: Quantity<"length"> };
  /** How an opened pack stands in a room. */
  readonly opened?: {
    readonly for: Quantity<"time">;
    /** Of the room, between 0 and 1. */
    readonly relativeHumidity: number;
    /** Open surface of the gel; default that of the pack's content. */
    readonly area?: Quantity<"area">;
    /** Air at rest above it, up to the rim; default 15 mm (common practice, no source). */
    readonly gap?: Quantity<"length">;
  };
}

const above = { above: 0 } as const;
const length = quantity("length", above);
const temperature = quantity("temperature");

/** Reads how the gel is used. */
export const inUse: Entry<InUseDocument> = fields<InUseDocument>({
  temperature: maybe("wish", fields<NonNullable<InUseDocument["temperature"]>>({ min: temperature, max: temperature })),
  film: maybe("wish", length),
  transmittanceMin: maybe("wish", plain({ min: 0, max: 1 })),
  surfaceTension: maybe("reading", quantity("surfaceTension", above)),
  line: maybe("wish", fields<NonNullable<InUseDocument["line"]>>({ width: length, depth: length })),
  opened: maybe(
    "wish",
    fields<NonNullable<InUseDocument["opened"]>>({
      for: quantity("time", above),
      relativeHumidity: plain({ above: 0, max: 1 }),
      area: maybe("property", quantity("area", above)),
      gap: maybe("property", length),
    }),
  ),
});
