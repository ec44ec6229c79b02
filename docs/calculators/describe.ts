// Makes a calculator of a listed function: from its docstring, its example and the tables of units.
import * as gelwright from "gelwright";
import type { Band } from "gelwright/laws";
import ts from "typescript";
import { heat } from "../../src/units/tables-of-heat.js";
import { matter } from "../../src/units/tables-of-matter.js";
import { space } from "../../src/units/tables-of-space.js";
import { nameOf } from "../../tests/support/rooms.js";
import type { Described, Documented } from "../docstrings.js";
import type { Calculator, Call, Field, Measure, Output } from "../in-page/calculator-data.js";
import { valueAt, withValue } from "../in-page/calculator-values.js";
import { capital } from "../in-page/capital.js";
import { at, general } from "../in-page/paths.js";
import { spaced } from "../in-page/spaced.js";
import type { Listed } from "./list.js";

const library = gelwright as unknown as Readonly<Record<string, Readonly<Record<string, unknown>>>>;
const tables: Readonly<Record<string, Readonly<Record<string, string>>>> = { ...space, ...matter, ...heat };

const spellings = new Set(Object.values(tables).flatMap((one) => Object.keys(one)));

/** Units that readers of the trade use, the smaller first; the others stand in the list all the same. */
const handy: Readonly<Record<string, readonly string[]>> = {
  length: ["µm", "mm", "m"],
  volume: ["mL", "L"],
  time: ["s", "min", "h", "d"],
  velocity: ["µm/s", "mm/s", "m/s"],
  rotationalSpeed: ["rpm"],
  mass: ["g", "kg"],
  massFraction: ["ppm", "%"],
  volumeFraction: ["% v/v"],
  energy: ["J", "kJ", "MJ"],
  power: ["W", "kW"],
  molarMass: ["g/mol"],
  molarEnergy: ["kJ/mol"],
  dynamicViscosity: ["mPa·s", "Pa·s"],
};

/** What a listed function is called with in the first lines of its example. */
function argumentsOfExample({ name, example }: Documented): readonly unknown[] {
  const imported = [...example.matchAll(/^import \{([^}]+)\} from "gelwright\/([\w-]+)";$/gm)].flatMap(
    ([, names = "", room = ""]) =>
      names.split(",").map((one) => [one.trim(), library[nameOf(room)]?.[one.trim()]] as const),
  );
  const code = ts.transpile(example.replaceAll(/^import .*$/gm, ""), { target: ts.ScriptTarget.ES2022 });
  let found: readonly unknown[] | undefined;
  const watched = imported.map(([one, value]) =>
    one === name
      ? (...args: readonly unknown[]) => {
          found ??= args;
          return (value as Call)(...args);
        }
      : value,
  );
  new Function(...imported.map(([one]) => one), code)(...watched);
  if (!found) throw new Error(`the example of ${name} does not call it`);
  return found;
}

/** The dimension of a number: by its unit, or a share by its name. */
function measureOf({ unit, path, range, text }: Described, parameters: readonly string[]): Measure {
  if (unit !== undefined && parameters.includes(unit)) return { unitOf: unit };
  const isNamed = /share|fraction/i.test(path) || (range.max === 1 && /share|fraction|dose/i.test(text));
  const dimension =
    unit === undefined && isNamed
      ? /volume ?fraction/i.test(`${path} ${text}`)
        ? "volumeFraction"
        : "massFraction"
      : Object.keys(tables).find((one) => gelwright.units.baseUnit(one as never) === unit);
  if (dimension === undefined) return unit === undefined ? {} : { unit };
  const base = gelwright.units.baseUnit(dimension as never);
  return {
    unit: base,
    units: Object.keys(tables[dimension] ?? {}),
    ...(handy[dimension] && { handy: handy[dimension] }),
  };
}

/** `melt[0].specificHeat` as "melt 1: specific heat". */
function labelOf(path: string): string {
  const parts = path.split(".").map((part) => {
    const [, name = part, index] = /^(.*?)\[(\d+|\*)\]$/.exec(part) ?? [];
    return `${index === undefined ? spaced(name) : spaced(name).replace(/s$/, "")}${index === undefined || index === "*" ? "" : ` ${Number(index) + 1}`}`;
  });
  return capital(parts.join(": "));
}

/** A text that starts as a unit is a choice of units: the type of one that has to fit another names none. */
function asUnit(described: Described, value: unknown): Described {
  const isUnit = described.kind === "text" && typeof value === "string" && spellings.has(value);
  return isUnit ? { ...described, kind: "choice", choices: [...spellings] } : described;
}

function fieldOf(described: Described, listed: Listed, parameters: readonly string[]): Field {
  const { path, text, range, choices, optional, kind } = described;
  const typical = listed.typical?.[path];
  return {
    path,
    label: labelOf(path),
    text,
    kind: kind === "other" ? "text" : kind,
    range,
    // Units are offered in one spelling.
    choices: choices.some((one) => spellings.has(one)) ? choices.filter((one) => spellings.has(one)) : choices,
    optional,
    ...(described.default !== undefined && { default: described.default }),
    ...(typical && { reason: typical.reason }),
    ...(typical?.band && { band: typical.band }),
    ...(kind === "number" && measureOf(described, parameters)),
  };
}

/** Optional numbers and words that are not in the call. */
function leftOut({ arguments: all, parameters }: Documented, listed: Listed, there: readonly Field[]): Field[] {
  return all
    .filter(({ path, kind, optional }) => {
      const isThere = there.some(
        (field) => field.path === path || field.path.startsWith(`${path}.`) || field.path.startsWith(`${path}[`),
      );
      return optional && !isThere && (kind === "number" || kind === "choice") && !listed.without?.includes(path);
    })
    .map((described) => fieldOf(described, listed, parameters));
}

/** What one row of a list states and another leaves open. */
function missingInRows(fields: readonly Field[], lists: readonly string[]): Field[] {
  return lists.flatMap((list) => {
    const inner = (path: string) => (path.startsWith(`${list}[`) ? path.replace(/^.*?\[\d+\]/, "") : undefined);
    const rows = new Set(
      fields.flatMap(({ path }) => (inner(path) === undefined ? [] : [/\[(\d+)\]/.exec(path)?.[1] ?? ""])),
    );
    const all = new Map(
      fields.flatMap((field) => {
        const rest = inner(field.path);
        return rest === undefined ? [] : [[rest, field] as const];
      }),
    );
    return [...rows].flatMap((row) =>
      [...all].flatMap(([rest, field]) => {
        const path = `${list}[${row}]${rest}`;
        return fields.some((one) => one.path === path) ? [] : [{ ...field, path, label: labelOf(path) }];
      }),
    );
  });
}

export function calculatorOf(listed: Listed, documented: Documented, question: string): Calculator {
  const { room, name, parameters } = documented;
  const call = library[nameOf(room)]?.[name] as Call;
  let start: readonly unknown[] = listed.start ?? argumentsOfExample(documented);
  for (const path of listed.without ?? []) start = withValue(parameters, start, path, undefined);
  for (const [path, { value }] of Object.entries(listed.typical ?? {})) {
    if (typeof valueAt(parameters, start, path) !== "number")
      throw new Error(`${listed.name}: nothing starts at ${path}`);
    start = withValue(parameters, start, path, value);
  }
  const described = documented.inputs(start);
  // A word that only one law or shape has is no choice: it says which fields there are.
  const stated = described.filter(
    ({ kind, choices }) => kind !== "other" && !(kind === "choice" && choices.length < 2),
  );
  const fields = stated
    .filter(({ path }) => !/(^|\.)(law|shape|kind)$/.test(path))
    .map((one) => fieldOf(asUnit(one, valueAt(parameters, start, one.path)), listed, parameters));
  fields.push(...missingInRows(fields, listed.lists ?? []));
  const result = call(...start);
  const results = new Map<string, Output>();
  for (const one of documented.results(result)) {
    const path = general(one.path);
    if (!results.has(path))
      results.set(path, {
        path,
        label: path === "" ? "" : labelOf(path),
        text: one.text,
        ...measureOf(one, parameters),
      });
  }
  const main = listed.main ?? [...results.keys()][0] ?? "";
  if (!results.has(general(main))) throw new Error(`${listed.name}: no result is called ${main}`);
  if (listed.plot !== undefined && !fields.some(({ path }) => path === listed.plot))
    throw new Error(`${listed.name}: no field is called ${listed.plot}`);
  return {
    room,
    name,
    question,
    parameters,
    start,
    fields: [...fields, ...leftOut(documented, listed, fields)],
    lists: listed.lists ?? [],
    results: [...results.values()],
    ...(listed.plot !== undefined && { plot: listed.plot }),
    main,
    bands: Object.entries(listed.bands ?? {}).map(([path, band]) => ({
      path,
      name: band.split(".").slice(1).join("."),
      band: bandOf(band),
    })),
  };
}

function bandOf(name: string): Band {
  const [room = "", ...path] = name.split(".");
  const band = at(library[nameOf(room)], path.join("."));
  if (band === undefined) throw new Error(`there is no band ${name}`);
  return band as Band;
}
