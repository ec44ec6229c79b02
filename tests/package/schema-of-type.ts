import ts from "typescript";
import { checker, docOf, exportedType, membersOf } from "./program.js";

type Schema = Record<string, unknown>;

/** The JSON Schema of a type of results: numbers, codes and lists of them, each named type in `$defs`. */
export function schemaOfType(file: string, name: string): object {
  const definitions: Record<string, Schema> = {};
  const names = new Map<ts.Type, string>();

  function schemaOf(type: ts.Type): Schema {
    const members = membersOf(type);
    if (members.length !== 1) return unionOf(members);
    const [only = type] = members;
    const { flags } = only;
    if (only.isStringLiteral() || only.isNumberLiteral()) return { const: only.value };
    if (flags & ts.TypeFlags.BooleanLiteral) return { const: checker.typeToString(only) === "true" };
    if (flags & ts.TypeFlags.Null) return { type: "null" };
    if (flags & ts.TypeFlags.NumberLike) return { type: "number" };
    if (flags & ts.TypeFlags.StringLike) return { type: "string" };
    if (checker.isArrayType(only)) return { type: "array", items: itemOf(only) };
    if (checker.isTupleType(only)) {
      const items = checker.getTypeArguments(only as ts.TypeReference).map(schemaOf);
      return { type: "array", items, minItems: items.length, maxItems: items.length };
    }
    if (flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) return named(only);
    throw new Error(`no schema for ${checker.typeToString(only)}`);
  }

  function itemOf(type: ts.Type): Schema {
    const inner = checker.getIndexTypeOfType(type, ts.IndexKind.Number);
    return inner ? schemaOf(inner) : {};
  }

  function unionOf(members: readonly ts.Type[]): Schema {
    const isLiteral = (member: ts.Type): boolean => member.isStringLiteral() || member.isNumberLiteral();
    const literals = members.filter(isLiteral);
    const isBoolean = (member: ts.Type): boolean => (member.flags & ts.TypeFlags.BooleanLiteral) !== 0;
    const booleans = members.filter(isBoolean);
    const others = members.filter((member) => !isLiteral(member) && !isBoolean(member));
    const parts = [
      ...(literals.length > 0 ? [{ enum: literals.map((literal) => (literal as ts.LiteralType).value) }] : []),
      ...(booleans.length === 2 ? [{ type: "boolean" }] : booleans.map(schemaOf)),
      ...others.map(schemaOf),
    ];
    const [only = {}] = parts;
    return parts.length === 1 ? only : { anyOf: parts };
  }

  /** Types that have a name stand once, so that they may hold themselves. */
  function named(type: ts.Type): Schema {
    const symbol = type.aliasSymbol ?? (type.isClassOrInterface() ? type.symbol : undefined);
    if (!symbol || symbol.name === "__type" || type.aliasTypeArguments) return objectOf(type);
    let key = names.get(type);
    if (key === undefined) {
      key = symbol.name;
      for (let i = 2; Object.hasOwn(definitions, key); i++) key = `${symbol.name}${i}`;
      names.set(type, key);
      definitions[key] = {};
      definitions[key] = objectOf(type);
    }
    return { $ref: `#/$defs/${key}` };
  }

  function objectOf(type: ts.Type): Schema {
    const properties = checker.getPropertiesOfType(type);
    const index = checker.getIndexTypeOfType(type, ts.IndexKind.String);
    const required = properties.filter((one) => !(one.flags & ts.SymbolFlags.Optional)).map((one) => one.name);
    return {
      type: "object",
      properties: Object.fromEntries(
        properties.map((one) => {
          const description = docOf(one);
          const schema = schemaOf(checker.getTypeOfSymbol(one));
          return [one.name, description === "" ? schema : { description, ...schema }];
        }),
      ),
      ...(required.length > 0 && { required }),
      additionalProperties: index ? schemaOf(index) : false,
    };
  }

  const whole = objectOf(exportedType(file, name));
  return { $schema: "http://json-schema.org/draft-07/schema#", ...whole, $defs: definitions };
}
