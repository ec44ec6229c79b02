import {
  array,
  boolean,
  custom,
  type ExactOptionalSchema,
  exactOptional,
  finite,
  type GenericSchema,
  gtValue,
  integer,
  literal,
  maxLength,
  maxValue,
  minLength,
  minValue,
  nullable,
  number,
  objectWithRest,
  picklist,
  pipe,
  rawTransform,
  record,
  string,
  unknown,
  variant,
} from "valibot";
import { CalculationError } from "../error.js";
import { refuse, show } from "../guards.js";
import { type Dimension, type Quantity, readQuantity } from "../units/index.js";
import { type PriceText, readPrice } from "./price.js";
import type { Read } from "./read-type.js";

/** What reads one field: its shape, its unit and its bounds, held by the compiler against the document's type. */
export type Entry<T> = GenericSchema<T, Read<T>>;

/**
 * What a field holds: a `reading` of the bench or of the works; a `property` from a data sheet, a name plate or a rule; a
 * `wish`: what is asked for, claimed, allowed or agreed; the `identity` of a thing: what there is, and what it is called;
 * a fact of the `process`: what is done. Without a reading or a property less is known, and nothing gets better; without
 * one of the others it is another job.
 */
export type FieldClass = "reading" | "property" | "wish" | "identity" | "process";

/** An entry that may be left out, with the class of what it holds. A field that is required has that of what holds it. */
export type Optional<T> = ExactOptionalSchema<Entry<T>, undefined> & { readonly holds: FieldClass };

/** One entry for every field of a document, none too many; a field that may be left out has an optional one. */
export type Entries<T> = {
  readonly [Key in keyof T]-?: Partial<Pick<T, Key>> extends Pick<T, Key>
    ? Optional<Exclude<T[Key], undefined>>
    : Entry<T[Key]>;
};

interface Bounds {
  readonly min?: number;
  readonly max?: number;
  /** Left out itself. */
  readonly above?: number;
  /** Left out itself. */
  readonly below?: number;
}

/** Those of a quantity, for which there are words. */
interface QuantityBounds extends Bounds {
  readonly min?: 0 | 60;
  readonly max?: 1;
  readonly above?: 0;
  readonly below?: 1;
}

/** A field that may be left out: the class of what it holds, and what reads it. */
export function maybe<T>(holds: FieldClass, entry: Entry<T>): Optional<T> {
  return Object.assign(exactOptional(entry), { holds });
}

/** Text as it stands. */
export const text: Entry<string> = string();

/** True or false. */
export const truth: Entry<boolean> = boolean();

/** One value and no other: the version of a document. */
export function exactly<const T extends string | number>(value: T): Entry<T> {
  return literal(value) as unknown as Entry<T>;
}

/** A plain number within bounds; `above` leaves its bound out. */
export function plain({ min, max, above }: Omit<Bounds, "below"> = {}): Entry<number> {
  const within = [
    ...(min === undefined ? [] : [minValue(min, `a number of ${min} or more`)]),
    ...(max === undefined ? [] : [maxValue(max, `a number of ${max} or less`)]),
    ...(above === undefined ? [] : [gtValue(above, `a number above ${above}`)]),
  ];
  return pipe(number(), finite("a finite number"), ...(within as unknown as readonly []));
}

/** A whole number from a bound on. */
export function whole(min: number): Entry<number> {
  return pipe(number(), integer("a whole number"), minValue(min, `a whole number of ${min} or more`));
}

/** A value, or `null` where there is none: an open end. */
export function orNull<T>(entry: Entry<T>): Entry<T | null> {
  return nullable(entry) as unknown as Entry<T | null>;
}

/** One of some words. */
export function word<const T extends string>(...words: readonly T[]): Entry<T> {
  return picklist(words) as unknown as Entry<T>;
}

/** A list with so many members at least, and at most. */
export function listOf<T>(entry: Entry<T>, min = 0, max?: number): Entry<readonly T[]> {
  const end = max === undefined ? [] : [maxLength(max, `a list of at most ${max}`)];
  const ends = [minLength(min, `a list of at least ${min}`), ...end];
  return pipe(array(entry), ...(ends as unknown as readonly [])) as unknown as Entry<readonly T[]>;
}

/** Named values of one kind. */
export function named<T>(entry: Entry<T>): Entry<Readonly<Record<string, T>>> {
  return record(string(), entry) as unknown as Entry<Readonly<Record<string, T>>>;
}

/** What is expected where a field stands that there is not. */
export const noSuchField = "no such field here";

/** An object with just these fields. Every field that it does not have is reported, with the nearest that it has. */
export function fields<T extends object>(entries: Entries<T>): Entry<T> {
  const known = Object.keys(entries);
  const rest = rawTransform<unknown, never>(({ addIssue, NEVER }) => {
    // The name of the field is known where the fault is made; what there is goes along for it.
    addIssue({ message: noSuchField, issues: known } as never);
    return NEVER;
  });
  // Without a prototype: whatever a page adds to that of all objects is no field of a document.
  const own = Object.assign(Object.create(null), entries) as typeof entries;
  return objectWithRest(own as never, pipe(unknown(), rest)) as unknown as Entry<T>;
}

/** Objects of several kinds, told apart by one field. If a kind has several forms, faults are reported for the form that has more of the fields. */
export function kinds<T extends object>(
  field: keyof T & string,
  members: readonly Entry<never>[] | readonly object[],
): Entry<T> {
  const read = variant(field, members as never) as unknown as Entry<T>;
  const anyKind = read["~run"].bind(read);
  return Object.assign(read, {
    "~run": ((dataset, config) =>
      formOf(dataset.value, field, members as readonly Form<T>[])?.["~run"](dataset, config) ??
      anyKind(dataset, config)) satisfies Entry<T>["~run"],
  });
}

type Form<T> = Entry<T> & { readonly entries: Readonly<Record<string, { readonly options?: readonly unknown[] }>> };

/** The form of an object's kind that has most of its fields; undefined if there is no such kind. */
function formOf<T>(value: unknown, field: string, members: readonly Form<T>[]): Form<T> | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const kind: unknown = Reflect.get(value, field);
  const forms = members.filter(({ entries }) => entries[field]?.options?.includes(kind));
  const knownBy = ({ entries }: Form<T>): number => Object.keys(value).filter((key) => key in entries).length;
  const [first, ...others] = forms;
  return first && others.reduce((one, other) => (knownBy(other) > knownBy(one) ? other : one), first);
}

/** A quantity as text, read into the base unit of its dimension. Bounds are in that unit. */
export function quantity<D extends Dimension>(dimension: D, bounds: QuantityBounds = {}): Entry<Quantity<D>> {
  const { min, max, above, below } = bounds;
  const ends = { ...withKey("min", min ?? above), ...withKey("max", max ?? below) };
  const read = (written: string): number => {
    const value = readQuantity(written, dimension);
    const expected = outOf(value, bounds);
    if (expected === undefined) return value;
    return refuse("document", dimension, show(written), expected, { rule: "out-of-range", value, ...ends });
  };
  return parsed(read, "text with a number and its unit") as unknown as Entry<Quantity<D>>;
}

/** A price per mass. */
export const price: Entry<PriceText> = parsed(readPrice, "text with a price per mass") as unknown as Entry<PriceText>;

/** Text that a parser of ours reads. The parser says best what is wrong with it. */
function parsed<T>(parse: (written: string) => T, expected: string): GenericSchema<string, T> {
  const read = rawTransform<string, T>(({ dataset, addIssue, NEVER }) => {
    try {
      return parse(dataset.value);
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      // The fault goes along as it is, for `Findings.read`.
      addIssue({ message: expected, issues: error.faults } as never);
      return NEVER;
    }
  });
  return pipe(
    custom<string>((value) => typeof value === "string", expected),
    read,
  );
}

/** Which bound a value is out of, in words. */
function outOf(value: number, bounds: QuantityBounds): string | undefined {
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = bounds;
  const { above = Number.NEGATIVE_INFINITY, below = Number.POSITIVE_INFINITY } = bounds;
  if (value <= above) return "a quantity above zero";
  if (value < min) return min === 0 ? "a quantity that is not negative" : `a quantity of at least ${min}`;
  if (value > max) return "a share of 100 % at most";
  if (value >= below) return "less than 100 %";
  return undefined;
}

function withKey(key: "min" | "max", value: number | undefined): { readonly min?: number; readonly max?: number } {
  return value === undefined ? {} : { [key]: value };
}
