// Whether each local name still means the declaration that it meant before: npx tsx tests/rename/verify.ts OLD-TREE NEW-TREE.
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { moves } from "./rules.js";

const [oldTree = "", newTree = ""] = process.argv.slice(2);
const under = (tree: string) =>
  ["src", "tests", "bench", "docs/plots", "docs/proof"].flatMap((folder) =>
    existsSync(join(tree, folder))
      ? readdirSync(join(tree, folder), { recursive: true, encoding: "utf8" })
          .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts") && !/generated|rename/.test(file))
          .map((file) => `${folder}/${file}`)
      : [],
  );
const newPath = (file: string) => {
  for (const [from, to] of moves) if (from.test(file)) return file.replace(from, to);
  return file;
};

/** Of each identifier in a file, which identifier of the file declares it; -1 for what is declared elsewhere. */
function resolved(tree: string): Map<string, { texts: string[]; of: number[] }> {
  const files = under(tree);
  const program = ts.createProgram(
    files.map((file) => join(tree, file)),
    {
      module: ts.ModuleKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      strict: true,
      noEmit: true,
      types: [],
      noLib: true,
    },
  );
  const checker = program.getTypeChecker();
  const all = new Map<string, { texts: string[]; of: number[] }>();
  for (const file of files) {
    const source = program.getSourceFile(join(tree, file));
    if (!source) continue;
    const nodes: ts.Identifier[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isIdentifier(node)) nodes.push(node);
      ts.forEachChild(node, visit);
    };
    visit(source);
    const place = new Map(nodes.map((node, i) => [node.getStart(), i]));
    const of = nodes.map((node) => {
      const symbol = ts.isShorthandPropertyAssignment(node.parent)
        ? checker.getShorthandAssignmentValueSymbol(node.parent)
        : checker.getSymbolAtLocation(node);
      const one = symbol?.declarations?.[0];
      if (!one || one.getSourceFile() !== source) return -1;
      const name = (one as ts.NamedDeclaration).name;
      return name && ts.isIdentifier(name) ? (place.get(name.getStart()) ?? -1) : -1;
    });
    all.set(file, { texts: nodes.map((node) => node.text), of });
  }
  return all;
}

const before = resolved(oldTree);
const after = resolved(newTree);
let different = 0;
for (const [file, one] of before) {
  const other = after.get(newPath(file)) ?? after.get(file);
  if (!other) console.log(`${file}: gone`);
  else if (one.of.length !== other.of.length)
    console.log(`${file}: ${one.of.length} identifiers, now ${other.of.length}`);
  else
    one.of.forEach((target, i) => {
      if (target !== other.of[i]) {
        different++;
        console.log(
          `${file}: ${one.texts[i]} (${one.texts[target] ?? "elsewhere"}) is ${other.texts[i]} (${other.texts[other.of[i] ?? -1] ?? "elsewhere"})`,
        );
      }
    });
}
console.log(`${different} names that mean something else`);
