/** Items in an order that the seed alone decides. */
export function shuffled<T>(items: readonly T[], seed: number): readonly T[] {
  const rest = [...items];
  let state = seed >>> 0;
  for (let last = rest.length - 1; last > 0; last -= 1) {
    // A linear congruence of 32 bits, of which the upper ones are taken.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const other = Math.floor((state / 2 ** 32) * (last + 1));
    [rest[last], rest[other]] = [rest[other] as T, rest[last] as T];
  }
  return rest;
}
