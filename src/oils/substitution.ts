import { densityOfMixture } from "../formula/mixture.js";
import { refractiveIndexOfMixture } from "../formula/refraction.js";
import { list, notNegative, positive, record, refuse, result, show, temperature } from "../guards.js";
import * as known from "./known.js";
import { viscosityByArrhenius } from "./viscosity-means.js";

/** What is known of an oil; what is left out stays unknown in the table. `profileValues` gives several of the figures. */
export interface OilProperties {
  /** What the oil is called; each oil of a phase has a name of its own. */
  readonly name: string;
  /** Density at the temperature of the table [kg/m³]. */
  readonly density?: number;
  /** Viscosity at the temperature of the table [Pa·s]. */
  readonly viscosity?: number;
  /** Refractive index at the temperature of the table. */
  readonly refractiveIndex?: number;
  /** Specific heat at the temperature of the table [J/(kg·K)]. */
  readonly specificHeat?: number;
  /** Iodine value [g/100 g]. */
  readonly iodineValue?: number;
  /** Saponification value [mg KOH/g]. */
  readonly saponificationValue?: number;
  /** Oxidisability (Cox value). */
  readonly oxidisability?: number;
  /** Required HLB; it means something on the cold route only. */
  readonly requiredHlb?: number;
  /** Natural origin index [0 to 1]. */
  readonly naturalOrigin?: number;
  /** Price per kilogram, in one currency for all oils. */
  readonly price?: number;
  /** The allergens that must be named; an empty list where there are none, left out where that is unknown. */
  readonly allergens?: readonly string[];
}

/** One quantity of the oil phase before and after. */
export interface SubstitutionRow {
  /** The property, as it is called in `OilProperties`. */
  readonly quantity: OilProperty;
  /** Its unit; empty for a plain number. */
  readonly unit: string;
  /** The rule by which the phase has it from its oils. */
  readonly rule: string;
  /** Before the substitution, in the unit; left out where an oil does not state it. */
  readonly before?: number;
  /** After the substitution, in the unit; left out where an oil does not state it. */
  readonly after?: number;
  /** After less before, in the unit; left out where either is. */
  readonly change?: number;
}

/** What changes when one oil of a phase takes the place of another. */
export interface Substitution {
  /** The quantities, in the order of `OilProperties`. */
  readonly rows: readonly SubstitutionRow[];
  /** Allergens that come in; left out where an oil of either phase does not state its own. */
  readonly allergensGained?: readonly string[];
  /** Allergens that go; left out where an oil of either phase does not state its own. */
  readonly allergensLost?: readonly string[];
}

/** The quantities of the table. */
export type OilProperty = Exclude<keyof OilProperties, "name" | "allergens">;

/** An oil of a phase with its mass. */
export interface PhasePart {
  /** Mass [kg] or share, above 0; only the proportions count. */
  readonly mass: number;
  /** The oil. */
  readonly oil: OilProperties;
}

const byMass = "mean by mass";
const quantities: Readonly<Record<OilProperty, readonly [unit: string, rule: string]>> = {
  density: ["kg/m³", "volumes add up"],
  viscosity: ["Pa·s", "Arrhenius, by mass"],
  refractiveIndex: ["", "Lorentz-Lorenz, by volume"],
  specificHeat: ["J/(kg·K)", byMass],
  iodineValue: ["g/100 g", byMass],
  saponificationValue: ["mg KOH/g", byMass],
  oxidisability: ["", byMass],
  requiredHlb: ["", "mean by mass, cold route only"],
  naturalOrigin: ["", byMass],
  price: ["per kg", byMass],
};

/**
 * What changes in an oil phase when one oil takes the place of another at equal mass, as one table of quantities.
 *
 * $$\Delta q = q(m_1, \dots, m_\mathrm{new}, \dots) - q(m_1, \dots, m_\mathrm{old}, \dots)$$
 *
 * Each quantity goes by the rule that its row names. There is no score: what counts is the maker's to weigh. A quantity
 * that one oil of the phase does not state has no figure.
 *
 * @param input.parts - The oils of the phase with their masses; names may not repeat.
 * @param input.replaced - Name of the oil that goes.
 * @param input.by - The oil that takes its place; it may already be in the phase.
 * @param input.temperature - Temperature of densities, viscosities and indices [°C].
 * @returns A row for each quantity, and the allergens gained and lost.
 * @throws CalculationError `input` where an argument is out of range, or a name is not there or there twice.
 * @source definition
 * @example
 * ```ts
 * import { substitute } from "gelwright/oils";
 * const almond = { name: "almond oil", density: 915, oxidisability: 3.2, allergens: [] };
 * const sunflower = { name: "high-oleic sunflower oil", density: 912, oxidisability: 1.7, allergens: [] };
 * const table = substitute({
 *   parts: [{ mass: 60, oil: almond }, { mass: 40, oil: { name: "light ester", density: 860, oxidisability: 0, allergens: [] } }],
 *   replaced: "almond oil",
 *   by: sunflower,
 *   temperature: 20,
 * });
 * table.rows.find((row) => row.quantity === "oxidisability")?.change; // => -0.8999999999999999
 * ```
 */
export function substitute(input: {
  readonly parts: readonly PhasePart[];
  readonly replaced: string;
  readonly by: OilProperties;
  readonly temperature: number;
}): Substitution {
  const { parts, replaced, by, temperature: warmth } = record(input, "input", known.substitute);
  temperature(warmth, "temperature");
  const before = list(parts, "parts", 1).map((part, i) => checked(part, `parts[${i}]`));
  const names = before.map(({ oil }) => oil.name);
  if (new Set(names).size < names.length) refuse("input", "parts", "a name twice", "each oil once");
  if (!names.includes(replaced)) refuse("input", "replaced", show(replaced), "the name of an oil of the phase");
  const newcomer = checked({ mass: 1, oil: by }, "by").oil;
  const after = before.map((part) => (part.oil.name === replaced ? { ...part, oil: newcomer } : part));
  const rows = (Object.keys(quantities) as OilProperty[]).map((quantity) => {
    const [unit, rule] = quantities[quantity];
    const old = quantityOf(quantity, before, warmth);
    const now = quantityOf(quantity, after, warmth);
    return {
      quantity,
      unit,
      rule,
      ...(old === undefined ? {} : { before: old }),
      ...(now === undefined ? {} : { after: now }),
      ...(old === undefined || now === undefined ? {} : { change: now - old }),
    };
  });
  const had = allergensOf(before);
  const has = allergensOf(after);
  if (!had || !has) return { rows };
  return {
    rows,
    allergensGained: has.filter((name) => !had.includes(name)),
    allergensLost: had.filter((name) => !has.includes(name)),
  };
}

function checked(part: PhasePart, path: string): PhasePart {
  const { mass, oil } = record(part, path);
  const { name, allergens } = record(oil, `${path}.oil`);
  positive(mass, `${path}.mass`);
  if (typeof name !== "string" || name === "") refuse("input", `${path}.oil.name`, show(name), "a name");
  for (const quantity of Object.keys(quantities) as OilProperty[])
    if (oil[quantity] !== undefined) notNegative(oil[quantity], `${path}.oil.${quantity}`);
  if (allergens !== undefined && list(allergens, `${path}.oil.allergens`).some((one) => typeof one !== "string"))
    refuse("input", `${path}.oil.allergens`, "something else", "a list of names");
  return part;
}

function allergensOf(parts: readonly PhasePart[]): readonly string[] | undefined {
  const all = parts.map(({ oil }) => oil.allergens);
  return all.includes(undefined) ? undefined : [...new Set(all.flatMap((names) => names as readonly string[]))].sort();
}

/** The quantity of the whole phase, or undefined where an oil lacks what its rule needs. */
function quantityOf(quantity: OilProperty, parts: readonly PhasePart[], warmth: number): number | undefined {
  const own = parts.flatMap(({ mass, oil }) => {
    const value = oil[quantity];
    return value === undefined ? [] : [{ mass, value, oil }];
  });
  if (own.length < parts.length) return undefined;
  if (quantity === "density")
    return densityOfMixture({ parts: own.map(({ mass, value }) => ({ mass, density: value })) });
  if (quantity === "viscosity")
    return viscosityByArrhenius({ parts: own.map(({ mass, value }) => ({ share: mass, viscosity: value })) });
  if (quantity === "refractiveIndex") {
    const optical = own.flatMap(({ mass, value, oil: { density } }) =>
      density === undefined ? [] : [{ mass, density, refractiveIndex: value }],
    );
    return optical.length < parts.length
      ? undefined
      : refractiveIndexOfMixture({ temperature: warmth, parts: optical });
  }
  const mass = own.reduce((sum, part) => sum + part.mass, 0);
  return result(
    own.reduce((sum, part) => sum + part.value * (part.mass / mass), 0),
    quantity,
  );
}
