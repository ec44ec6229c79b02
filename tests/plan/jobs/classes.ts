import type { FieldClass } from "../../../src/formula/entry.js";
import { job } from "../../../src/plan/read.js";

/** A part of an entry, as far as it is walked: an object, a list, named values, one of several kinds, or what wraps one of them. */
interface Part {
  readonly type: string;
  readonly key?: string;
  readonly holds?: FieldClass;
  readonly entries?: Readonly<Record<string, Part>>;
  readonly options?: readonly Part[];
  readonly item?: Part;
  readonly value?: Part;
  readonly wrapped?: Part;
  readonly pipe?: readonly Part[];
}

/** What the documents of a job hold, each of them required. */
const documents: Readonly<Record<string, FieldClass>> = {
  version: "identity",
  formula: "identity",
  bench: "reading",
  batch: "wish",
  vessel: "property",
  process: "process",
};

/** What stands behind the wrappers of an entry. */
function bare(part: Part): Part {
  const inner = part.wrapped ?? (part.pipe?.[0] === part ? undefined : part.pipe?.[0]);
  return inner ? bare(inner) : part;
}

/** The entry of one field of a value, or of one member of a list. */
function inside(part: Part, value: unknown, key: string | number): Part | undefined {
  const { type, entries, options, item, value: member } = bare(part);
  if (type === "array") return item;
  if (type === "record") return member;
  if (type === "variant") {
    const kind = options?.find((option) => Object.hasOwn(value as object, key) && reads(option, value));
    return kind && inside(kind, value, key);
  }
  return entries?.[key];
}

/** Whether an option of several kinds has every field that a value has, and the value its word. */
function reads(option: Part, value: unknown): boolean {
  const { entries = {} } = bare(option);
  return Object.keys(value as object).every((key) => entries[key]) && isOneOf(entries, value as object);
}

function isOneOf(entries: Readonly<Record<string, Part>>, value: object): boolean {
  return Object.entries(value).every(([key, word]) => {
    const { options } = bare(entries[key] as Part) as { readonly options?: readonly unknown[] };
    return !Array.isArray(options) || typeof options[0] === "object" || options.includes(word);
  });
}

/** One field of a document: its keys from the root, whether it may be left out, and the class of what it holds. */
export interface Field {
  readonly keys: readonly (string | number)[];
  readonly optional: boolean;
  readonly holds: FieldClass | undefined;
}

/** Every named field of a job at any depth. A required one has the class of what holds it. */
export function* fieldsOf(
  value: unknown,
  part: Part | undefined = job as unknown as Part,
  keys: readonly (string | number)[] = [],
  of?: FieldClass,
): Generator<Field> {
  if (typeof value !== "object" || value === null) return;
  for (const [name, member] of Object.entries(value)) {
    const key = Array.isArray(value) ? Number(name) : name;
    const own = part && inside(part, value, key);
    const holds = own?.holds ?? of ?? documents[name];
    const here = [...keys, key];
    if (typeof key === "string") yield { keys: here, optional: own?.holds !== undefined, holds: own && holds };
    yield* fieldsOf(member, own, here, holds);
  }
}
