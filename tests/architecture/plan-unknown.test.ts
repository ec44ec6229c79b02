import { readdirSync } from "node:fs";
import ts from "typescript";
import { expect, test } from "vitest";
import { root } from "../support/rooms.js";
import { typesOfSrc } from "../support/types-of-src.js";

/**
 * In `plan` a figure that is not known is thrown (`unknown.ts`), so nothing asks whether it is there.
 *
 * Left out are the files in which what is not known becomes data, or in which documents are read: `unknown.ts`,
 * `questions/question.ts`, `timeline.ts`, `read.ts`, `documents/`, and `change.ts`, `compare-plans.ts`, `differences.ts`,
 * `measure-next.ts`, `sweep.ts` and `fingerprint.ts`, which check their caller's arguments.
 */
const boundaries =
  /^(unknown|questions\/question|timeline|read|change|compare-plans|differences|measure-next|sweep|fingerprint|documents\/.*)\.ts$/;

/** What a function gives that stands for a field of the documents that may be left out. */
const optionalFields: readonly string[] = [
  // The time limit of a step: without one there is no such question.
  "questions/heat.ts: withinOf(moment) !== undefined",
  // A water activity that was measured of another gel former counts as none that is stated.
  "parts/water-activity.ts: measured !== undefined",
];

const files = readdirSync(`${root}src/plan`, { recursive: true, encoding: "utf8" })
  .map((name) => name.replaceAll("\\", "/"))
  .filter((name) => name.endsWith(".ts") && !boundaries.test(name))
  .map((name) => ({ name, path: `${root}src/plan/${name}` }));

const program = typesOfSrc();
const checker = program.getTypeChecker();

const equality: readonly ts.SyntaxKind[] = [
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
  ts.SyntaxKind.EqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsToken,
];

/** `typeof x === "number"`, `typeof x === "string"`; a law that may be a constant is asked which it is. */
function isTypeTest(node: ts.BinaryExpression): boolean {
  const { left, right } = node;
  if (!ts.isTypeOfExpression(left) || !ts.isStringLiteral(right)) return false;
  const asked = checker.getTypeAtLocation(left.expression);
  const isLaw = asked.isUnion() && asked.types.some((type) => type.getCallSignatures().length > 0);
  return ["string", "number"].includes(right.text) && !isLaw;
}

/**
 * A comparison with undefined of what a function has found: `x() === undefined`, or a name that was given the result of
 * a call. Fields of documents that may be left out, options of a caller and members of lists come by no call of ours
 * (they are properties, parameters, or elements), so they may be asked for.
 */
function asksOfFigure({ left, right }: ts.BinaryExpression): boolean {
  const [asked, other] = isUndefined(right) ? [left, right] : [right, left];
  return isUndefined(other) && isFigure(checker.getTypeAtLocation(asked)) && isFound(asked);
}

function isUndefined(node: ts.Expression): boolean {
  return ts.isIdentifier(node) && node.text === "undefined";
}

/** A number, or a figure with its ends, if it is there. */
function isFigure(type: ts.Type): boolean {
  const there = checker.getNonNullableType(type);
  const isFigureType = there.getProperty("min") !== undefined && there.getProperty("max") !== undefined;
  return (there.flags & ts.TypeFlags.NumberLike) !== 0 || isFigureType;
}

/** Whether a value is what a call of a function of `src` gave. Methods of lists and maps are no such calls. */
function isFound(node: ts.Expression): boolean {
  if (ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node)) return isFound(node.expression);
  if (ts.isCallExpression(node)) return isOurs(node);
  if (!ts.isIdentifier(node)) return false;
  const declaration = checker.getSymbolAtLocation(node)?.valueDeclaration;
  if (!declaration || !ts.isVariableDeclaration(declaration) || !declaration.initializer) return false;
  return isFound(declaration.initializer);
}

function isOurs(call: ts.CallExpression): boolean {
  const declaration = checker.getResolvedSignature(call)?.declaration;
  return declaration?.getSourceFile().fileName.startsWith(`${root}src/`) ?? false;
}

function offences(source: ts.SourceFile, name: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isBinaryExpression(node) && equality.includes(node.operatorToken.kind))
      if (isTypeTest(node) || asksOfFigure(node)) {
        found.push(`${name}: ${node.getText()}`);
      }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

test("there are files to look at", () => {
  expect(files.map(({ name }) => name)).toContain("questions/stirring.ts");
});

test("nothing in the plan asks whether a figure is known, but for the files in which that becomes data", () => {
  const found = files.flatMap(({ name, path }) => {
    const source = program.getSourceFile(path);
    if (!source) throw new Error(`${path} is not there`);
    return offences(source, name);
  });
  // Both ways: an exception that is no longer needed goes.
  expect([...new Set(found)].sort()).toEqual([...optionalFields].sort());
});
