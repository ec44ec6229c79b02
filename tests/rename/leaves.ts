/** One value at the end of one path of a result, as text that keeps its type and every bit of it. */
export type Leaf = readonly [path: readonly string[], value: string];

/** One result of one tip: what was called, and every leaf that came out. */
export interface Result {
  /** What is compared with its like: `checks`, `examples`, `plans` ... */
  readonly group: string;
  /** Names the result within its group and tip. */
  readonly id: string;
  /** The public function that gave it, as `room.function`, if there was one alone. */
  readonly call?: string;
  /** The block of an example that it belongs to. */
  readonly block?: string;
  readonly leaves: readonly Leaf[];
}

/** Every leaf of a value, in the order of its fields. What is empty is a leaf too, so that nothing gets lost. */
export function leavesOf(value: unknown, path: readonly string[] = []): Leaf[] {
  if (typeof value !== "object" || value === null) return [[path, textOf(value)]];
  const entries: [string, unknown][] =
    value instanceof Map || value instanceof Set
      ? [...value.entries()].map(([key, inner]) => [String(key), inner])
      : Object.entries(value);
  if (entries.length === 0) return [[path, Array.isArray(value) ? "empty list" : "empty object"]];
  const isList = Array.isArray(value) || ArrayBuffer.isView(value);
  return entries.flatMap(([key, inner]) => leavesOf(inner, [...path, isList ? `[${key}]` : key]));
}

/** Doubles by their bits, so that -0, NaN and the last digit survive. */
function textOf(value: unknown): string {
  if (typeof value === "number") return `double ${bitsOf(value)} ${value}`;
  if (typeof value === "string") return `text ${value}`;
  if (typeof value === "function") return "function";
  return `${typeof value} ${String(value)}`;
}

function bitsOf(value: number): string {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  return view.getBigUint64(0).toString(16).padStart(16, "0");
}

/** What a call gives, or what it throws: an error of ours with its faults, or another with its message. */
export async function outcomeOf(call: () => unknown): Promise<unknown> {
  try {
    return await call();
  } catch (error) {
    if (!(error instanceof Error)) return { thrown: String(error) };
    const { name, message, code, faults } = error as Error & { code?: unknown; faults?: unknown };
    return { thrown: { name, message, ...(code === undefined ? {} : { code }), ...(faults ? { faults } : {}) } };
  }
}
