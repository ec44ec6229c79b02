import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";
import { expect, test } from "vitest";
import { readMeasured } from "../measured/measured.js";
import { type Check, type Quality, qualities } from "../support/check.js";
import { root } from "../support/rooms.js";
import { typesOfSrc } from "../support/types-of-src.js";

interface Entry {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  readonly where: string;
  readonly read: "first-hand" | "second-hand" | "from memory";
  readonly quality: Quality;
}

/** What a `@source` line may say instead of a key of the bibliography. */
const phrases = ["common practice, no source", "from memory", "definition", "worked by hand"];

const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8")) as Record<string, Entry>;
const program = typesOfSrc();
const checker = program.getTypeChecker();
const ours = program.getSourceFiles().filter((file) => file.fileName.startsWith(`${root}src/`));

/** What every room exports, functions, values and types alike. */
const members: readonly ts.Symbol[] = exportsOf(ours.find((file) => file.fileName === `${root}src/index.ts`))
  .filter((room) => room.flags & ts.SymbolFlags.ValueModule)
  .flatMap((room) => checker.getExportsOfModule(room).map(real));

interface PublicFunction {
  readonly name: string;
  readonly summary: string;
  readonly tags: readonly { readonly name: string; readonly text: string }[];
}

/** The functions of every room, with their docstrings. */
const functions: readonly PublicFunction[] = members
  .filter((member) => member.valueDeclaration && isCallable(member, member.valueDeclaration))
  .map((member) => ({
    name: member.name,
    summary: ts.displayPartsToString(member.getDocumentationComment(checker)),
    tags: member.getJsDocTags(checker).map((tag) => ({ name: tag.name, text: ts.displayPartsToString(tag.text) })),
  }));

/** The properties of public types that hold a number, at any depth of the type's own declaration. */
function numbersOf(declaration: ts.Node): ts.PropertySignature[] {
  const own =
    ts.isPropertySignature(declaration) && declaration.type && holdsNumber(declaration.type) ? [declaration] : [];
  const inner: ts.PropertySignature[] = [];
  ts.forEachChild(declaration, (child) => {
    inner.push(...numbersOf(child));
  });
  return [...own, ...inner];
}

function holdsNumber(type: ts.TypeNode): boolean {
  const flags = checker.getTypeAtLocation(type);
  const parts = flags.isUnion() ? flags.types : [flags];
  return parts.some((part) => part.flags & ts.TypeFlags.Number);
}

function exportsOf(file: ts.SourceFile | undefined): ts.Symbol[] {
  const module = file && checker.getSymbolAtLocation(file);
  return module ? checker.getExportsOfModule(module).map(real) : [];
}

function real(symbol: ts.Symbol): ts.Symbol {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

function isCallable(symbol: ts.Symbol, declaration: ts.Declaration): boolean {
  return checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures().length > 0;
}

const tagged = (of: PublicFunction, name: string) => of.tags.filter((tag) => tag.name === name).map((tag) => tag.text);

/** Every `@source` line of the sources, public or not. */
const sources = ours.flatMap((file) =>
  [...file.text.matchAll(/^\s*(?:\/\*)?\*+ @source\b *(.*?)(?: *\*\/)?$/gm)].map((match) => ({
    file: file.fileName.slice(root.length),
    text: match[1] ?? "",
  })),
);

const keyOf = (text: string) => text.split(/[\s,:]/)[0] ?? "";
const isPhrase = (text: string) => phrases.some((phrase) => text.startsWith(phrase));

const checks = readdirSync(`${root}tests/checks`)
  .filter((name) => name.endsWith(".json"))
  .flatMap((name) => JSON.parse(readFileSync(`${root}tests/checks/${name}`, "utf8")) as Check[]);

test("there are public functions, and they are found", () => {
  expect(functions.map((one) => one.name)).toContain("mixingTemperature");
});

test("every public function says what it gives", () => {
  expect(functions.filter((one) => !one.summary.trim()).map((one) => one.name)).toEqual([]);
  expect(functions.filter((one) => !tagged(one, "returns").join("").trim()).map((one) => one.name)).toEqual([]);
});

/** The property says what it is, or the property around it does, or the type gives a unit for all of its numbers. */
function isExplained(property: ts.Node): boolean {
  if (ts.isSourceFile(property)) return false;
  const comments = ts.getJSDocCommentsAndTags(property).map((comment) => comment.getText());
  if (ts.isPropertySignature(property) ? comments.length > 0 : comments.some((text) => text.includes("["))) return true;
  return isExplained(property.parent);
}

test("every number of a public type says what it is", () => {
  const silent = members
    .filter((member) => member.flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.TypeAlias))
    .flatMap((member) => (member.declarations ?? []).flatMap(numbersOf).map((property) => ({ member, property })))
    .filter(({ property }) => !isExplained(property))
    .map(({ member, property }) => `${member.name}.${property.name.getText()}`);
  expect(silent).toEqual([]);
});

test("every public function names its source", () => {
  expect(functions.filter((one) => tagged(one, "source").length === 0).map((one) => one.name)).toEqual([]);
});

test("every public function has an example that promises a value", () => {
  const promising = (one: PublicFunction) =>
    tagged(one, "example").some((text) => text.includes("```ts") && /\/\/ (=>|prints|throws) /.test(text));
  expect(functions.filter((one) => !promising(one)).map((one) => one.name)).toEqual([]);
});

test("every example calls the function it stands at", () => {
  const calling = (one: PublicFunction) => tagged(one, "example").some((text) => text.includes(`${one.name}(`));
  expect(functions.filter((one) => !calling(one)).map((one) => one.name)).toEqual([]);
});

test("every source is in the bibliography, or is one of the phrases that own up to none", () => {
  expect(sources.filter(({ text }) => !isPhrase(text) && !(keyOf(text) in bibliography))).toEqual([]);
});

test("every key that a check gives is in the bibliography", () => {
  expect(checks.flatMap((check) => check.bibliography ?? []).filter((key) => !(key in bibliography))).toEqual([]);
});

test("every entry of the bibliography is complete, and is used by a docstring, a check, a measured case or a guide", () => {
  const guides = readdirSync(`${root}docs`)
    .filter((name) => name.endsWith(".md"))
    .map((name) => readFileSync(`${root}docs/${name}`, "utf8"));
  const measured = readdirSync(`${root}tests/measured/data`).map((name) => name.replace(/\.json$/, ""));
  const used = new Set([
    ...checks.flatMap((check) => check.bibliography ?? []),
    ...measured.map((name) => readMeasured(name).bibliography),
    ...guides.flatMap((text) => [...text.matchAll(/[\w-]+/g)].map((match) => match[0])),
    ...ours.flatMap((file) => [...file.text.matchAll(/[\w-]+/g)].map((match) => match[0])),
  ]);
  expect(Object.keys(bibliography).filter((key) => !used.has(key))).toEqual([]);
  const whole = ({ authors, year, title, where, read, quality }: Entry) =>
    authors &&
    Number.isInteger(year) &&
    title &&
    where &&
    ["first-hand", "second-hand", "from memory"].includes(read) &&
    qualities.includes(quality);
  expect(Object.entries(bibliography).filter(([, entry]) => !whole(entry))).toEqual([]);
});
