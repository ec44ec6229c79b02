/** Numbers from a seed, the same on every machine (mulberry32). */
export interface Random {
  /** From 0 up to 1. */
  readonly next: () => number;
  /** A whole number from 0 up to `end`. */
  readonly below: (end: number) => number;
  /** A member of a list. */
  readonly of: <T>(list: readonly T[]) => T;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (end: number): number => Math.floor(next() * end);
  return { next, below, of: (list) => list[below(list.length)] as (typeof list)[number] };
}
