import { aboveZero, type Draft, type Findings, join } from "./document.js";
import type { IndicesDocument, MaterialDocument } from "./material-document.js";
import { readParticle } from "./particle.js";
import { readProperties } from "./properties.js";
import type { Material, Price } from "./types.js";

/** Second pass over one material. */
export function readMaterial(key: string, draft: Draft<MaterialDocument>, at: string, findings: Findings): Material {
  const place = (...keys: (string | number)[]): string => keys.reduce(join, at);
  const share = (text: string | undefined, ...keys: (string | number)[]): number | undefined => {
    const value = findings.optional(text, "massFraction", place(...keys), 0);
    if (value !== undefined && value > 1) findings.note(place(...keys), text, "a share of 100 % at most");
    return value;
  };
  const { limits } = draft;
  const strength = share(draft.strength, "strength") ?? 1;
  if (strength === 0) findings.note(place("strength"), draft.strength, "a strength above 0 %");
  return {
    key,
    name: draft.name ?? key,
    listingName: draft.listingName,
    function: draft.function ?? "other",
    strength,
    ...readProperties(draft, at, findings),
    indices: draft.indices && readIndices(draft.indices, place("indices"), findings),
    formulationWater: draft.formulationWater ?? false,
    allergens: (draft.allergens ?? []).flatMap((allergen, i) =>
      allergen?.name === undefined
        ? []
        : [{ name: allergen.name, massFraction: share(allergen.share, "allergens", i, "share") ?? Number.NaN }],
    ),
    fattyAcids: Object.fromEntries(
      Object.entries(draft.fattyAcids ?? {}).map(([acid, text]) => [
        acid,
        share(text, "fattyAcids", acid) ?? Number.NaN,
      ]),
    ),
    temperatureMax: findings.optional(limits?.temperatureMax, "temperature", place("limits", "temperatureMax")),
    temperatureFlash: findings.optional(limits?.flashPoint, "temperature", place("limits", "flashPoint")),
    massFractionMax: share(limits?.shareMax, "limits", "shareMax"),
    heatSensitive: draft.heatSensitive === true,
    particle: draft.particle && readParticle(draft.particle, place("particle"), findings),
    price: draft.price === undefined ? undefined : readPrice(draft.price, place("price"), findings),
    restrictions: (draft.restrictions ?? []).filter((text) => text !== undefined),
    sources: Object.fromEntries(
      Object.entries(draft.sources ?? {}).filter((entry): entry is [string, string] => entry[1] !== undefined),
    ),
    notes: draft.notes,
  };
}

function readIndices(draft: Draft<IndicesDocument>, at: string, findings: Findings): IndicesDocument {
  const { of = "material as supplied", ...indices } = draft;
  if (Object.values(indices).every((value) => value === undefined))
    findings.note(at, "no index", "at least one index; leave the field out where none is known");
  return { of, ...indices } as IndicesDocument;
}

/** Reads `"12.50 EUR/kg"`. Currencies are never converted. */
function readPrice(text: string, path: string, findings: Findings): Price | undefined {
  const [, amount, currency, unit] = /^(\d+(?:\.\d+)?)\s*([A-Z]{3})\s*\/\s*(\S+)$/.exec(text.trim()) ?? [];
  if (amount === undefined || currency === undefined) {
    findings.note(path, text, "a price per mass with its currency in three letters, such as 12.50 EUR/kg");
    return undefined;
  }
  const kilograms = findings.quantity(`1 ${unit}`, "mass", path, aboveZero);
  return { perKilogram: Number(amount) / kilograms, currency };
}
