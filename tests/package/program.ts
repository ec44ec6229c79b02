import ts from "typescript";
import { root } from "../support/rooms.js";
import { typesOfSrc } from "../support/types-of-src.js";

const program = typesOfSrc();

/** The types of `src`. */
export const checker: ts.TypeChecker = program.getTypeChecker();

/** A type that a file of `src` exports. */
export function exportedType(file: string, name: string): ts.Type {
  const source = program.getSourceFile(`${root}src/${file}`);
  const module = source && checker.getSymbolAtLocation(source);
  const symbol = module && checker.getExportsOfModule(module).find((one) => one.name === name);
  if (!symbol) throw new Error(`${file} exports no ${name}`);
  return checker.getDeclaredTypeOfSymbol(symbol);
}

/** What a docstring says of a property, on one line. */
export function docOf(property: ts.Symbol): string {
  return ts.displayPartsToString(property.getDocumentationComment(checker)).replace(/\s+/g, " ").trim();
}

/** The members of a union, without `undefined`; of any other type itself. */
export function membersOf(type: ts.Type): readonly ts.Type[] {
  const members = type.isUnion() ? type.types : [type];
  return members.filter((member) => !(member.flags & ts.TypeFlags.Undefined));
}
