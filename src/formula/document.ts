import { type GenericSchema, safeParse } from "valibot";
import { CalculationError, type Fault, type FaultParameters, type FaultRule } from "../error.js";
import { didYouMean, nearest, show } from "../guards.js";
import type { Entry } from "./entry.js";
import { faultOf, isUnknownKind } from "./issue-fault.js";
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
