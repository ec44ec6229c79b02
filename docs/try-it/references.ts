// The parts of a job refer to phases by their names, and to materials by their keys: what refers to which, and how that
// follows when a form renames it.
import { at, join, put } from "../in-page/paths.js";

/** Fields that hold the name of a phase, or a list of them. */
export const phaseFields: RegExp = /^(phases?|outerPhase|afterPhase)$/;

/** Fields that hold the key of a material or a premix, or a list of them. */
export const materialFields: RegExp = /^materials?$/;

/** Paths of all texts in a document that are this name, in these fields; the names of listed phases among them. */
export function referencesTo(document: unknown, fields: RegExp, name: string): readonly string[] {
  const walk = (value: unknown, path: string, field: string): readonly string[] => {
    if (value === name && fields.test(field)) return [path];
    if (Array.isArray(value)) return value.flatMap((one, i) => walk(one, join(path, i), field));
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([key, inner]) => walk(inner, join(path, key), key === "name" ? field : key));
  };
  return walk(document, "", "");
}

/** A key made of a name, as the examples have them: `sunflowerOil` of "sunflower oil". */
export function keyOf(name: string): string {
  const words = name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  return words
    .map((word, i) =>
      i === 0 ? word.charAt(0).toLowerCase() + word.slice(1) : word.charAt(0).toUpperCase() + word.slice(1),
    )
    .join("");
}

/** The document with another key for a material or a premix, at its place and wherever it is referred to. */
export function withKey(document: unknown, part: "materials" | "premixes", from: string, to: string): unknown {
  const place = `formula.${part}`;
  const entries = Object.entries((at(document, place) as object | undefined) ?? {});
  const renamed = Object.fromEntries(entries.map(([key, one]) => [key === from ? to : key, one]));
  return referencesTo(document, materialFields, from).reduce(
    (changed, path) => put(changed, path, to),
    put(document, place, renamed),
  );
}
