import ts from "typescript";
import type { Dimension } from "../../src/units/index.js";
import { checker, docOf, exportedType, membersOf } from "./program.js";

/** A JSON Schema, as far as it is walked here. */
export interface Schema {
  description?: string;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly additionalProperties?: Schema | false;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

/** One quantity of each dimension, to show how it is written. */
const examples: { readonly [D in Dimension]: string } = {
  length: "380 mm",
  area: "0.2 m²",
  volume: "15 L",
  time: "10 min",
  rotationalSpeed: "60 rpm",
  shearRate: "10 1/s",
  velocity: "0.2 m/s",
  mass: "2 kg",
  molarMass: "880 g/mol",
  density: "918 kg/m³",
  massFraction: "9 %",
  volumeFraction: "60 % v/v",
  pressure: "12 Pa",
  dynamicViscosity: "250 mPa·s",
  kinematicViscosity: "6 mm²/s",
  surfaceTension: "25 mN/m",
  torque: "0.8 mN·m",
  temperatureDifference: "4 K",
  temperature: "85 °C",
  energy: "5 kJ",
  power: "3 kW",
  specificEnergy: "150 kJ/kg",
  specificHeat: "2000 J/(kg·K)",
  conductivity: "0.17 W/(m·K)",
  heatTransferCoefficient: "10 W/(m²·K)",
  molarEnergy: "90 kJ/mol",
  thermalConductance: "5 W/K",
};

/** Better ones, by the field. */
const fieldExamples: Readonly<Record<string, string>> = {
  strength: "50 %",
  fallPerKelvin: "0.65 kg/m³",
  flashPoint: "300 °C",
  room: "20 °C",
  thickness: "1.2 mm",
  increment: "1 g",
  minimumWeight: "50 g",
  fillVolume: "15 mL",
  fillMass: "12 g",
  weighingTolerance: "0.5 %",
  bubbleDiameter: "0.5 mm",
  dropletDiameter: "5 µm",
  workingDay: "8 h",
};

/** Puts into every property what the docstring of its type says, and for a quantity how one is written. */
export function describe(schema: object, file: string, type: string): object {
  walk(schema as Schema, exportedType(file, type));
  return schema;
}

function walk(schema: Schema, type: ts.Type): void {
  for (const option of [...(schema.anyOf ?? []), ...(schema.oneOf ?? [])]) walk(option, narrowed(option, type));
  if (schema.items) for (const member of membersOf(type)) walkIndex(schema.items, member, ts.IndexKind.Number);
  if (schema.additionalProperties)
    for (const member of membersOf(type)) walkIndex(schema.additionalProperties, member, ts.IndexKind.String);
  for (const [name, inner] of Object.entries(schema.properties ?? {})) {
    const property = membersOf(type)
      .map((member) => member.getProperty(name))
      .find((one) => one !== undefined);
    if (!property) throw new Error(`the type has no ${name}`);
    const written = [docOf(property), exampleOf(property, name)].filter((text) => text !== "").join(" ");
    if (written !== "") inner.description = written;
    walk(inner, checker.getTypeOfSymbol(property));
  }
}

function walkIndex(schema: Schema, type: ts.Type, kind: ts.IndexKind): void {
  const inner = checker.getIndexTypeOfType(type, kind);
  if (inner) walk(schema, inner);
}

/** The member of a union that an alternative of the schema describes: the one that takes its constants. */
function narrowed(option: Schema, type: ts.Type): ts.Type {
  const fits = (member: ts.Type): boolean =>
    Object.entries(option.properties ?? {}).every(([name, { const: only, enum: words }]) => {
      const allowed = only === undefined ? words : [only];
      const property = member.getProperty(name);
      if (!property) return false;
      if (!allowed) return true;
      return membersOf(checker.getTypeOfSymbol(property)).every(
        (one) => !one.isLiteral() || allowed.includes(one.value),
      );
    });
  return membersOf(type).find(fits) ?? type;
}

/** How the quantity of a property is written: its type names the dimension. */
function exampleOf(property: ts.Symbol, name: string): string {
  const declaration = property.declarations?.[0];
  if (!declaration || !ts.isPropertySignature(declaration) || !declaration.type) return "";
  const dimension = /^Quantity<"(\w+)">$/.exec(declaration.type.getText())?.[1];
  if (dimension === undefined) return "";
  return `A quantity with its unit, such as ${fieldExamples[name] ?? examples[dimension as Dimension]}.`;
}
