import { wrong } from "../support/fuzz.js";
import type { Random } from "./random.js";

type Bag = Record<string | number, unknown>;

/** An object or list of plain data; typed arrays, maps and what a class made are left as they are. */
export function isPlain(value: unknown): value is Bag {
  return (
    Array.isArray(value) ||
    (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
  );
}

/** A copy of plain data; what is none goes along as it is. */
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

/** Every place of plain data: what holds it, and its key. */
function placesIn(value: Bag, found: (readonly [Bag, string | number])[] = []): (readonly [Bag, string | number])[] {
  for (const key of Object.keys(value)) {
    found.push([value, Array.isArray(value) ? Number(key) : key]);
    const inner = value[key];
    if (isPlain(inner)) placesIn(inner, found);
  }
  return found;
}

/** One damage at a place, such as a careless or a hostile caller does. */
function damage(holder: Bag, key: string | number, random: Random): void {
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
    // A damage may take others' places away, so they are looked for anew.
    const places = placesIn(copy);
    if (places.length === 0) break;
    const [holder, key] = random.of(places);
    damage(holder, key, random);
  }
  return copy as unknown as readonly unknown[];
}
