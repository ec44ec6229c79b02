import { type GenericSchema, safeParse } from "valibot";
import { CalculationError, type Fault } from "../error.js";
import { show } from "../guards.js";
import { type Dimension, readQuantity } from "../units/index.js";

/** A document of which any part may be missing, because the shape pass took out what was unsound. */
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
 * What was found while a document is read. Both passes write into it, so that all faults are told at once.
 *
 * Once a fault is noted, figures read beside it are placeholders (NaN). They never escape: `settle` throws
 * before any result is returned.
 */
export class Findings {
  readonly faults: Fault[] = [];

  note(path: string, found: unknown, expected: string): void {
    this.faults.push({ path, found: typeof found === "string" ? found : show(found), expected });
  }

  /**
   * First pass: the shape. Returns the document without its unsound parts, so that the second pass can go on
   * over the rest; `undefined` if nothing is left.
   */
  shape<T>(schema: GenericSchema<unknown, T>, input: unknown, at = ""): Draft<T> | undefined {
    const seen = new Set<string>();
    let draft = input;
    // The schema names one unknown field an object and run; so it runs until it has nothing new to say.
    for (;;) {
      const { issues = [] } = safeParse(schema, draft);
      const news = issues.map((issue) => ({ issue, keys: (issue.path ?? []).map((step) => step.key as Key) }));
      const fresh = news.filter(({ keys }) => !seen.has(JSON.stringify(keys)));
      for (const { issue, keys } of fresh) {
        seen.add(JSON.stringify(keys));
        this.note(keys.reduce(join, at) || "document", ...inWords(issue));
        if (keys.length === 0) return undefined;
        draft = without(draft, keys);
      }
      if (fresh.length === 0) return draft as Draft<T>;
    }
  }

  /** Second pass: a quantity in the base unit of its dimension. */
  quantity(
    text: string | undefined,
    dimension: Dimension,
    path: string,
    min: number = Number.NEGATIVE_INFINITY,
  ): number {
    if (text === undefined) return Number.NaN;
    const value = this.attempt(() => readQuantity(text, dimension, path)) ?? Number.NaN;
    if (value < min) this.note(path, text, min === 0 ? "a quantity that is not negative" : "a quantity above zero");
    return value;
  }

  /** The same for a field that may be left out. */
  optional(text: string | undefined, dimension: Dimension, path: string, min?: number): number | undefined {
    return text === undefined ? undefined : this.quantity(text, dimension, path, min);
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

  /** The end of a reading: throws if anything was noted. */
  settle(): void {
    if (this.faults.length > 0) throw new CalculationError("document", this.faults);
  }
}

/** The smallest quantity that counts as above zero. */
export const aboveZero: number = Number.MIN_VALUE;

function inWords(issue: {
  expected: string | null;
  received: string;
  input: unknown;
  message: string;
}): [string, string] {
  const { expected, received } = issue;
  if (expected === "never") return [`the field ${received}`, "no such field here: see the document's schema"];
  if (received === "undefined")
    return ["nothing", `a value: the field ${expected ?? ""} is required`.replace(/ {2}/, " ")];
  const words = { string: "text", Object: "an object with named fields", Array: "a list" }[expected ?? ""];
  return [show(issue.input), words ?? (expected ?? "").replace(/^\((.*)\)$/, "$1").replaceAll("|", "or")];
}

/** A copy without the value at the end of the path. Members of lists leave a gap, so that places keep their number. */
function without(value: unknown, [key, ...rest]: readonly Key[]): unknown {
  if (key === undefined || typeof value !== "object" || value === null) return undefined;
  if (Array.isArray(value)) return value.map((member, i) => (i === key ? without(member, rest) : member));
  const { [key]: inner, ...others } = value as Record<Key, unknown>;
  return rest.length === 0 ? others : { ...others, [key]: without(inner, rest) };
}
