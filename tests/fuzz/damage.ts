import { wrong } from "../support/fuzz.js";
import type { Random } from "./random.js";

type Bag = Record<Key, unknown>;

/** An object or list of plain data; typed arrays, maps and what a class made are left as they are. */
export function isPlain(value: unknown): value is Bag {
  return (
    Array.isArray(value) ||
    (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
  );
}

/** A copy of plain data; other values are kept as they are. */
export function copyOf<T>(value: T): T {
  if (Array.isArray(value)) return value.map(copyOf) as T;
  if (!isPlain(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copyOf(inner)])) as T;
}

/** Freezes plain data, so that a function that changes what it was given throws. */
export function frozen<T>(value: T): T {
  if (!isPlain(value)) return value;
  for (const inner of Object.values(value)) frozen(inner);
  return Object.freeze(value);
}

export type Key = string | number;

/** Every place of plain data, as the way to it. */
export function placesOf(value: unknown, way: readonly Key[] = []): (readonly Key[])[] {
  if (!isPlain(value)) return [];
  return Object.keys(value).flatMap((key) => {
    const own = [...way, Array.isArray(value) ? Number(key) : key];
    return [own, ...placesOf(value[key], own)];
  });
}

/** What holds a place, and the key of the place in it. */
export function holderOf(value: object, way: readonly Key[]): readonly [Bag, Key] {
  return [way.slice(0, -1).reduce((holder, key) => holder[key] as Bag, value as Bag), way.at(-1) as Key];
}

/** One damage at a place, as a careless or a hostile caller might do it. */
function damage(holder: Bag, key: Key, random: Random): void {
  const value = holder[key];
  const kind = random.below(10);
  if (typeof value === "number" && kind < 5) {
    const scaled = [value * 10 ** (random.below(40) - 20), -value, value * (1 + random.next()), 0, value + 273.15];
    holder[key] = random.of([...scaled, Number.MAX_VALUE * random.next(), Number.MIN_VALUE]);
  } else if (kind === 5 && !Array.isArray(holder)) delete holder[key];
  else if (kind === 6 && isPlain(value)) {
    if (Array.isArray(value)) value.push(...value.slice(0, 1 + random.below(3)));
    else value["wobble"] = copyOf(random.of(wrong));
  } else if (kind === 7 && Array.isArray(value)) value.reverse();
  else if (kind === 8 && Array.isArray(value)) value.splice(random.below(value.length + 1), 1 + random.below(3));
  else holder[key] = copyOf(random.of(wrong));
}

/** A copy of some arguments with two or three damages. */
export function damagedTwiceOrMore(args: readonly unknown[], random: Random): readonly unknown[] {
  const copy = copyOf(args) as unknown as Bag;
  for (let count = 2 + random.below(2); count > 0; count--) {
    // A damage may take other places away, so the places are listed again.
    const places = placesOf(copy);
    if (places.length === 0) break;
    const [holder, key] = holderOf(copy, random.of(places));
    damage(holder, key, random);
  }
  return copy as unknown as readonly unknown[];
}
