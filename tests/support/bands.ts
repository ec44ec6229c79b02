import * as gelwright from "gelwright";
import type { Band } from "gelwright/laws";

/** Every band that a room ships, by the name under which it is exported. */
export const shippedBands: readonly (readonly [name: string, band: Band])[] = Object.values(gelwright)
  .flatMap((room) => Object.entries(room as Record<string, unknown>))
  .filter(([name]) => /Bands?$/.test(name))
  .flatMap(([name, held]) =>
    name.endsWith("Band")
      ? [[name, held as Band] as const]
      : Object.entries(held as Record<string, Band>).map(([key, band]) => [`${name}.${key}`, band] as const),
  );
