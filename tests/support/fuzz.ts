import { CalculationError } from "gelwright/error";

/** Argument lists that a public function takes, by its name: each room's `valid-inputs.ts` exports them. */
export type ValidInputs = Readonly<Record<string, readonly (readonly unknown[])[]>>;

/** What a careless caller puts where a number, a text or an object belongs. */
export const wrong: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  -1,
  0,
  -0,
  1e308,
  -1e308,
  5e-324,
  1e-300,
  1.5,
  1e9,
  "",
  "12",
  "NaN",
  "12,5 kg",
  "q.s.",
  null,
  undefined,
  true,
  [],
  {},
  [Number.NaN],
  () => 1,
  Symbol("x"),
  10n,
];

type Place = readonly (string | number)[];

/** The argument lists that differ from a valid one in a single place, at any depth: how many there are, and each by its number. */
export interface Mutations {
  readonly count: number;
  readonly at: (number: number) => readonly unknown[];
}

/** Each is made when it is asked for: a whole job has 20,000, of which few are tried. */
export function mutations(args: readonly unknown[]): Mutations {
  const places = [...placesIn(args)];
  return {
    count: places.length * wrong.length,
    at: (number) =>
      withOther(args, places[Math.floor(number / wrong.length)] ?? [], wrong[number % wrong.length]) as unknown[],
  };
}

function* placesIn(value: unknown, path: Place = []): Generator<Place> {
  const isPlain = typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype;
  if (!Array.isArray(value) && !isPlain) return;
  for (const [key, inner] of Array.isArray(value) ? value.entries() : Object.entries(value as object)) {
    const place = [...path, key];
    yield place;
    yield* placesIn(inner, place);
  }
}

function withOther(value: unknown, [key, ...further]: Place, other: unknown): unknown {
  if (key === undefined) return other;
  const put = (inner: unknown) => withOther(inner, further, other);
  if (Array.isArray(value)) return value.map((member, i) => (i === key ? put(member) : member));
  return { ...(value as object), [key]: put((value as Readonly<Record<string | number, unknown>>)[key]) };
}

/**
 * What a function did wrong for one argument list: it threw something that is no CalculationError,
 * or it returned a number that is not finite. `undefined` if it kept the promise.
 */
export function brokenPromise(call: (...args: never[]) => unknown, args: readonly unknown[]): string | undefined {
  try {
    const at = notFinite(call(...(args as never[])), "result");
    return at && `${at} for ${describe(args)}`;
  } catch (error) {
    return error instanceof CalculationError && error.message.length > 0 && error.faults.length > 0
      ? undefined
      : `threw ${String(error)} for ${describe(args)}`;
  }
}

function notFinite(value: unknown, path: string): string | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? undefined : `${path} is ${value}`;
  if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) {
      const at = notFinite(inner, `${path}.${key}`);
      if (at) return at;
    }
  return undefined;
}

function describe(args: readonly unknown[]): string {
  const text = JSON.stringify(args, (_key, value: unknown) =>
    ["bigint", "symbol", "function", "undefined"].includes(typeof value) ||
    Object.is(value, -0) ||
    (typeof value === "number" && !Number.isFinite(value))
      ? String(value)
      : value,
  );
  // What was damaged stands somewhere in a document of pages; the path and the start are enough to find it.
  return text.length > 300 ? `${text.slice(0, 300)}…` : text;
}
