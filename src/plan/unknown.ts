import { CalculationError } from "../error.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { LawCode } from "./codes/bases.js";
import type { FieldCode, ReasonCode } from "./codes/reasons.js";

/** Why a figure is not known, as data: a code with its parameters, and the field that would settle it. */
export interface Reason {
  readonly code: ReasonCode;
  /** The field of the documents that would settle it. */
  readonly field?: FieldCode;
  /** The material, phase or kind that it is about, in the caller's words. */
  readonly of?: string;
  /** Phases of the charge that has no reading. */
  readonly phases?: readonly string[];
  readonly direction?: "heating" | "cooling";
  /** Gel former in the charge that has no reading [0 to 1]. */
  readonly dose?: number;
  /** The law that refused. */
  readonly law?: LawCode;
  /** The figure that it refused, which is out of its range, in the units of the kernels. */
  readonly quantity?: string;
  /** What was asked for. */
  readonly value?: number;
  /** From where the law holds. */
  readonly min?: number | null;
  /** Up to where it holds. */
  readonly max?: number | null;
  /** The step at which a figure was lost, from 1. */
  readonly step?: number;
  /** Where it is missing: at the bench rather than here. */
  readonly at?: "bench";
}

/** Thrown inside an evaluation, and nowhere seen beyond the four boundaries. No stack: it is no error. */
export class Unknown {
  readonly reason: Reason;

  /** With the reason. */
  constructor(reason: Reason) {
    this.reason = reason;
  }
}

/** Ends an evaluation: the figure is not known. */
export function unknown(code: ReasonCode, parameters: Omit<Reason, "code"> = {}): never {
  throw new Unknown({ code, ...parameters });
}

/** The value of a field, or the end of the evaluation where the documents do not state it. */
export function stated<T>(value: T | undefined, field: FieldCode, parameters: Omit<Reason, "code" | "field"> = {}): T {
  return value === undefined ? unknown("not-stated", { field, ...parameters }) : value;
}

/** Asks a kernel. What it refuses is not known, with the law and the quantity that it refused. */
export function by<T>(law: LawCode, kernel: () => T, parameters: Partial<Omit<Reason, "law">> = {}): T {
  try {
    return kernel();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const [fault] = error.faults;
    const quantity = fault && kebab(fault.path);
    // A constant that a kernel lacks is a field to state; what it lacks a range for is out of that.
    const code = error.code === "unreachable" && parameters.field !== undefined ? "not-stated" : "outside-range";
    const { code: own = code, ...others } = parameters;
    return unknown(own, { law, ...(quantity !== undefined && { quantity }), ...fault?.parameters, ...others });
  }
}

/** A figure of the run: its value once asked for, or the reason why it is not known, found once. */
export type Cell<T> = () => T;

/** What has been taken for granted on the way to the figure that is being found; nothing is kept where none is. */
let onTheWay: AssumptionCode[] | undefined;

/** Takes something for granted: it travels with every figure that comes to rest on what is being found, remembered or not. */
export function assume(...codes: readonly AssumptionCode[]): void {
  onTheWay?.push(...codes);
}

/** A figure, and what was taken for granted on the way to it. */
export function withAssumed<T>(find: () => T): { readonly value: T; readonly assumed: readonly AssumptionCode[] } {
  const before = onTheWay;
  const own: AssumptionCode[] = [];
  onTheWay = own;
  try {
    const value = find();
    return { value, assumed: own.length > 1 ? [...new Set(own)] : own };
  } finally {
    onTheWay = before;
  }
}

/** A figure that comes out as what was asked for, whatever is taken for granted on the way: only what the asking rests on travels with it. */
export function asAsked(find: () => number, asked: () => number): number {
  const { value, assumed } = withAssumed(find);
  const end = asked();
  if (value !== end) assume(...assumed);
  return value;
}

/** Finds a figure when it is first asked for, and remembers what came of it. */
export function cell<T>(find: () => T): Cell<T> {
  let found: ReturnType<typeof look<T>> | undefined;
  return () => {
    found ??= look(find);
    if ("unknown" in found) throw found.unknown;
    if (found.assumed.length > 0) assume(...found.assumed);
    return found.value;
  };
}

/** Finds a figure once for each part of a document or of a run: a change of the job keeps what it does not touch. */
export function remembered<Part extends object, T>(find: (part: Part) => T): (part: Part) => T {
  return onceFor(new WeakMap<Part, Cell<T>>(), find);
}

/** Finds a figure along a number, such as a temperature, once for each. */
export function along<T>(find: (at: number) => T): (at: number) => T {
  return onceFor(new Map<number, Cell<T>>(), find);
}

function onceFor<Key, T>(
  found: { get(key: Key): Cell<T> | undefined; set(key: Key, own: Cell<T>): unknown },
  find: (key: Key) => T,
): (key: Key) => T {
  return (key) => {
    const there = found.get(key);
    if (there) return there();
    const own = cell(() => find(key));
    found.set(key, own);
    return own();
  };
}

/** A figure that is known from the start. */
export function known<T>(value: T): Cell<T> {
  return () => value;
}

function look<T>(find: () => T): ReturnType<typeof withAssumed<T>> | { readonly unknown: Unknown } {
  try {
    return withAssumed(find);
  } catch (error) {
    if (error instanceof Unknown) return { unknown: error };
    throw error;
  }
}

/** A boundary: the figure, or what is to stand in its place where it is not known. */
export function otherwise<T, Other>(find: () => T, instead: (reason: Reason) => Other): T | Other {
  try {
    return find();
  } catch (error) {
    if (error instanceof Unknown) return instead(error.reason);
    throw error;
  }
}

/** The first of two ways that leads to a figure; the reason is the last one's. */
export function either<T>(first: () => T, second: () => T): T {
  return otherwise(first, second);
}

/** A boundary for results: the figure, or why it is not known. */
export function orNotKnown<T>(find: () => T): T | { readonly notKnown: Reason } {
  return otherwise(find, (notKnown) => ({ notKnown }));
}

/** A boundary for results: the figure under its name, or nothing where it is not known. */
export function where<Name extends string, T>(name: Name, find: () => T): { readonly [Key in Name]?: T } {
  return otherwise(
    () => ({ [name]: find() }) as { readonly [Key in Name]?: T },
    () => ({}),
  );
}

/** `viscosity.points[0]` as a code: the last name of the path, in lower case with hyphens. */
function kebab(path: string): string {
  const name = path
    .replace(/\[\d+\]/g, "")
    .split(".")
    .at(-1) as string;
  return name
    .replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}
