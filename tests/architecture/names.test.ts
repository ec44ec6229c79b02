import { readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { root } from "../support/rooms.js";

/** A field or argument of the public surface, with the declaration that it stands in. */
interface Named {
  readonly name: string;
  readonly of: string;
}

const report = readFileSync(`${root}docs/api/gelwright.api.md`, "utf8");
const surface = parsed(/```ts\n([\s\S]*)```/.exec(report)?.[1] ?? "");
const page = readFileSync(`${root}docs/guides/names.md`, "utf8");

/** Words for the ends of a range that are `min` and `max` here. */
const otherEnds = ["least", "most", "greatest", "highest", "lowest"];

/** Words for a dimension that has another word in the table of the page, and that word. */
const otherWords: Readonly<Record<string, string>> = {
  temp: "temperature",
  celsius: "temperature",
  weight: "mass",
  grams: "mass",
  seconds: "duration",
  minutes: "duration",
  period: "duration",
  rpm: "speed",
  frequency: "speed",
  breadth: "width",
  wattage: "power",
  concentration: "massFraction",
  percent: "massFraction",
  proportion: "share",
};

function parsed(code: string): ts.SourceFile {
  return ts.createSourceFile("report.ts", code, ts.ScriptTarget.ES2022, true);
}

/** Every property of every type and every parameter, at any depth. */
function namesIn(source: ts.SourceFile): Named[] {
  return source.statements.flatMap((statement) => {
    const of = nameOf(statement);
    const found: Named[] = [];
    const visit = (node: ts.Node): void => {
      if ((ts.isPropertySignature(node) || ts.isParameter(node)) && !ts.isObjectBindingPattern(node.name))
        found.push({ name: node.name.getText().replaceAll('"', ""), of });
      ts.forEachChild(node, visit);
    };
    visit(statement);
    return found;
  });
}

const nameOf = (statement: ts.Statement) =>
  ts.isFunctionDeclaration(statement) || ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)
    ? (statement.name?.text ?? "")
    : "";

/** The arguments that are numbers: those of functions, and those of the types that functions take, at any depth. */
function numericArguments(source: ts.SourceFile): Named[] {
  const declared = new Map(source.statements.map((statement) => [nameOf(statement), statement] as const));
  const seen = new Set<ts.Node>();
  const found = new Map<string, Named>();
  const take = (node: ts.Node, of: string): void => {
    if (seen.has(node)) return;
    seen.add(node);
    if (ts.isPropertySignature(node) && node.type && isNumeric(node.type)) {
      const name = node.name.getText();
      if (!found.has(name)) found.set(name, { name, of });
    }
    if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node)) {
      const name = (ts.isTypeReferenceNode(node) ? node.typeName : node.expression).getText();
      const type = declared.get(name);
      if (type && !ts.isFunctionDeclaration(type) && !isResult(name)) take(type, name);
    }
    ts.forEachChild(node, (child) => take(child, of));
  };
  for (const statement of source.statements)
    if (ts.isFunctionDeclaration(statement))
      for (const parameter of statement.parameters) take(parameter, statement.name?.text ?? "");
  return [...found.values()];
}

/** Documents carry their units as text; a plan is what `runPlan` gives, and a claimed figure what `claimFigure` does. */
const isResult = (name: string) => /Document$|^Plan$|^ClaimFigure$|^Formula$|^Material$|^Batch$/.test(name);

/** A number, a list of numbers, or a function that gives one. */
function isNumeric(type: ts.TypeNode): boolean {
  if (type.kind === ts.SyntaxKind.NumberKeyword) return true;
  if (ts.isUnionTypeNode(type)) return type.types.some(isNumeric);
  if (ts.isParenthesizedTypeNode(type) || ts.isTypeOperatorNode(type)) return isNumeric(type.type);
  if (ts.isArrayTypeNode(type)) return isNumeric(type.elementType);
  return ts.isFunctionTypeNode(type) && isNumeric(type.type);
}

/** Every key of a JSON Schema's objects. */
function keysOf(schema: unknown): string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const own =
    "properties" in schema && typeof schema.properties === "object" ? Object.keys(schema.properties ?? {}) : [];
  return [...own, ...Object.values(schema).flatMap(keysOf)];
}

/** The published schemas of documents and of the result, as the build writes them. */
const documents: readonly Named[] = ["formula", "batch", "job", "plan"].flatMap((of) =>
  keysOf(JSON.parse(readFileSync(`${root}dist/schema/${of}.json`, "utf8"))).map((name) => ({ name, of })),
);

/** Rows of the table under a heading of the page, cell by cell. */
function rowsUnder(heading: string): string[][] {
  const [, text = ""] = page.split(`## ${heading}\n`);
  return (text.split("\n## ")[0] ?? "")
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .slice(1)
    .map((line) =>
      line
        .split("|")
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

/** The words in code marks of a cell. */
const inMarks = (cell = "") => [...cell.matchAll(/`([^`]+)`/g)].map((match) => match[1] ?? "");

const vocabulary = [...rowsUnder("Dimensions"), ...rowsUnder("Numbers without a dimension")].flatMap(([cell]) =>
  inMarks(cell),
);

/** What breaks a rule of the page: the name, and the word that it should have. */
const badEnds = (names: readonly Named[]) =>
  names.filter(({ name }) => split(name).some((word) => otherEnds.includes(word))).map(told);

/** A plural counts as its singular: `temperatures`. */
const outside = (names: readonly Named[], known: readonly string[]) =>
  names.filter(({ name }) => !known.some((word) => holds(name, word))).map(told);

/** Terms of a field that hold a word which is no dimension there: toxicology doses by body weight. */
const terms = /body weight/;

const synonyms = (names: readonly Named[]) =>
  names
    .filter(({ name }) =>
      split(split(name).join(" ").replace(terms, "")).some((word) => Object.hasOwn(otherWords, word)),
    )
    .map(told);

const split = (name: string) =>
  name
    .replace(/([A-Z]|\d+)/g, " $1")
    .toLowerCase()
    .trim()
    .split(" ");
const told = ({ name, of }: Named) => `${of}: ${name}`;

function holds(name: string, word: string): boolean {
  const whole = (text: string) => ` ${split(text).join(" ")} `;
  return [name, name.replace(/s$/, ""), name.replace(/es$/, ""), name.replace(/ies$/, "y")].some((one) =>
    whole(one).includes(whole(word)),
  );
}

const fields = namesIn(surface);
const numbers = numericArguments(surface);

describe("the public names", () => {
  test("are found: fields and arguments of the report, keys of the schemas, words of the page", () => {
    expect(fields.length).toBeGreaterThan(1000);
    expect(numbers.length).toBeGreaterThan(200);
    expect(documents.length).toBeGreaterThan(200);
    expect(vocabulary.length).toBeGreaterThan(80);
  });

  test("call the ends of a range min and max", () => {
    expect(badEnds(fields)).toEqual([]);
    expect(badEnds(documents)).toEqual([]);
  });

  test("have one word for a dimension, and it stands on the page", () => {
    expect(outside(numbers, vocabulary)).toEqual([]);
    expect(synonyms(numbers)).toEqual([]);
  });

  test("are those that the page uses: each stands in the report or in a schema", () => {
    const known = new Set([...report.matchAll(/[A-Za-z]\w*/g)].map(([name]) => name));
    for (const { name } of documents) known.add(name);
    const words = [...new Set(vocabulary)].filter((word) => !fields.some(({ name }) => holds(name, word)));
    expect(words).toEqual([]);
    const tables = page.slice(page.indexOf("## Dimensions"));
    expect(inMarks(tables).filter((name) => !known.has(name) && !vocabulary.includes(name))).toEqual([]);
  });

  test("of functions on the page are terms that it explains once", () => {
    const terms = rowsUnder("Terms of the trade").map(([term]) => term);
    expect(terms.length).toBeGreaterThan(30);
    expect(new Set(terms).size).toBe(terms.length);
    const all = [...rowsUnder("Dimensions"), ...rowsUnder("Numbers without a dimension")].map(([word]) => word);
    expect(new Set(all).size).toBe(all.length);
  });
});

describe("a name that breaks a rule is found", () => {
  const bad = parsed(`
    interface Charge { readonly massGreatest: number; readonly kind: "lowest-rate" }
    function warm(input: { readonly temp: number; readonly heightLeast?: number; readonly charge: Charge }): number;
    function cool(input: { readonly chilliness: readonly number[]; readonly periodCooling: number | Law }): Charge;
    interface Never { readonly gloom: number }
  `);

  test("an end of a range by another word, in a field or in an argument", () => {
    expect(badEnds(namesIn(bad))).toEqual(["Charge: massGreatest", "warm: heightLeast"]);
  });

  test("an argument without a word of the page, or with another one for a dimension; results are not asked", () => {
    const found = numericArguments(bad);
    expect(outside(found, vocabulary).sort()).toEqual(["cool: chilliness", "cool: periodCooling", "warm: temp"]);
    expect(synonyms(found)).toEqual(["warm: temp", "cool: periodCooling"]);
  });

  test("a key of a schema", () => {
    const schema = { properties: { heater: { properties: { highestTemperature: {} } } } };
    expect(badEnds(keysOf(schema).map((name) => ({ name, of: "job" })))).toEqual(["job: highestTemperature"]);
  });
});
