// Makes a module of every example: it records what each statement gives, whole, not only what its comment promises.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { pathToFileURL } from "node:url";
import ts from "typescript";

/** A block of example code, as `tests/examples/write.ts` of either tip finds it. */
interface Block {
  readonly file: string;
  readonly line: number;
  readonly code: string;
}

/** A block with the place by which it is found again, and the module that runs it. */
export interface ExampleModule {
  /** `heat.coolingTime` for a docstring of a public function, else the file. */
  readonly place: string;
  readonly module: string;
}

/** Writes the modules into a folder. `text` gives the text of a file of the checkout. */
export function writeExampleModules(
  root: string,
  blocks: readonly Block[],
  folder: string,
  text: (file: string) => string,
): ExampleModule[] {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
  return blocks.map((block, i) => {
    const module = join(folder, `example-${i}.ts`);
    writeFileSync(module, moduleOf(root, block));
    return { place: placeOf(block, text), module };
  });
}

/** A docstring is found by the name that is declared below it, whatever its file is called. */
function placeOf({ file, line }: Block, text: (file: string) => string): string {
  if (!file.startsWith("src/")) return file;
  const below = text(file)
    .split("\n")
    .slice(line - 1)
    .join("\n")
    .replace(/^[\s\S]*?\*\//, "");
  const name = /^\s*(?:export\s+)?(?:declare\s+)?(?:async\s+)?(?:function|const|interface|type|class)\s+(\w+)/.exec(
    below,
  )?.[1];
  const room = dirname(file)
    .split("/")[1]
    ?.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
  return name ? (room ? `${room}.${name}` : name) : file;
}

function moduleOf(root: string, { file, code }: Block): string {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.ES2022, true);
  const imports: string[] = [];
  const body: string[] = [];
  for (const statement of source.statements)
    if (ts.isImportDeclaration(statement)) imports.push(importOf(root, file, statement));
    else body.push(located(recorded(statement, source), root));
  return `${imports.join("\n")}
export async function run(record, attempt) {
${body.join("\n")}
}
`;
}

/** The package by the sources of its checkout, and what an example loads from beside itself by its whole path. */
function importOf(root: string, file: string, statement: ts.ImportDeclaration): string {
  const written = statement.moduleSpecifier.getText();
  return statement.getText().replace(written, JSON.stringify(locate(root, file, JSON.parse(written) as string)));
}

function locate(root: string, file: string, name: string): string {
  if (name.startsWith(".")) return pathToFileURL(join(root, posix.join(posix.dirname(file), name))).href;
  if (name === "gelwright") return pathToFileURL(join(root, "src/index.ts")).href;
  if (name === "gelwright/error") return pathToFileURL(join(root, "src/error.ts")).href;
  const room = /^gelwright\/([a-z-]+)$/.exec(name)?.[1];
  return room ? pathToFileURL(join(root, `src/${room}/index.ts`)).href : name;
}

/** An expression, and whatever a variable is computed from, goes through `record`. Plain input is not a result. */
function recorded(statement: ts.Statement, source: ts.SourceFile): string {
  if (ts.isExpressionStatement(statement))
    return `record(await attempt(async () => (${statement.expression.getText(source)})));`;
  const text = statement.getText(source);
  if (!ts.isVariableStatement(statement)) return text;
  const start = statement.getStart(source);
  return statement.declarationList.declarations
    .flatMap(({ initializer }) => (initializer && computes(initializer) ? [initializer] : []))
    .map((node) => [node.getStart(source) - start, node.end - start] as const)
    .reduceRight((so, [from, to]) => `${so.slice(0, from)}record((${so.slice(from, to)}))${so.slice(to)}`, text);
}

/** A room that an example loads on demand. */
function located(text: string, root: string): string {
  return text.replaceAll(/\bimport\("(gelwright[^"]*)"\)/g, (_, name: string) => `import("${locate(root, "", name)}")`);
}

/** Whether anything is called: a room loaded on demand is no result. */
function computes(node: ts.Node): boolean {
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return false;
  if (ts.isCallExpression(node) || ts.isNewExpression(node) || ts.isTaggedTemplateExpression(node)) return true;
  if (ts.isArrowFunction(node) || ts.isFunctionExpression(node)) return false;
  return ts.forEachChild(node, (child) => computes(child) || undefined) ?? false;
}
