import { expect, test } from "vitest";
import { endlessWay, type Premix } from "../../src/formula/premix.js";

const of = (lines: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, Premix> =>
  new Map(
    Object.entries(lines).map(([name, parts]) => [
      name,
      { name, lines: parts.map((material) => ({ material, massFraction: 1 / parts.length })) },
    ]),
  );

test("premixes without a way round have none, however often one is used", () => {
  expect(endlessWay(of({}))).toBeUndefined();
  expect(endlessWay(of({ a: ["oil"], b: ["a", "oil"], c: ["b", "a"] }))).toBeUndefined();
});

test("the way round goes from a premix back to itself, without the way in", () => {
  expect(endlessWay(of({ a: ["a"] }))).toEqual(["a", "a"]);
  expect(endlessWay(of({ a: ["oil", "b"], b: ["c"], c: ["b"] }))).toEqual(["b", "c", "b"]);
});

test("a chain far longer than the stack of calls is told by the premix that lies too deep, and one of a hundred is none", () => {
  const chain = (length: number) =>
    of(Object.fromEntries(Array.from({ length }, (_, i) => [`mix ${i}`, [i + 1 < length ? `mix ${i + 1}` : "oil"]])));
  expect(endlessWay(chain(100))).toBeUndefined();
  expect(endlessWay(chain(101))).toHaveLength(1);
  expect(endlessWay(chain(20_000))).toEqual(["mix 100"]);
});
