import { expect, test } from "vitest";
import { nameKey } from "../../src/formula/ingredient-name.js";
import { byShare, merged, type Named } from "../../src/formula/merged.js";
import { parseRational } from "../../src/units/rational.js";

const named = (name: string, share: string): Named => ({
  name,
  key: nameKey(name, "name"),
  share: parseRational(share),
});
const shown = (entries: readonly Named[]) =>
  entries.map(({ name, share }) => `${name} ${share.numerator}/${share.denominator}`);

test("one name has one entry, whatever its spelling, with exactly the sum of its shares", () => {
  const entries = [named("Linalool", "1/3"), named("limonene", "0.1"), named("LINALOOL", "1/6")];
  expect(shown(merged(entries))).toEqual(["LINALOOL 1/2", "limonene 1/10"]);
});

test("of several spellings the one that sorts first is kept, whatever the order of the lines", () => {
  const [upper, lower, third] = [named("AQUA", "0.1"), named("aqua", "0.2"), named("Aqua", "0.3")];
  for (const order of [
    [upper, lower, third],
    [third, lower, upper],
    [lower, upper, third],
    [lower, third, upper],
  ])
    expect(shown(merged(order as Named[]))).toEqual(["AQUA 3/5"]);
});

test("the larger share comes first, equal shares by name, whatever the order of the lines", () => {
  const entries = [named("b", "0.2"), named("c", "0.5"), named("a", "0.2"), named("d", "0.1")];
  for (const order of [entries, [...entries].reverse()])
    expect(merged(order).map(({ name }) => name)).toEqual(["c", "a", "b", "d"]);
  expect(byShare(named("a", "0.2"), named("b", "0.2"))).toBeLessThan(0);
  expect(byShare(named("b", "0.2"), named("a", "0.2"))).toBeGreaterThan(0);
  expect(byShare(named("a", "0.1"), named("b", "0.2"))).toBeGreaterThan(0);
  expect(merged([])).toEqual([]);
});
