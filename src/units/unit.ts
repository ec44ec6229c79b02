import { refuse, show } from "../guards.js";
import { heat } from "./tables-of-heat.js";
import { matter } from "./tables-of-matter.js";
import { space } from "./tables-of-space.js";

/** A kind of quantity: only units of the same dimension convert into one another. */
export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "time"
  | "rotationalSpeed"
  | "shearRate"
  | "velocity"
  | "mass"
  | "molarMass"
  | "density"
  | "massFraction"
  | "volumeFraction"
  | "pressure"
  | "dynamicViscosity"
  | "kinematicViscosity"
  | "surfaceTension"
  | "torque"
  | "temperatureDifference"
  | "temperature"
  | "energy"
  | "power"
  | "specificEnergy"
  | "specificHeat"
  | "conductivity"
  | "heatTransferCoefficient"
  | "molarEnergy"
  | "thermalConductance";

type Tables = typeof space & typeof matter & typeof heat;

/** A name in both spellings. */
type Spelling<Name> = Name extends string ? Name | Ascii<Name> : never;

/** The ASCII spelling of a unit's name. */
type Ascii<Text> = Text extends `${infer Sign}${infer Rest}`
  ? `${Sign extends keyof typeof plain ? (typeof plain)[Sign] : Sign}${Ascii<Rest>}`
  : "";

/** A unit's name, in its SI or its ASCII spelling: `Unit<"density">` holds `kg/m³` and `kg/m3`. */
export type Unit<D extends Dimension = Dimension> = {
  [Each in D]: Spelling<keyof Tables[Each]>;
}[D];

/** A quantity as text: a number, a space and a unit of the dimension, such as `"60 kg"`. */
export type Quantity<D extends Dimension = Dimension> = `${number} ${Unit<D>}`;

/** The dimension that a unit belongs to. `K` belongs to two: temperature and temperature difference. */
export type DimensionOf<U extends Unit> = { [D in Dimension]: U extends Unit<D> ? D : never }[Dimension];

const plain = { "·": "*", "²": "2", "³": "3", µ: "u", "°": "deg", Δ: "delta_", "‰": "permille" } as const;

const tables: Readonly<Record<Dimension, Readonly<Record<string, string>>>> = { ...space, ...matter, ...heat };
const spellings = new Map<Dimension, ReadonlyMap<string, string>>();

/** The dimension, if there is one of that name. */
function dimensionOf<D extends Dimension>(name: D): D {
  if (typeof name === "string" && Object.hasOwn(tables, name)) return name;
  return refuse("input", "dimension", show(name), `one of ${Object.keys(tables).join(", ")}`);
}

/** The factors of a dimension to its base unit, by SI name. */
export function factorsOf(dimension: Dimension): Readonly<Record<string, string>> {
  return tables[dimension];
}

/** The name in ASCII, sign by sign. */
export function ascii(name: string): string {
  return name.replace(/[·²³µ°Δ‰]/g, (sign) => plain[sign as keyof typeof plain]);
}

/** The SI name behind either spelling, or `undefined` where the dimension has no such unit. */
export function siName(dimension: Dimension, spelling: string): string | undefined {
  let known = spellings.get(dimension);
  if (!known) {
    known = new Map(Object.keys(tables[dimension]).flatMap((name) => [[name, name] as const, [ascii(name), name]]));
    spellings.set(dimension, known);
  }
  return known.get(spelling);
}

/** Every dimension that has a unit of this spelling. */
export function dimensionsWith(spelling: string): Dimension[] {
  return (Object.keys(tables) as Dimension[]).filter((dimension) => siName(dimension, spelling) !== undefined);
}

/** Says of a unit that was found in the wrong place where it belongs. */
export function showUnit(spelling: string, written: string = spelling): string {
  const homes = dimensionsWith(spelling);
  return homes.length > 0 ? `${written} (${homes.join(", ")})` : show(written);
}

/** Says which units a dimension has. */
export function unitsOf(dimension: Dimension): string {
  return `a unit of ${dimension}: ${Object.keys(tables[dimension]).join(", ")}`;
}

/**
 * The unit in which the kernels of this library take and return the dimension.
 *
 * @param dimension - The dimension, such as `"density"`.
 * @returns The SI spelling of its base unit.
 * @throws CalculationError `input` where there is no such dimension.
 * @source definition
 * @example
 * ```ts
 * import { baseUnit } from "gelwright/units";
 * baseUnit("dynamicViscosity"); // => "Pa·s"
 * ```
 */
export function baseUnit<D extends Dimension>(dimension: D): Unit<D> {
  return Object.keys(tables[dimensionOf(dimension)])[0] as Unit<D>;
}
