import fc from "fast-check";
import type { IndexName, Ingredient } from "gelwright/natural-origin";

export const indexNames: readonly IndexName[] = ["natural", "naturalOrigin", "organic", "organicOrigin"];

const part = fc.oneof(
  fc.constant(0),
  fc.integer({ min: 1, max: 999 }).map((permille) => permille / 1000),
);

/**
 * An ingredient with all four indices, made the way matter is: of organic, other natural, derived organic,
 * derived natural and non-natural parts. What the indices may and may not be together follows from that.
 */
const known: fc.Arbitrary<Required<Omit<Ingredient, "name" | "formulationWater">>> = fc
  .record({
    mass: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    parts: fc.tuple(part, part, part, part, part).filter((parts) => parts.some((one) => one > 0)),
  })
  .map(({ mass, parts: [organic, natural, derivedOrganic, derivedNatural, other] }) => {
    const origin = organic + natural + derivedOrganic + derivedNatural;
    const all = origin + other;
    return {
      mass,
      natural: (organic + natural) / all,
      naturalOrigin: origin / all,
      organic: organic / all,
      organicOrigin: (organic + derivedOrganic) / all,
    };
  });

/** The same ingredient twice: as it is, and as somebody knows it whom some suppliers never answered. */
const line: fc.Arbitrary<{ readonly truth: Ingredient; readonly told: Ingredient }> = fc
  .oneof(
    { weight: 4, arbitrary: fc.tuple(known, fc.subarray([...indexNames])) },
    {
      weight: 1,
      arbitrary: known.map(({ mass }) => [{ mass, formulationWater: true }, []] as [Ingredient, IndexName[]]),
    },
  )
  .map(([truth, hidden]) => ({
    truth,
    told: Object.fromEntries(
      Object.entries(truth).filter(([key]) => !hidden.includes(key as IndexName)),
    ) as unknown as Ingredient,
  }));

/** A product of one to six named lines, as it is and as it is known. */
export const product: fc.Arbitrary<{ readonly truth: readonly Ingredient[]; readonly told: readonly Ingredient[] }> = fc
  .array(line, { minLength: 1, maxLength: 6 })
  .map((lines) => ({
    truth: lines.map(({ truth }, i) => ({ ...truth, name: `ingredient ${i}` })),
    told: lines.map(({ told }, i) => ({ ...told, name: `ingredient ${i}` })),
  }));
