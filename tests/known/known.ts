import ts from "typescript";
import { rooms, root } from "../support/rooms.js";
import { typesOfSrc } from "../support/types-of-src.js";

/** The names that an object of arguments may have: those that it needs, then those that it may be given. */
type Names = readonly [needed: readonly string[], optional: readonly string[]];

type NamesByTag = Readonly<Record<string, Names>>;

/** The table of each room: what stands in its `known.ts`. */
type Tables = Readonly<Record<string, string>>;

/**
 * What `known.ts` of each room has to say, from the types: for every `record(value, path, known.name)` in the room, the names
 * that the type of `value` needs and those that it leaves open.
 */
export function knownTables(): Tables {
  const read = typesOfSrc();
  // The kinds of a union stand in the order in which a checker comes to them: only one that nobody asked before has always the same.
  const program = ts.createProgram({
    rootNames: read.getRootFileNames(),
    options: read.getCompilerOptions(),
    oldProgram: read,
  });
  const checker = program.getTypeChecker();
  return Object.fromEntries(
    rooms.map((room) => {
      const names = new Map<string, Names | NamesByTag>();
      for (const file of program.getSourceFiles())
        if (file.fileName.startsWith(`${root}src/${room}/`))
          for (const { name, value, tag } of usesOf(file)) {
            const type = checker.getTypeAtLocation(value);
            const own = tag === undefined ? namesOf(type, checker) : namesByTag(type, tag, checker);
            const before = names.get(name);
            if (before !== undefined && JSON.stringify(before) !== JSON.stringify(own))
              throw new Error(`known.${name} of ${room} is said of two types, the second in ${file.fileName}`);
            names.set(name, own);
          }
      return [room, tableOf(names)];
    }),
  );
}

/** One object that is checked: of several kinds, where a tag says which. */
interface Use {
  readonly name: string;
  readonly value: ts.Expression;
  readonly tag?: string;
}

/** Every `record(value, path, known.name)` and `variant(value, path, tag, known.name)` of a file. */
function usesOf(file: ts.SourceFile): readonly Use[] {
  const found: Use[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ["record", "variant"].includes(node.expression.getText(file))) {
      const [value, , tag] = node.arguments;
      const known = node.arguments.at(-1);
      if (value && known && ts.isPropertyAccessExpression(known) && known.expression.getText(file) === "known")
        found.push({ name: known.name.text, value, ...(tag && ts.isStringLiteral(tag) && { tag: tag.text }) });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** The names of each kind of a union whose `tag` says which it is; several members may be of one kind. */
function namesByTag(type: ts.Type, tag: string, checker: ts.TypeChecker): NamesByTag {
  const kinds = new Map<string, ts.Type[]>();
  for (const member of type.isUnion() ? type.types : [type]) {
    const property = checker.getPropertyOfType(member, tag);
    const own = property && checker.getTypeOfSymbol(property);
    for (const kind of own?.isUnion() ? own.types : [own]) {
      if (!kind?.isStringLiteral()) throw new Error(`${tag} of ${checker.typeToString(member)} is no word`);
      kinds.set(kind.value, [...(kinds.get(kind.value) ?? []), member]);
    }
  }
  return Object.fromEntries([...kinds].map(([kind, members]) => [kind, namesOfAll(members, checker)]));
}

/** The names of a type: of a union those that every member needs, then all others. */
function namesOf(type: ts.Type, checker: ts.TypeChecker): Names {
  return namesOfAll(type.isUnion() ? type.types : [type], checker);
}

function namesOfAll(members: readonly ts.Type[], checker: ts.TypeChecker): Names {
  const objects = members.filter(({ flags }) => flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection));
  const properties = objects.map((member) => checker.getPropertiesOfType(member));
  const all = [...new Set(properties.flatMap((own) => own.map(({ name }) => name)))];
  const needs = (own: readonly ts.Symbol[], name: string): boolean =>
    own.some((property) => property.name === name && (property.flags & ts.SymbolFlags.Optional) === 0);
  const needed = all.filter((name) => properties.every((own) => needs(own, name)));
  return [needed, all.filter((name) => !needed.includes(name))];
}

function tableOf(names: ReadonlyMap<string, Names | NamesByTag>): string {
  if (names.size === 0) return "";
  const rows = [...names]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, own]) => {
      const type = Array.isArray(own) ? "Known" : "Readonly<Record<string, Known>>";
      return `export const ${name}: ${type} = ${JSON.stringify(own)};`;
    });
  return [
    "// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.",
    'import type { Known } from "../guards.js";',
    "",
    ...rows,
    "",
  ].join("\n");
}
