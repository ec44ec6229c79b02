import { randomFrom } from "../fuzz/random.js";

/** Items in an order that the seed alone decides. */
export function shuffled<T>(items: readonly T[], seed: number): readonly T[] {
  const { next } = randomFrom(seed);
  return items
    .map((item) => ({ item, place: next() }))
    .sort((one, other) => one.place - other.place)
    .map(({ item }) => item);
}
