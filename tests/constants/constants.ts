import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";
import { root } from "../support/rooms.js";

/** A number that ships: a row of a table, a coefficient of a correlation, a constant of nature or of practice. */
export interface Constant {
  /** `src/laws/choi-okos-fat.ts#choiOkosFat.density.slope`; in a function the how-manieth of its constants, `#above~2`. */
  readonly key: string;
  /** The file, from the folder of the package. */
  readonly file: string;
  /** Of the declaration at the top of the file that holds it. */
  readonly name: string;
  /** A table stands at the top of a file and is made once; a coefficient and the base of a logarithm stand in a function. */
  readonly place: "table" | "coefficient" | "logarithm";
  /** As it is written, without its sign. */
  readonly text: string;
  /** Of a logarithm its base. */
  readonly value: number;
  /** Where the text begins and ends in the file. */
  readonly start: number;
  readonly end: number;
}

/** Files that hold no numbers of the trade: what checks arguments and documents, and what puts figures of other rooms in order. */
const without = /^src\/(error\.ts|guards\.ts|index\.ts|plan\/|sheet\/)|\/schema\.ts$/;

/** A factor of a unit, written as it is defined: `231*0.0254*0.0254`. */
const factor = /^\d[\d.e*/+-]*$/;

/** Calls that take a place in a list or in a text, never a quantity. */
const places = new Set(["at", "slice", "toFixed", "toPrecision", "toExponential", "padStart", "padEnd", "charAt"]);

const comparisons = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
]);

/** The files that may hold constants, sorted. */
export const sources: readonly string[] = readdirSync(`${root}src`, { recursive: true, encoding: "utf8" })
  .map((file) => `src/${file.replaceAll("\\", "/")}`)
  .filter((file) => file.endsWith(".ts") && !without.test(file))
  .sort();

/** Every constant of every file. */
export function shippedConstants(): readonly Constant[] {
  return sources.flatMap((file) => constantsOf(file, readFileSync(root + file, "utf8")));
}

/** The constants of one file, in the order in which they stand. */
export function constantsOf(file: string, text: string): readonly Constant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const guards = guardsOf(source);
  const limits = limitsOf(source, guards);
  const found: Constant[] = [];
  const counts = new Map<string, number>();
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || limits.has(node)) return;
    const value = numberOf(node);
    if (value !== undefined && isConstant(node, value, guards)) found.push(entry(node, value));
    ts.forEachChild(node, visit);
  };
  const entry = (node: ts.Node, value: number): Constant => {
    const inside = enclosingFunction(node) !== undefined;
    const { name, path } = placeOf(node);
    const count = (counts.get(name) ?? 0) + 1;
    if (inside || path === "") counts.set(name, count);
    return {
      key: `${file}#${name}${inside ? `~${count}` : path}`,
      file,
      name,
      place: ts.isPropertyAccessExpression(node) ? "logarithm" : inside ? "coefficient" : "table",
      text: node.getText(source),
      value,
      start: node.getStart(source),
      end: node.getEnd(),
    };
  };
  visit(source);
  return found;
}

function numberOf(node: ts.Node): number | undefined {
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isPropertyAccessExpression(node) && node.getText() === "Math.log") return Math.E;
  if (ts.isPropertyAccessExpression(node) && node.getText() === "Math.log10") return 10;
  if (ts.isStringLiteral(node) && /^src\/units\/tables/.test(node.getSourceFile().fileName) && factor.test(node.text))
    return node.text.split(/(?=[*/])/).reduce((product, part) => {
      const number = Number(part.replace(/^[*/]/, ""));
      return part.startsWith("/") ? product / number : product * number;
    }, 1);
  return undefined;
}

/** Whether a number is one of the trade, and no count, sign, place, limit or setting. DEVELOPERS.md says the rule in words. */
function isConstant(node: ts.Node, value: number, guards: Guards): boolean {
  if (value === 0) return false;
  if (ts.isPropertyAccessExpression(node)) return true;
  const parent = signed(node).parent;
  if (ts.isElementAccessExpression(parent) || (ts.isPropertyAssignment(parent) && parent.name === node)) return false;
  if (enclosingFunction(node) === undefined) return true;
  return value !== 1 && value !== 2 && value >= 1e-8 && !isLimit(node, guards);
}

/** Whether a number or a name stands where a limit or a setting stands: compared, counted up to, or handed to a guard. */
function isLimit(node: ts.Node, guards: Guards): boolean {
  for (let at: ts.Node = node; !ts.isFunctionLike(at); at = at.parent) {
    if (ts.isBinaryExpression(at) && comparisons.has(at.operatorToken.kind)) return true;
    if (ts.isForStatement(at.parent) && at !== at.parent.statement) return true;
    if (ts.isCallExpression(at.parent) && isSetting(at.parent, at, guards)) return true;
  }
  return false;
}

/** The limits and settings that have a name at the top of a file: numbers that stand nowhere but where a limit stands. */
function limitsOf(source: ts.SourceFile, guards: Guards): ReadonlySet<ts.Node> {
  const named = source.statements.flatMap((statement) =>
    ts.isVariableStatement(statement) && !statement.modifiers?.length ? statement.declarationList.declarations : [],
  );
  const uses = new Map<string, ts.Node[]>(named.map(({ name }) => [name.getText(), []]));
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && !ts.isVariableDeclaration(node.parent)) uses.get(node.text)?.push(node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return new Set(
    named
      .filter(({ name, initializer }) => {
        const places = uses.get(name.getText()) ?? [];
        const isNumber = initializer && ts.isNumericLiteral(initializer);
        return isNumber && places.length > 0 && places.every((use) => enclosingFunction(use) && isLimit(use, guards));
      })
      .flatMap(({ initializer }) => initializer ?? []),
  );
}

/** Whether an argument of a call is a place or a limit. What a guard is given to look at, its first argument, is neither. */
function isSetting(
  { expression: callee, arguments: given }: ts.CallExpression,
  argument: ts.Node,
  guards: Guards,
): boolean {
  const index = given.indexOf(argument as ts.Expression);
  if (index < 0) return false;
  if (ts.isPropertyAccessExpression(callee)) return places.has(callee.name.text);
  return ts.isIdentifier(callee) && index >= (guards.get(callee.text) ?? Number.POSITIVE_INFINITY);
}

/** Functions whose arguments, from the one of this number on, are limits or settings. */
type Guards = ReadonlyMap<string, number>;

/** The functions of a file whose arguments are limits or settings: guards, numerical methods, and what takes a `path` and refuses. */
function guardsOf(source: ts.SourceFile): Guards {
  const names = new Map<string, number>();
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)) {
      const bindings = statement.importClause?.namedBindings;
      if (!bindings || !ts.isNamedImports(bindings)) continue;
      const isGuard = /guards\.js$/.test(statement.moduleSpecifier.text);
      const isNumerical = /\/numeric\//.test(statement.moduleSpecifier.text);
      for (const { name } of bindings.elements)
        if (isNumerical || name.text === "refuse") names.set(name.text, 0);
        else if (isGuard || /^within/.test(name.text)) names.set(name.text, 1);
    }
    if (ts.isFunctionDeclaration(statement) && statement.name && refuses(statement)) names.set(statement.name.text, 1);
  }
  return names;
}

function refuses(declaration: ts.FunctionDeclaration): boolean {
  const takesPath = declaration.parameters.some(({ name }) => ts.isIdentifier(name) && name.text === "path");
  return takesPath && /\brefuse\(/.test(declaration.body?.getText() ?? "");
}

/** The number with its sign. */
function signed(node: ts.Node): ts.Node {
  return ts.isPrefixUnaryExpression(node.parent) ? node.parent : node;
}

function enclosingFunction(node: ts.Node): ts.Node | undefined {
  for (let at: ts.Node | undefined = node.parent; at; at = at.parent) if (ts.isFunctionLike(at)) return at;
  return undefined;
}

/** The declaration at the top of the file, and the way from there: fields, places in a list, arguments of a call. */
function placeOf(node: ts.Node): { readonly name: string; readonly path: string } {
  const path: string[] = [];
  for (let at = node; ; at = at.parent) {
    const { parent } = at;
    if (ts.isPropertyAssignment(parent)) path.unshift(fieldOf(parent.name));
    else if (ts.isArrayLiteralExpression(parent)) path.unshift(`[${parent.elements.indexOf(at as ts.Expression)}]`);
    else if (ts.isCallExpression(parent) && at !== parent.expression)
      path.unshift(`(${parent.arguments.indexOf(at as ts.Expression)})`);
    else if (ts.isBinaryExpression(parent)) path.unshift(at === parent.left ? "<" : ">");
    if (ts.isVariableDeclaration(parent) && ts.isSourceFile(parent.parent.parent.parent))
      return { name: parent.name.getText(), path: path.join("") };
    if (ts.isFunctionDeclaration(parent) && ts.isSourceFile(parent.parent))
      return { name: parent.name?.text ?? "", path: path.join("") };
    if (ts.isSourceFile(parent)) {
      const { name } = at as Partial<ts.DeclarationStatement>;
      return { name: name && ts.isIdentifier(name) ? name.text : "", path: path.join("") };
    }
  }
}

function fieldOf(name: ts.PropertyName): string {
  const text =
    ts.isIdentifier(name) || ts.isStringLiteral(name) || ts.isNumericLiteral(name) ? name.text : name.getText();
  return /^\w+$/.test(text) ? `.${text}` : `["${text}"]`;
}
