import { CalculationError, type Fault } from "gelwright/error";
import { convert, type Unit } from "gelwright/units";
import type { Calculator, Measure } from "./calculator-data.js";
import { at, put } from "./paths.js";

/** What stands in one field: text as typed, and the unit beside it. */
export interface Entry {
  readonly text: string;
  readonly unit?: string;
}

/** What stands in the fields, by their paths. */
export type Entries = ReadonlyMap<string, Entry>;

/** From one unit of a dimension into another. */
export function inUnit(value: number, from: string | undefined, to: string | undefined): number {
  return from === undefined || to === undefined || from === to
    ? value
    : convert(value, from as Unit, to as Unit as never);
}

/** The unit in which a reader would say a number: the largest of the handy ones in which it is 1 or more. */
export function handyUnit({ unit, handy }: Measure, value: number): string | undefined {
  if (!unit || !handy || handy.length === 0) return unit;
  const large = handy.filter((one) => Math.abs(inUnit(value, unit, one)) >= 1);
  return (value === 0 ? unit : large.at(-1)) ?? handy[0];
}

/** A number to at most so many significant digits, without zeros at its end. */
export function written(value: number, digits = 7): string {
  return String(Number(value.toPrecision(digits)));
}

/** The fields as they stand at the start. */
export function startOf({ fields, start, parameters }: Calculator): Map<string, Entry> {
  return new Map(
    fields.flatMap((field) => {
      const value = valueAt(parameters, start, field.path);
      if (value === undefined) return [];
      if (typeof value !== "number") return [[field.path, { text: String(value) }] as const];
      const unit = handyUnit(field, value);
      const text = written(inUnit(value, field.unit, unit));
      return [[field.path, unit === undefined ? { text } : { text, unit }] as const];
    }),
  );
}

/** Where a path leads in the arguments: into the first, if that is called `input`. */
function placed(parameters: readonly string[], path: string): readonly [index: number, rest: string] {
  if (parameters[0] === "input") return [0, path];
  const [, name = "", rest = ""] = /^([^.[]+)\.?(.*)$/.exec(path) ?? [];
  return [parameters.indexOf(name), rest];
}

export function valueAt(parameters: readonly string[], args: readonly unknown[], path: string): unknown {
  const [index, rest] = placed(parameters, path);
  return at(args[index], rest);
}

/** The arguments with another value at a path. */
export function withValue(
  parameters: readonly string[],
  args: readonly unknown[],
  path: string,
  value: unknown,
): unknown[] {
  const [index, rest] = placed(parameters, path);
  return args.map((arg, i) => (i === index ? put(arg, rest, value) : arg));
}

/** What is wrong with the text of a field. */
export type Unread = Pick<Fault, "path" | "found" | "expected">;

/** The arguments that the fields make, and the fields that hold no number, or none that its unit allows. */
export function argumentsOf(
  { fields, start, parameters }: Pick<Calculator, "fields" | "start" | "parameters">,
  entries: Entries,
): { readonly args: readonly unknown[]; readonly unread: readonly Unread[] } {
  const unread: Unread[] = [];
  let args: readonly unknown[] = start;
  for (const { path, kind, unit, optional } of fields) {
    const entry = entries.get(path);
    const text = entry?.text.trim() ?? "";
    if (text === "" && optional) {
      args = withValue(parameters, args, path, undefined);
      continue;
    }
    if (kind === "number") {
      const read = readNumber(text, entry?.unit, unit);
      if (typeof read === "number") args = withValue(parameters, args, path, read);
      else unread.push({ path, ...read });
    } else args = withValue(parameters, args, path, kind === "boolean" ? text === "true" : text);
  }
  return { args, unread };
}

/** A text as a number in the unit of the kernels, or what is wrong with it. */
function readNumber(text: string, from: string | undefined, to: string | undefined): number | Omit<Unread, "path"> {
  // A comma may be meant as a decimal sign or between thousands, so it is refused.
  const number = text === "" ? Number.NaN : Number(text.replace("−", "-"));
  if (Number.isNaN(number)) return { found: text, expected: "a number" };
  try {
    return inUnit(number, from, to);
  } catch (error) {
    const [fault] = error instanceof CalculationError ? error.faults : [];
    if (!fault) throw error;
    return { found: fault.found, expected: fault.expected };
  }
}
