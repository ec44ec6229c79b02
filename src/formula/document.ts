import { type GenericSchema, safeParse } from "valibot";
import { CalculationError, type Fault, type FaultParameters, type FaultRule } from "../error.js";
import { didYouMean, nearest, show } from "../guards.js";

import { type Entry, noSuchField } from "./entry.js";
import type { Read } from "./read-type.js";
import { unsoundness } from "./sound.js";

/** What was read, of which any part may be missing: what was unsound was taken out. */
export type Draft<T> = T extends string | number | boolean
  ? T | undefined
  : T extends readonly (infer Member)[]
    ? readonly (Draft<Member> | undefined)[]
    : { readonly [Key in keyof T]?: Draft<T[Key]> | undefined };

type Key = string | number;

/** How many unknown names of a document are compared with the known ones, and with how many of these. */
const looksMax = 100;
const namesMax = 1000;

/** A longer key is cut off in a path: a path shows a reader the place, and every fault inside it repeats it. */
const keyMax = 100;

/** Adds one step to the path of a fault: `lines[2]`, `phases`, `materials["wax, white"]`. */
export function join(path: string, key: Key): string {
  if (typeof key === "number") return `${path}[${key}]`;
  const short = key.length > keyMax ? `${key.slice(0, keyMax)}…` : key;
  if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(short)) return `${path}[${JSON.stringify(short)}]`;
  return path === "" ? short : `${path}.${short}`;
}

/** The path of a place, then those of what holds it, from the inside out. */
function* outward(path: string): Generator<string> {
  yield path;
  for (let at = path.length - 1; at > 0; at--) if (path[at] === "." || path[at] === "[") yield path.slice(0, at);
}

/**
 * What was found while a document is read: field by field, then what needs several fields. All faults are reported at once.
 *
 * Once a fault is noted, figures read beside it are placeholders (NaN). They never escape: `settle` throws
 * before any result is returned.
 */
export class Findings {
  readonly #faults: Fault[] = [];
  /** Every place at which, or inside which, a fault was noted. */
  readonly #places = new Set<string>();
  /** Places whose own value was taken out. */
  readonly #taken = new Set<string>();
  /** Lists that lost a member, the name or the lines of one, or were taken out themselves. */
  readonly #lost = { name: new Set<string>(), lines: new Set<string>() };
  /** How many names were compared with the known ones. */
  #looked = 0;

  get faults(): readonly Fault[] {
    return this.#faults;
  }

  #keep(fault: Fault): void {
    this.#faults.push(fault);
    for (const place of outward(fault.path)) this.#places.add(place);
  }

  /** Keeps what is wrong with the shape of a place, whose value is then missing to everything that is checked later. */
  #take(fault: Fault): void {
    this.#keep(fault);
    this.#taken.add(fault.path);
    const [, list = "", field] = /^(.*?)(?:\[\d+\](?:\.(name|lines))?)?$/s.exec(fault.path) as RegExpExecArray;
    for (const of of ["name", "lines"] as const) if (field === undefined || field === of) this.#lost[of].add(list);
  }

  /** Whether the value of a place was taken out, or what holds it. */
  took(path: string): boolean {
    for (const place of outward(path)) if (this.#taken.has(place)) return true;
    return false;
  }

  /** Whether a list may lack a name, or lines, because something of it was taken out. */
  lacks(of: "name" | "lines", list: string): boolean {
    return this.#lost[of].has(list) || this.took(list);
  }

  /** The known name that was probably meant; for the first hundred only, since all names are compared letter by letter. */
  #nearest(name: string, known: Iterable<string>): string | undefined {
    if (++this.#looked > looksMax) return undefined;
    const some: string[] = [];
    for (const one of known) if (some.push(one) === namesMax) break;
    return nearest(name, some);
  }

  note(
    path: string,
    found: unknown,
    expected: string,
    rule: FaultRule = "contradiction",
    parameters?: FaultParameters,
  ): void {
    // What was taken out is missing, too: one fault must not breed another.
    if (this.took(path)) return;
    const fault = { path, found: typeof found === "string" ? found : show(found), expected, rule };
    this.#keep(parameters ? { ...fault, parameters } : fault);
  }

  /**
   * Notes a name that stands for nothing, with the one that was probably meant; unless what it stands for was at fault
   * itself, in one of the `homes` where such names are given.
   */
  unknownName(path: string, name: string, known: Iterable<string>, expected: string, homes: readonly string[]): void {
    if (homes.some((home) => this.lacks("name", home) || this.#places.has(join(home, name)))) return;
    const near = this.#nearest(name, known);
    const parameters = { name, ...(near !== undefined && { nearest: near }) };
    this.note(path, name, expected + didYouMean(near), "unknown-name", parameters);
  }

  /**
   * Shape and quantities in one pass, by the entries of a document. Returns what was read without its unsound parts,
   * so that what needs several fields can be checked over the rest; `undefined` if nothing is left.
   */
  read<T>(entry: Entry<T>, input: unknown, at = ""): Draft<Read<T>> | undefined {
    const unsound = unsoundness(input, (keys) => keys.reduce(join, at) || "document");
    for (const fault of unsound) this.#keep(fault);
    if (unsound.some(({ rule }) => rule === "out-of-range")) return undefined;
    const { issues = [], output } = safeParse(entry as GenericSchema<unknown, Read<T>>, input);
    const cuts: Cuts = new Map();
    let nothing = false;
    for (const issue of issues) {
      const keys = (issue.path ?? []).map((step) => step.key as Key);
      const path = keys.reduce(join, at) || "document";
      this.#take(faultOf(issue, path, String(keys.at(-1) ?? "document"), (name, known) => this.#nearest(name, known)));
      // An object of an unknown kind was not read: its fields are still the text of the document.
      const unread = isUnknownKind(issue) ? keys.slice(0, -1) : keys;
      if (unread.length === 0) nothing = true;
      else cut(cuts, unread);
    }
    return nothing ? undefined : (without(output as object, cuts) as Draft<Read<T>>);
  }

  /** Runs a part of a reading and keeps its faults in place of throwing them; `at` stands in for the kernel's own path. */
  attempt<T>(read: () => T, at?: string): T | undefined {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      for (const fault of error.faults) this.#keep({ ...fault, path: at ?? fault.path });
      return undefined;
    }
  }

  /** Whether a fault was noted at a place or inside it. */
  holds(path: string): boolean {
    return this.#places.has(path);
  }

  /** The end of a reading: throws if anything was noted. */
  settle(): void {
    if (this.faults.length > 0) this.refuse();
  }

  /** Throws with what was noted. */
  refuse(): never {
    throw new CalculationError("document", this.faults);
  }
}

/** An issue of the validator, as far as a fault is made of it. */
interface Issue {
  readonly type: string;
  readonly message: string;
  readonly received: string;
  readonly expected: string | null;
  readonly input: unknown;
  readonly requirement?: unknown;
  readonly issues?: readonly unknown[] | undefined;
}

/** Whether an object was found to be of no known kind; else what stands in its place is no object at all. */
function isUnknownKind({ type, expected }: Pick<Issue, "type" | "expected">): boolean {
  return type === "variant" && expected !== "Object";
}

/** What an entry found and expected. */
function faultOf(issue: Issue, path: string, name: string, near: typeof nearest): Fault {
  const { type, message, received, expected, input } = issue;
  const { issues = [] } = issue;
  if (message === noSuchField) {
    const meant = near(name, issues as readonly string[]);
    const parameters = { name, ...(meant !== undefined && { nearest: meant }) };
    return {
      path,
      found: `the field ${name}`,
      expected: message + didYouMean(meant),
      rule: "unknown-field",
      parameters,
    };
  }
  const [own] = issues as readonly Fault[];
  // A parser of ours has said what is wrong.
  if (own) return { ...own, path };
  if (received === "undefined")
    return { path, found: "nothing", expected: `a value: the field ${name} is required`, rule: "missing" };
  const found = show(input);
  const isWord = type === "picklist" || type === "literal" || isUnknownKind(issue);
  if (isWord) return notOneOf(path, input, String(expected));
  if (type === "integer" || type === "finite" || type.endsWith("_value") || type.endsWith("_length"))
    return { path, found, expected: message, rule: "out-of-range", ...numbersOf(issue) };
  const words = { string: "text", boolean: "true or false", Object: "an object with named fields", Array: "a list" };
  const wanted = message.startsWith("Invalid") ? (words[expected as keyof typeof words] ?? String(expected)) : message;
  return { path, found, expected: wanted, rule: "wrong-type" };
}

/** A word that is none of those that are allowed, which the validator gives as `("share" | "mass")`, of kinds as `("share" | ("mass" | "parts"))`. */
function notOneOf(path: string, input: unknown, expected: string): Fault {
  const choices = [...expected.matchAll(/"[^"]*"|[^\s|()]+/g)].map(([choice]) => choice);
  const allowed = choices.map((choice) => choice.replaceAll('"', ""));
  const near = typeof input === "string" ? nearest(input, allowed) : undefined;
  return {
    path,
    found: show(input),
    expected: choices.join(" or ") + didYouMean(near),
    rule: "not-one-of",
    parameters: { allowed, ...(near !== undefined && { nearest: near }) },
  };
}

function numbersOf({ type, input, requirement }: Issue): Pick<Fault, "parameters"> {
  const end = { min_value: "min", gt_value: "min", max_value: "max", min_length: "min", max_length: "max" }[type];
  return {
    parameters: {
      ...(Number.isFinite(input) && { value: input as number }),
      ...(Array.isArray(input) && { value: input.length }),
      ...(end !== undefined && { [end]: requirement }),
    },
  };
}

/** What is to be taken out of a value: all of it, or what is to be taken out of its parts. */
type Cuts = Map<Key, Cuts | "all">;

/** Adds the end of a path to what is taken out. */
function cut(cuts: Cuts, keys: readonly Key[]): void {
  let at = cuts;
  for (const key of keys.slice(0, -1)) {
    const inner = at.get(key) ?? new Map();
    if (inner === "all") return;
    at.set(key, inner);
    at = inner;
  }
  at.set(keys.at(-1) as Key, "all");
}

/** A copy without all that is cut, made in one pass. Members of lists leave a gap, so that places keep their number. */
function without(value: object, cuts: Cuts): unknown {
  const inner = (key: Key, held: unknown): unknown => {
    const own = cuts.get(key);
    return own === undefined ? held : own === "all" ? undefined : without(held as object, own);
  };
  if (Array.isArray(value)) return value.map((member, i) => inner(i, member));
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, held]) => (cuts.get(key) === "all" ? [] : [[key, inner(key, held)]])),
  );
}
