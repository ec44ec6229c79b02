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

/** Adds one step to the path of a fault: `lines[2]`, `phases`, `materials["wax, white"]`. */
export function join(path: string, key: Key): string {
  if (typeof key === "number") return `${path}[${key}]`;
  if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === "" ? key : `${path}.${key}`;
}

/**
 * What was found while a document is read: field by field, then what needs several fields. All faults are reported at once.
 *
 * Once a fault is noted, figures read beside it are placeholders (NaN). They never escape: `settle` throws
 * before any result is returned.
 */
export class Findings {
  readonly faults: Fault[] = [];

  note(
    path: string,
    found: unknown,
    expected: string,
    rule: FaultRule = "contradiction",
    parameters?: FaultParameters,
  ): void {
    const fault = { path, found: typeof found === "string" ? found : show(found), expected, rule };
    this.faults.push(parameters ? { ...fault, parameters } : fault);
  }

  /** Notes a name that stands for nothing, with the one that was probably meant. */
  unknownName(path: string, name: string, known: readonly string[], expected: string): void {
    const near = nearest(name, known);
    const parameters = { name, ...(near !== undefined && { nearest: near }) };
    this.note(path, name, expected + didYouMean(near), "unknown-name", parameters);
  }

  /**
   * Shape and quantities in one pass, by the entries of a document. Returns what was read without its unsound parts,
   * so that what needs several fields can be checked over the rest; `undefined` if nothing is left.
   */
  read<T>(entry: Entry<T>, input: unknown, at = ""): Draft<Read<T>> | undefined {
    const unsound = unsoundness(input, (keys) => keys.reduce(join, at) || "document");
    this.faults.push(...unsound);
    if (unsound.some(({ rule }) => rule === "out-of-range")) return undefined;
    const { issues = [], output } = safeParse(entry as GenericSchema<unknown, Read<T>>, input);
    let draft: unknown = output;
    for (const issue of issues) {
      const keys = (issue.path ?? []).map((step) => step.key as Key);
      this.faults.push(faultOf(issue, keys.reduce(join, at) || "document", String(keys.at(-1) ?? "document")));
      if (keys.length === 0) return undefined;
      draft = without(draft, keys);
    }
    return draft as Draft<Read<T>>;
  }

  /** Runs a part of a reading and keeps its faults in place of throwing them; `at` stands in for the kernel's own path. */
  attempt<T>(read: () => T, at?: string): T | undefined {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      this.faults.push(...error.faults.map((fault) => ({ ...fault, path: at ?? fault.path })));
      return undefined;
    }
  }

  /** Whether a fault was noted at a place or inside it. */
  holds(path: string): boolean {
    return this.faults.some(
      (fault) => fault.path === path || (/^[.[]/.test(fault.path.slice(path.length)) && fault.path.startsWith(path)),
    );
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

/** What an entry found and expected. */
function faultOf(issue: Issue, path: string, name: string): Fault {
  const { type, message, received, expected, input } = issue;
  const { issues = [] } = issue;
  if (message === noSuchField) {
    const near = nearest(name, issues as readonly string[]);
    const parameters = { name, ...(near !== undefined && { nearest: near }) };
    return {
      path,
      found: `the field ${name}`,
      expected: message + didYouMean(near),
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
  if (type === "picklist" || type === "literal" || type === "variant") return notOneOf(path, input, expected ?? "");
  if (type === "integer" || type === "finite" || type.endsWith("_value") || type.endsWith("_length"))
    return { path, found, expected: message, rule: "out-of-range", ...numbersOf(issue) };
  const words = { string: "text", boolean: "true or false", Object: "an object with named fields", Array: "a list" };
  const wanted = message.startsWith("Invalid") ? (words[expected as keyof typeof words] ?? expected ?? "") : message;
  return { path, found, expected: wanted, rule: "wrong-type" };
}

/** A word that is none of those that are allowed, which the validator gives as `("share" | "mass")`. */
function notOneOf(path: string, input: unknown, expected: string): Fault {
  const choices = expected.replace(/^\((.*)\)$/, "$1").split(" | ");
  const allowed = choices.map((choice) => choice.replace(/^"(.*)"$/, "$1"));
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
  const end = { min_value: "min", gt_value: "min", max_value: "max", min_length: "min" }[type];
  return {
    parameters: {
      ...(typeof input === "number" && Number.isFinite(input) && { value: input }),
      ...(Array.isArray(input) && { value: input.length }),
      ...(end !== undefined && { [end]: requirement }),
    },
  };
}

/** A copy without the value at the end of the path. Members of lists leave a gap, so that places keep their number. */
function without(value: unknown, [key, ...rest]: readonly Key[]): unknown {
  if (key === undefined || typeof value !== "object" || value === null) return undefined;
  if (Array.isArray(value)) return value.map((member, i) => (i === key ? without(member, rest) : member));
  const { [key]: inner, ...others } = value as Record<Key, unknown>;
  return rest.length === 0 ? others : { ...others, [key]: without(inner, rest) };
}
