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

/** Every argument list that differs from a valid one in a single place, at any depth. */
export function* mutations(args: readonly unknown[]): Generator<readonly unknown[]> {
  yield* variants(args) as Generator<readonly unknown[]>;
}

function* variants(value: unknown): Generator<unknown> {
  if (Array.isArray(value)) {
    for (const [at, inner] of value.entries())
      for (const other of [...wrong, ...variants(inner)]) yield value.map((member, i) => (i === at ? other : member));
  } else if (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype) {
    for (const [key, inner] of Object.entries(value))
      for (const other of [...wrong, ...variants(inner)]) yield { ...value, [key]: other };
  }
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
