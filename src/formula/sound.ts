import type { Fault } from "../error.js";

/** One value of a document, with the way back to its top. */
interface Place {
  readonly value: unknown;
  readonly key?: string | number;
  readonly within?: Place;
}

/** Names that every object of the language has a meaning for; a validator passes them over in silence. */
const reserved = new Set(["__proto__", "constructor", "prototype"]);

/** A document of more values than this is not read: no job comes near it, and an object that holds itself has no end. */
const valuesMax = 100_000;

/** More of these faults than this are not told one by one. */
const toldMax = 100;

/**
 * What is wrong with a document before any field is looked at: its size, and names that none of its fields may have.
 * Each value is looked at once, without recursion, so that neither size nor depth can do harm.
 */
export function unsoundness(document: unknown, pathOf: (keys: readonly (string | number)[]) => string): Fault[] {
  const faults: Fault[] = [];
  const open: Place[] = [{ value: document }];
  let count = 0;
  for (let place = open.pop(); place !== undefined; place = open.pop()) {
    const { value } = place;
    if (++count > valuesMax) {
      const expected = "a document of at most 100 000 values, and no object that holds itself";
      return [{ path: pathOf([]), found: "more than 100 000 values", expected, rule: "out-of-range" }];
    }
    if (Array.isArray(value))
      // A list of a million is refused for its length, and not opened.
      for (let key = 0; key < value.length && key <= valuesMax; key++)
        open.push({ value: value[key], key, within: place });
    else if (typeof value === "object" && value !== null)
      for (const key of Object.keys(value)) {
        const own = { value: (value as Record<string, unknown>)[key], key, within: place };
        if (!reserved.has(key)) open.push(own);
        else if (faults.length < toldMax)
          faults.push({
            path: pathOf(keysOf(own)),
            found: `the name ${key}`,
            expected: "another name: this one has a meaning of its own in the language",
            rule: "unknown-field",
            parameters: { name: key },
          });
      }
  }
  return faults;
}

function keysOf(place: Place): readonly (string | number)[] {
  const keys: (string | number)[] = [];
  for (let at = place; at.key !== undefined; at = at.within as Place) keys.push(at.key);
  return keys.reverse();
}
