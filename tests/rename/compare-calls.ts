import type { Names } from "./names.js";

/** How often a function gave the same doubles: `room.function`, their number and a digest of their bits. */
export type Calls = readonly (readonly [call: string, times: number])[];

/** What the tests got from one function, old and new. */
export interface CallsCompared {
  readonly call: string;
  readonly old: number;
  readonly now: number;
  /** Calls of the old tip whose doubles no call of the new one gave, and the other way round. */
  readonly missing: number;
  readonly added: number;
}

export function compareCalls(old: Calls, now: Calls, names: Names): CallsCompared[] {
  const after = byFunction(now, (call) => call);
  const before = byFunction(old, (call) => names.calls(call).find((one) => after.has(one)) ?? call);
  return [...new Set([...before.keys(), ...after.keys()])].sort().map((call) => {
    const a = before.get(call) ?? new Map<string, number>();
    const b = after.get(call) ?? new Map<string, number>();
    return { call, old: sum(a), now: sum(b), missing: surplus(a, b), added: surplus(b, a) };
  });
}

function byFunction(calls: Calls, nameOf: (call: string) => string): Map<string, Map<string, number>> {
  const found = new Map<string, Map<string, number>>();
  for (const [line, times] of calls) {
    const [call = "", ...digest] = line.split(" ");
    const name = nameOf(call);
    const digests = found.get(name) ?? new Map<string, number>();
    const key = digest.join(" ");
    digests.set(key, (digests.get(key) ?? 0) + times);
    found.set(name, digests);
  }
  return found;
}

function sum(digests: ReadonlyMap<string, number>): number {
  return [...digests.values()].reduce((so, n) => so + n, 0);
}

function surplus(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number {
  return [...a].reduce((so, [key, n]) => so + Math.max(0, n - (b.get(key) ?? 0)), 0);
}
