import { convert, type Unit } from "gelwright/units";
import type { Calculator, Call, Measure } from "./calculator-data.js";
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

/** A number as one writes it down: so many digits as it has, seven at the most. */
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

/** A field whose text is no number. */
export interface Unread {
  readonly path: string;
  readonly found: string;
}

/** The arguments that the fields make, and the fields that hold no number. */
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
      // A comma between digits is no thousand and no decimal sign here: it is asked about.
      const number = text === "" ? Number.NaN : Number(text.replace("−", "-"));
      if (Number.isNaN(number)) unread.push({ path, found: text === "" ? "nothing" : text });
      else args = withValue(parameters, args, path, inUnit(number, entry?.unit, unit));
    } else args = withValue(parameters, args, path, kind === "boolean" ? text === "true" : text);
  }
  return { args, unread };
}

/** The call as code to copy. */
export function codeOf(
  { room, name }: Pick<Calculator, "room" | "name">,
  args: readonly unknown[],
  result?: unknown,
): string {
  const line = args.map((arg) => literal(arg)).join(", ");
  const call = `${name}(${line.length > 90 ? args.map((arg) => literal(arg, "")).join(", ") : line});`;
  const value = typeof result === "number" ? ` // => ${result}` : "";
  return `import { ${name} } from "gelwright/${room}";\n\n${call}${value}\n`;
}

/** A value as code; on several lines if an indent is given. */
function literal(value: unknown, indent?: string): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const inner = indent === undefined ? undefined : `${indent}  `;
  const flat = Array.isArray(value)
    ? `[${value.map((one) => literal(one)).join(", ")}]`
    : `{ ${entriesOf(value, (one) => literal(one)).join(", ")} }`;
  if (inner === undefined || (flat.length <= 80 && indent !== "")) return flat;
  const [open, close] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
  const parts = Array.isArray(value)
    ? value.map((one) => literal(one, inner))
    : entriesOf(value, (one) => literal(one, inner));
  return `${open}\n${parts.map((part) => `${inner}${part},\n`).join("")}${indent}${close}`;
}

function entriesOf(value: object, write: (value: unknown) => string): string[] {
  return Object.entries(value).map(
    ([key, one]) => `${/^[a-z_$][\w$]*$/i.test(key) ? key : JSON.stringify(key)}: ${write(one)}`,
  );
}

/** What stands behind `#` in a link that holds the inputs. */
export function hashOfEntries(entries: Entries): string {
  const parts = [...entries].map(([path, { text, unit }]): [string, string] => [
    path,
    unit === undefined ? text : `${text} ${unit}`,
  ]);
  return `#${new URLSearchParams(parts).toString()}`;
}

/** The fields that a link holds, as far as the calculator has them. */
export function entriesOfHash(hash: string, { fields }: Pick<Calculator, "fields">): Map<string, Entry> {
  const found = new Map<string, Entry>();
  for (const [path, said] of new URLSearchParams(hash.replace(/^#/, ""))) {
    const field = fields.find((one) => one.path === path);
    if (!field) continue;
    const [, text = "", unit] = /^(\S*)(?: (.+))?$/.exec(said) ?? [];
    if (field.kind !== "number") found.set(path, { text: said });
    else if (unit === undefined || unit === field.unit || field.units?.includes(unit))
      found.set(path, unit === undefined ? { text } : { text, unit });
  }
  return found;
}

/** What a number does to the result: each raised a little by itself, those first that move it most. */
export interface Pull {
  readonly path: string;
  /** What was added to it: 1 K to a temperature, 1 % of itself to anything else. */
  readonly step: "1 K" | "1 %";
  /** Of the main result, in its unit. */
  readonly change: number;
}

export function pullsOf(calculator: Calculator, args: readonly unknown[], call: Call): readonly Pull[] {
  const { fields, main, parameters } = calculator;
  const result = at(call(...args), main);
  if (typeof result !== "number") return [];
  const pulls = fields.flatMap(({ path, kind, unit }): Pull[] => {
    const value = valueAt(parameters, args, path);
    if (kind !== "number" || typeof value !== "number" || value === 0) return [];
    const step = unit === "°C" ? "1 K" : "1 %";
    const tried = [1, -1].flatMap((sign) => {
      try {
        const moved = step === "1 K" ? value + sign : value * (1 + sign / 100);
        const now = at(call(...withValue(parameters, args, path, moved)), main);
        return typeof now === "number" ? [sign * (now - result)] : [];
      } catch {
        return [];
      }
    });
    const [change] = tried;
    return change === undefined || change === 0 ? [] : [{ path, step, change }];
  });
  return pulls.sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
}
