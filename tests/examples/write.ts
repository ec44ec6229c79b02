// Writes every example of the docstrings, the README and the guides as a test, under tests/generated/.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { type Block, blocksOfDocstrings, blocksOfMarkdown, isExpression, promises } from "./parse.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const generated = join(root, "tests/generated");

function filesUnder(folder: string, ending: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((file) => join(folder, file))
    .filter((file) => file.endsWith(ending) && !file.startsWith("docs/site") && !file.startsWith("docs/api"))
    .sort();
}

/** Every example there is. */
export function allBlocks(): Block[] {
  const read = (file: string) => readFileSync(join(root, file), "utf8");
  const prose = ["README.md", "CHANGELOG.md", ...filesUnder("docs", ".md")].filter((file) =>
    existsSync(join(root, file)),
  );
  return [
    ...filesUnder("src", ".ts").flatMap((file) => blocksOfDocstrings(file, read(file))),
    ...prose.flatMap((file) => blocksOfMarkdown(file, read(file))),
  ];
}

/** The test file for the blocks of one file: imports come together at the top, each block is a test. */
function testFile(file: string, blocks: readonly Block[]): string {
  const up = "../".repeat(file.split("/").length);
  const imports = new Set<string>();
  const tests = blocks.map((block) => testOf(block, imports));
  return [
    `// Written from ${file} by tests/examples/write.ts.`,
    `import * as example from "${up}examples/expectations.js";`,
    ...[...imports].sort(),
    ...tests,
    "",
  ].join("\n");
}

/** A path that an example gives from its own file, as seen from the test written for that file. */
function fromGenerated(file: string, path: string): string {
  return "../".repeat(file.split("/").length + 1) + posix.join(posix.dirname(file), path);
}

function testOf(block: Block, imports: Set<string>): string {
  const title = JSON.stringify(`${block.file}, line ${block.line}`);
  return `\nexample.test(${title}, async () => {\n${bodyOf(block, imports).join("\n")}\n});`;
}

function bodyOf({ file, code }: Block, imports: Set<string>): string[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.ES2022, true);
  const promised = new Map(promises(source).map((promise) => [promise.statement, promise]));
  if (promised.size !== (code.match(/\/\/ (=>|prints|throws)/g) ?? []).length)
    return [failing("a promise such as '// => value' stands behind a whole statement, on its last line")];
  return source.statements.flatMap((statement) => {
    if (ts.isImportDeclaration(statement)) {
      for (const one of singleImports(statement, file)) imports.add(one);
      return [];
    }
    const promise = promised.get(statement);
    const text = statement.getText(source);
    if (!promise) return [text];
    if (promise.kind === "=>") return matching(statement, source, promise.text);
    return [`await example.${promise.kind}(async () => { ${text} }, ${JSON.stringify(promise.text)});`];
  });
}

/** `expression; // => value`, or `const name = expression; // => value`. */
function matching(statement: ts.Statement, source: ts.SourceFile, value: string): string[] {
  if (!isExpression(value)) return [failing(`'${value}' is no value in JavaScript`)];
  if (ts.isExpressionStatement(statement))
    return [`example.matches(${statement.expression.getText(source)}, (${value}\n));`];
  const name = ts.isVariableStatement(statement) && statement.declarationList.declarations[0]?.name.getText(source);
  if (!name) return [failing("a value is promised of something that has none")];
  return [statement.getText(source), `example.matches(${name}, (${value}\n));`];
}

/** A faulty example fails as a test, so that it stops nobody else's. */
function failing(reason: string): string {
  return `throw new Error(${JSON.stringify(reason)});`;
}

/** One import a name, so that two examples that import the same do not clash when they share a file. */
function singleImports(statement: ts.ImportDeclaration, file: string): string[] {
  const written = statement.moduleSpecifier.getText();
  const from = written.startsWith('".') ? JSON.stringify(fromGenerated(file, JSON.parse(written) as string)) : written;
  const clause = statement.importClause;
  const named = clause?.namedBindings;
  if (!clause || !named || !ts.isNamedImports(named)) return [statement.getText().replace(written, from)];
  const type = clause.phaseModifier === ts.SyntaxKind.TypeKeyword ? "type " : "";
  return named.elements.map((element) => `import ${type}{ ${element.getText()} } from ${from};`);
}

/** Writes what changed, removes what is no longer there, and says how many examples there are. */
export function writeExamples(): number {
  const blocks = allBlocks();
  const wanted = new Map(
    [...new Set(blocks.map((block) => block.file))].map((file) => [
      join(generated, `${file.replace(/\.\w+$/, "")}.test.ts`),
      testFile(
        file,
        blocks.filter((block) => block.file === file),
      ),
    ]),
  );
  mkdirSync(generated, { recursive: true });
  for (const name of readdirSync(generated, { recursive: true, encoding: "utf8" }))
    if (name.endsWith(".ts") && !wanted.has(join(generated, name))) rmSync(join(generated, name));
  for (const [file, text] of wanted)
    if (!existsSync(file) || readFileSync(file, "utf8") !== text) {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
    }
  return blocks.length;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeExamples();
