import { refuse, show } from "../guards.js";
import { sha256 } from "./sha-256.js";

/**
 * The fingerprint of a document: the same for the same content whatever the order of its fields, and another as soon as
 * anything in it changes. Every plan and sheet carries that of its documents.
 *
 * It is SHA-256 of the document as canonical JSON: fields sorted, no spaces, numbers as they are written in JSON.
 *
 * @param document - Anything that JSON can hold; a field that is undefined counts as left out.
 * @returns 64 hexadecimal digits.
 * @throws CalculationError `input` for what JSON cannot hold: functions, numbers that are not finite, circles.
 * @source rfc-8785, from memory, and fips-180-4, from memory
 * @example
 * ```ts
 * import { fingerprint } from "gelwright/plan";
 * fingerprint({ name: "gel", version: 1 }) === fingerprint({ version: 1, name: "gel" }); // => true
 * fingerprint({ name: "gel", version: 1 }).slice(0, 16); // => "6d88b343badfca2b"
 * ```
 */
export function fingerprint(document: unknown): string {
  return sha256(canonicalJson(document));
}

/**
 * A value as canonical JSON.
 *
 * @internal
 */
export function canonicalJson(value: unknown, path = "document", around: readonly object[] = []): string {
  if (value === null || typeof value === "string" || typeof value === "boolean") return JSON.stringify(value);
  if (typeof value === "number" && Number.isFinite(value)) return JSON.stringify(value);
  if (typeof value !== "object" || around.includes(value))
    return refuse("input", path, show(value), "what JSON can hold");
  const inside = [...around, value];
  if (Array.isArray(value))
    return `[${value.map((member, i) => canonicalJson(member, `${path}[${i}]`, inside)).join(",")}]`;
  const fields = Object.entries(value).filter(([, member]) => member !== undefined);
  // By UTF-16 code units, as the standard asks.
  const sorted = fields.sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${sorted.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member, `${path}.${key}`, inside)}`).join(",")}}`;
}
