// What the docstrings of the public functions say, read once for every page that shows arguments, ranges and defaults.
import ts from "typescript";
import { rooms, root } from "../tests/support/rooms.js";
import { typesOfSrc } from "../tests/support/types-of-src.js";
import { type Range, rangeIn } from "./docstring-range.js";

/** A value that goes into a function or comes out of it, as its docstring describes it. */
export interface Described {
  /** From the function's argument or result: `melt[0].mass`; the empty text for the result as a whole. */
  readonly path: string;
  readonly kind: "number" | "choice" | "text" | "boolean" | "other";
  /** What the docstring says of it. */
  readonly text: string;
  /** As it stands in brackets; left out for a plain number. */
  readonly unit?: string;
  readonly range: Range;
  /** Whether it may be left out. */
  readonly optional: boolean;
  /** What it is then, as the docstring says it. */
  readonly default?: string;
  /** The words that are allowed. */
  readonly choices: readonly string[];
}

/** A public function with its docstring. */
export interface Documented {
  readonly room: string;
  readonly name: string;
  /** Its first paragraph. */
  readonly summary: string;
  readonly returns: string;
  readonly sources: readonly string[];
  /** The code of its example, without the fences. */
  readonly example: string;
  /** Names of its parameters: one, `input`, for nearly all. */
  readonly parameters: readonly string[];
  /** Its arguments, one level deep: what `input.…` the docstring lists. */
  readonly arguments: readonly Described[];
  /** Every number, word and text in a call with these arguments, described; what the docstring leaves open is an error. */
  readonly inputs: (args: readonly unknown[]) => readonly Described[];
  /** Every number in a result, described. */
  readonly results: (result: unknown) => readonly Described[];
}

const oneLine = (text: string) => text.replaceAll(/\s+/g, " ").trim();

/** Public functions by `room.name`: those that are asked for, or all. One that is not there is an error. */
export function docstrings(names?: readonly string[]): ReadonlyMap<string, Documented> {
  const read = typesOfSrc();
  const checker = read.getTypeChecker();
  const found = new Map<string, Documented>();
  for (const room of rooms) {
    const source = read.getSourceFile(`${root}src/${room}/index.ts`);
    const module = source && checker.getSymbolAtLocation(source);
    for (const exported of module ? checker.getExportsOfModule(module) : []) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const declaration = symbol.valueDeclaration;
      const [signature] = declaration ? checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures() : [];
      const name = `${room}.${symbol.name}`;
      if (signature && (names?.includes(name) ?? true)) found.set(name, documented(checker, room, symbol, signature));
    }
  }
  for (const name of names ?? []) if (!found.has(name)) throw new Error(`no public function is called ${name}`);
  return found;
}

function documented(checker: ts.TypeChecker, room: string, symbol: ts.Symbol, signature: ts.Signature): Documented {
  const tags = symbol.getJsDocTags(checker);
  const tagged = (name: string) =>
    tags.filter((tag) => tag.name === name).map((tag) => ts.displayPartsToString(tag.text));
  /** What follows `@param input.name -`, by the whole name. */
  const said = new Map(
    tagged("param").flatMap((text) => {
      const [, name, rest] = /^\[?([\w.]+)\]?\s+-?\s*([\s\S]*)$/.exec(text) ?? [];
      return name === undefined ? [] : [[name, oneLine(rest ?? "")] as const];
    }),
  );
  const parameters = signature.getParameters().map((parameter) => parameter.name);
  const returns = oneLine(tagged("returns").join(" "));
  const at = `${room}.${symbol.name}`;
  const typeOf = (parameter: ts.Symbol) => checker.getTypeOfSymbol(parameter);
  const walker = walk(checker, at);
  return {
    room,
    name: symbol.name,
    summary: ts.displayPartsToString(symbol.getDocumentationComment(checker)).split("\n\n")[0]?.trim() ?? "",
    returns,
    sources: tagged("source").map(oneLine),
    example: /```ts\n([\s\S]*?)```/.exec(tagged("example").join("\n"))?.[1] ?? "",
    parameters,
    arguments: signature.getParameters().flatMap((parameter) => argumentsOf(checker, parameter, said)),
    inputs: (args) =>
      signature.getParameters().flatMap((parameter, i) => {
        const value = args[i];
        if (value === undefined) return [];
        const path = parameter.name === "input" ? "" : parameter.name;
        return walker(value, typeOf(parameter), { path, text: said.get(parameter.name) ?? "", optional: false, said });
      }),
    results: (result) => {
      const text = withUnitOfArgument(returns, said);
      const where = { path: "", text, optional: false, said: new Map<string, string>() };
      return walker(result, signature.getReturnType(), where).filter(({ kind }) => kind === "number");
    },
  };
}

/** What is "in the unit of the oil" has that of the argument `oil`. */
function withUnitOfArgument(text: string, said: ReadonlyMap<string, string>): string {
  const [, other] = /in the unit of the ([a-z ]+?)[.,;]/.exec(text) ?? [];
  const [name, about] = [...said].find(([one]) => wordsOf(one.split(".").at(-1) ?? "") === other) ?? [];
  const unit = name === undefined ? undefined : unitIn(about ?? "", name);
  return unit === undefined ? text : `${text} [${unit}]`;
}

/** The arguments that the docstring lists, or a positional one by itself. */
function argumentsOf(checker: ts.TypeChecker, parameter: ts.Symbol, said: ReadonlyMap<string, string>): Described[] {
  const type = checker.getTypeOfSymbol(parameter);
  // What a text or a list has by itself is no argument.
  const isOurs = (property: ts.Symbol) =>
    property.declarations?.some((one) => one.getSourceFile().fileName.startsWith(`${root}src/`)) ?? false;
  const listed = checker
    .getPropertiesOfType(type)
    .filter(isOurs)
    .filter((property) => said.has(`${parameter.name}.${property.name}`) || docOf(checker, property) !== "");
  if (listed.length === 0)
    return [describe(type, { path: parameter.name, text: said.get(parameter.name) ?? "", optional: false })];
  return listed.map((property) =>
    describe(checker.getTypeOfSymbol(property), {
      path: property.name,
      text: said.get(`${parameter.name}.${property.name}`) ?? docOf(checker, property),
      optional: (property.flags & ts.SymbolFlags.Optional) !== 0,
    }),
  );
}

interface Where {
  readonly path: string;
  readonly text: string;
  readonly optional: boolean;
  /** What is said of what it stands in, the nearest first: there may be its unit. */
  readonly around?: readonly string[];
}

type Walker = (
  value: unknown,
  type: ts.Type,
  where: Where & { readonly said: ReadonlyMap<string, string> },
) => readonly Described[];

/** Goes through a value and its type together, down to numbers and words. */
function walk(checker: ts.TypeChecker, at: string): Walker {
  const go: Walker = (value, type, where) => {
    const { path, text, said } = where;
    if (typeof value === "function") return [];
    if (Array.isArray(value)) {
      const list = membersOf(type).find((one) => checker.isArrayType(one) || checker.isTupleType(one));
      const item = list && checker.getIndexTypeOfType(list, ts.IndexKind.Number);
      if (!item) throw new Error(`${at}: no type of ${path}`);
      return value.flatMap((one, i) => go(one, item, { ...where, path: `${path}[${i}]` }));
    }
    if (typeof value === "object" && value !== null) {
      const object = membersOf(type).find((one) => fits(checker, value, one));
      if (!object) throw new Error(`${at}: ${path || "the argument"} may not be { ${Object.keys(value).join(", ")} }`);
      return Object.entries(value).flatMap(([name, one]) => {
        const property = checker.getPropertyOfType(object, name);
        const index = checker.getIndexTypeOfType(object, ts.IndexKind.String);
        const inner = property ? checker.getTypeOfSymbol(property) : index;
        if (!inner) throw new Error(`${at}: no type of ${path}.${name}`);
        const listed = said.get(`input${path === "" ? "" : `.${path}`}.${name}`);
        return go(one, inner, {
          said,
          path: path === "" ? name : `${path}.${name}`,
          text: listed ?? (property ? docOf(checker, property) : ""),
          around: [text, ...(where.around ?? [])].filter((said) => said !== ""),
          optional: property !== undefined && (property.flags & ts.SymbolFlags.Optional) !== 0,
        });
      });
    }
    // Of a parameter of the type: what it may be at the widest.
    const described = describe(checker.getBaseConstraintOfType(type) ?? type, where);
    const all = [text, ...(where.around ?? [])];
    if (described.text === "") throw new Error(`${at}: the docstring says nothing of ${path || "the result"}`);
    if (typeof value === "number" && described.unit === undefined && !all.some(isPlain(path)))
      throw new Error(`${at}: the docstring gives no unit of ${path || "the result"}: ${described.text}`);
    return [described];
  };
  return go;
}

function describe(type: ts.Type, { path, text, optional, around = [] }: Where): Described {
  const members = membersOf(type);
  const choices = members.flatMap((one) => (one.isStringLiteral() ? [one.value] : []));
  const isNumber = members.some((one) => (one.flags & ts.TypeFlags.NumberLike) !== 0);
  const isBoolean = members.some((one) => (one.flags & ts.TypeFlags.BooleanLike) !== 0);
  const isText = members.some((one) => (one.flags & ts.TypeFlags.String) !== 0);
  const kind = isNumber ? "number" : choices.length > 0 ? "choice" : isBoolean ? "boolean" : isText ? "text" : "other";
  const name =
    path
      .split(/[.[\]]+/)
      .filter((part) => /[a-z]/i.test(part))
      .at(-1) ?? "";
  const range = isNumber ? rangeIn(text) : {};
  const own = isNumber ? unitIn(text, name) : undefined;
  const unit = own ?? (isNumber && Object.keys(range).length === 0 ? unitAround(text, around, name) : undefined);
  const left = optional ? defaultIn(text) : undefined;
  return {
    path,
    kind,
    text: text || (around[0] ?? ""),
    ...(unit !== undefined && { unit }),
    range,
    optional,
    ...(left !== undefined && { default: left }),
    choices,
  };
}

/**
 * The unit that the text around a number gives to it: the nearest under its own name; of an end of an interval, and of
 * what nothing is said of itself, the nearest of all.
 */
function unitAround(text: string, around: readonly string[], name: string): string | undefined {
  const isEnd = ["min", "value", "max"].includes(name);
  for (const one of around) {
    const unit = unitIn(one, name, isEnd || text === "");
    if (unit !== undefined) return unit;
    // What is said to have no unit is not given that of something wider.
    if (plain.test(one)) return undefined;
  }
  return undefined;
}

/** Words of a name: `specificHeat` as "specific heat". */
const wordsOf = (name: string) => name.replaceAll(/(?<=[a-z])(?=[A-Z])/g, " ").toLowerCase();

const brackets = /\[([^\]]+)\]/;
/** The unit of what is called so: the first after its words; the first of all if the words are not there, or none follows them. */
function unitIn(text: string, name: string, whatever = true): string | undefined {
  const words = wordsOf(name);
  const at = [words, words.split(" ")[0] ?? words]
    .map((one) => text.toLowerCase().indexOf(one))
    .find((one) => one >= 0);
  if (at === undefined && !whatever) return undefined;
  // "This [°C]: the setting temperature" names it after its unit.
  const [, unit] = brackets.exec(text.slice(at ?? 0)) ?? (whatever ? brackets.exec(text) : undefined) ?? [];
  // What stands in brackets may be a range, `[0 to 1]`, and a unit one of several, `[kg, or % of the formula]`.
  if (unit === undefined || /\d to\b/.test(unit) || /\bown unit/.test(unit)) return undefined;
  return unit.split(/, or /)[0];
}

/** Words of what has no unit. */
const plain =
  /fraction|share|ratio|index|number|factor|confidence|efficiency|how many|exponent|part of|per gel former|times|percent|0 to 1|own unit|\b1 for|margin/i;

/** Whether a number without a unit is one that has none: it is said so by words, by its name or by its range. */
const isPlain = (path: string) => (text: string) =>
  plain.test(text) || plain.test(wordsOf(path)) || Object.keys(rangeIn(text)).length > 0;

/** What an argument is where it is left out: a number, a word, or a number with its unit. */
function defaultIn(text: string): string | undefined {
  const forms = [
    /("[^"]*"|\S+) \(default\)/,
    /(`[^`]+`), [^;,]+, (?:where|if) (?:it is )?left out/,
    /by default ([^;,]+?)(?:[;,]|\.?$|\. )/,
    /default:? ([^;,]+?)(?:[;,]|\.?$|\. )/,
    /left out for ([^;,]+?)(?:[;,]|\.?$|\. )/,
    /left out: ([^;,]+?)(?:[;,]|\.?$|\. )/,
    /(?:^|[;:,] )([^;:,]+?),? (?:unless given|by default|(?:where|if) (?:it is )?left out)/,
  ];
  for (const form of forms) {
    const [, found] = form.exec(text) ?? [];
    if (found !== undefined) return found.replaceAll(/[`"]/g, "").trim();
  }
  return undefined;
}

function docOf(checker: ts.TypeChecker, property: ts.Symbol): string {
  return oneLine(ts.displayPartsToString(property.getDocumentationComment(checker)));
}

/** The members of a union, without `undefined`; of any other type itself. */
function membersOf(type: ts.Type): readonly ts.Type[] {
  const members = type.isUnion() ? type.types : [type];
  return members.filter((member) => !(member.flags & ts.TypeFlags.Undefined));
}

/** Whether an object has the properties that a type asks for, its words among those that are allowed. */
function fits(checker: ts.TypeChecker, value: object, type: ts.Type): boolean {
  if ((type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) === 0) return false;
  if (checker.getIndexTypeOfType(type, ts.IndexKind.String)) return true;
  const names = Object.keys(value);
  const properties = checker.getPropertiesOfType(type);
  if (names.some((name) => !properties.some((property) => property.name === name))) return false;
  return properties.every((property) => {
    const given = (value as Record<string, unknown>)[property.name];
    if (given === undefined) return (property.flags & ts.SymbolFlags.Optional) !== 0;
    const literals = membersOf(checker.getTypeOfSymbol(property));
    return (
      !literals.every((one) => one.isStringLiteral()) ||
      literals.some((one) => one.isStringLiteral() && one.value === given)
    );
  });
}
