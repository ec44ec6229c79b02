import type { Quantity } from "gelwright/units";
import { expect, test } from "vitest";
import { Findings } from "../../src/formula/document.js";
import {
  type Entry,
  exactly,
  fields,
  kinds,
  listOf,
  maybe,
  named,
  orNull,
  plain,
  price,
  quantity,
  text,
  truth,
  whole,
  word,
} from "../../src/formula/entry.js";

/** What an entry makes of a value, and what it finds wrong with it. */
function read<T>(entry: Entry<T>, value: unknown) {
  const findings = new Findings();
  const found = findings.read(entry, value);
  return { found, faults: findings.faults };
}
/** The same of a field: what is wrong with it, in words. */
function wrong<T>(entry: Entry<T>, value: unknown): readonly string[] {
  const { faults } = read(fields<{ readonly own: T }>({ own: entry } as never), { own: value });
  return faults.map(({ expected }) => expected);
}

test("a quantity is read in the unit of its dimension, and refused on the wrong side of each bound", () => {
  const share = (bounds: Parameters<typeof quantity>[1], written: string) =>
    wrong(quantity("massFraction", bounds), written);
  const entry = fields<{ readonly mass: Quantity<"mass"> }>({ mass: quantity("mass") });
  expect(read(entry, { mass: "20 g" })).toEqual({ found: { mass: expect.closeTo(0.02, 15) }, faults: [] });
  expect(share({}, "-250 %")).toEqual([]);
  expect([share({ min: 0 }, "0 %"), share({ min: 0 }, "-0.1 %")]).toEqual([[], ["a quantity that is not negative"]]);
  expect([share({ above: 0 }, "0.1 %"), share({ above: 0 }, "0 %")]).toEqual([[], ["a quantity above zero"]]);
  expect([share({ max: 1 }, "100 %"), share({ max: 1 }, "100.1 %")]).toEqual([[], ["a share of 100 % at most"]]);
  expect([share({ below: 1 }, "99.9 %"), share({ below: 1 }, "100 %")]).toEqual([[], ["less than 100 %"]]);
  const time = quantity("time", { min: 60 });
  expect([wrong(time, "1 min"), wrong(time, "59 s")]).toEqual([[], ["a quantity of at least 60"]]);
});

test("a quantity out of its bounds is told with its value and its bounds as numbers", () => {
  const parameters = (bounds: Parameters<typeof quantity>[1], written: string) =>
    read(quantity("massFraction", bounds), written).faults.map((fault) => [fault.rule, fault.parameters]);
  expect(parameters({ min: 0, below: 1 }, "120 %")).toStrictEqual([["out-of-range", { value: 1.2, min: 0, max: 1 }]]);
  expect(parameters({ above: 0 }, "-5 %")).toStrictEqual([["out-of-range", { value: -0.05, min: 0 }]]);
  expect(parameters({ max: 1 }, "120 %")).toStrictEqual([["out-of-range", { value: 1.2, max: 1 }]]);
});

test("a text that is no quantity or no price is told by what reads it, and a number by what belongs there", () => {
  expect(read(quantity("mass"), "20 gramms").faults).toMatchObject([{ rule: "unknown-unit" }]);
  expect(read(price, "20 EUR").faults).toMatchObject([{ rule: "not-a-price" }]);
  expect(wrong(quantity("mass"), 20)).toEqual(["text with a number and its unit"]);
  expect(wrong(price, 20)).toEqual(["text with a price per mass"]);
});

test("a plain number is finite and within its bounds", () => {
  expect([wrong(plain(), -1e9), wrong(plain(), Number.NaN), wrong(plain(), "5")]).toEqual([[], ["number"], ["number"]]);
  expect(wrong(plain(), Number.POSITIVE_INFINITY)).toEqual(["a finite number"]);
  const bounded = plain({ min: 1, max: 3 });
  expect([wrong(bounded, 1), wrong(bounded, 3)]).toEqual([[], []]);
  expect([wrong(bounded, 0.99), wrong(bounded, 3.01)]).toEqual([["a number of 1 or more"], ["a number of 3 or less"]]);
  expect([wrong(plain({ above: 0 }), 1e-9), wrong(plain({ above: 0 }), 0)]).toEqual([[], ["a number above 0"]]);
});

test("what is told of a number that is out of its bounds is the number and the bound, and of no number nothing", () => {
  const parameters = (entry: Entry<never>, value: unknown) =>
    read(fields<{ readonly own: never }>({ own: entry }), { own: value }).faults.map((fault) => fault.parameters);
  expect(parameters(plain() as never, Number.POSITIVE_INFINITY)).toStrictEqual([{}]);
  expect(parameters(whole(1) as never, 1.5)).toStrictEqual([{ value: 1.5 }]);
  expect(parameters(whole(1) as never, 0)).toStrictEqual([{ value: 0, min: 1 }]);
  expect(parameters(plain({ above: 0 }) as never, 0)).toStrictEqual([{ value: 0, min: 0 }]);
  expect(parameters(plain({ max: 1 }) as never, 2)).toStrictEqual([{ value: 2, max: 1 }]);
  expect(parameters(listOf(text, 2, 3) as never, ["x"])).toStrictEqual([{ value: 1, min: 2 }]);
  expect(parameters(listOf(text, 0, 1) as never, ["x", "y"])).toStrictEqual([{ value: 2, max: 1 }]);
});

test("a count is whole and starts where it is said to", () => {
  expect([wrong(whole(1), 1), wrong(whole(1), 7), wrong(whole(0), 0)]).toEqual([[], [], []]);
  expect([wrong(whole(1), 0), wrong(whole(1), 1.5)]).toEqual([["a whole number of 1 or more"], ["a whole number"]]);
});

test("a field that there is not is told by its name, with the nearest that there is", () => {
  const entry = fields<{ readonly name: string; readonly notes: string }>({ name: text, notes: text });
  expect(read(entry, { name: "a", notes: "b", nmae: "c", lines: [] }).faults).toStrictEqual([
    {
      path: "nmae",
      found: "the field nmae",
      expected: "no such field here; did you mean name?",
      rule: "unknown-field",
      parameters: { name: "nmae", nearest: "name" },
    },
    {
      path: "lines",
      found: "the field lines",
      expected: "no such field here",
      rule: "unknown-field",
      parameters: { name: "lines" },
    },
  ]);
});

test("an open end is null, and not left out", () => {
  const entry = fields<{ readonly max: number | null }>({ max: orNull(plain({ above: 0 })) });
  expect(read(entry, { max: null })).toEqual({ found: { max: null }, faults: [] });
  expect(read(entry, { max: 5 }).faults).toEqual([]);
  expect(read(entry, { max: 0 }).faults).toMatchObject([{ path: "max", rule: "out-of-range" }]);
  expect(read(entry, {}).faults).toMatchObject([{ path: "max", rule: "missing" }]);
});

test("a list has so many members at least, and at most", () => {
  const of = (count: number) => Array.from({ length: count }, () => "x");
  expect([wrong(listOf(text), []), wrong(listOf(text, 2), of(2)), wrong(listOf(text, 2, 3), of(3))]).toEqual([
    [],
    [],
    [],
  ]);
  expect(wrong(listOf(text, 2), of(1))).toEqual(["a list of at least 2"]);
  expect(wrong(listOf(text, 2, 3), of(4))).toEqual(["a list of at most 3"]);
});

test("a value that has to be this one is no other, and a field that may be left out may not be undefined", () => {
  expect([wrong(exactly(12), 12), wrong(exactly(12), 2)]).toEqual([[], ["12"]]);
  expect([wrong(truth, false), wrong(truth, 0)]).toEqual([[], ["true or false"]]);
  const entry = fields<{ readonly notes?: string }>({ notes: maybe("identity", text) });
  expect(read(entry, {})).toEqual({ found: {}, faults: [] });
  expect(read(entry, { notes: undefined }).faults).toHaveLength(1);
  expect(maybe("reading", text).holds).toBe("reading");
});

/** Warming has two forms: to a temperature, or for a time at a power. */
interface Warm {
  readonly do: "warm";
  readonly to: string;
}
interface Hold {
  readonly do: "warm";
  readonly power: string;
  readonly time: string;
}
interface Rest {
  readonly do: "rest" | "wait";
  readonly time: string;
}
const step = kinds<Warm | Hold | Rest>("do", [
  fields<Warm>({ do: word("warm"), to: quantity("temperature") as never }),
  fields<Hold>({
    do: word("warm"),
    power: quantity("power", { above: 0 }) as never,
    time: quantity("time", { above: 0 }) as never,
  }),
  fields<Rest>({ do: word("rest", "wait"), time: quantity("time", { above: 0 }) as never }),
]);
const steps = fields<{ readonly steps: readonly (Warm | Hold | Rest)[] }>({ steps: listOf(step, 1) });
const faultsOf = (...members: readonly unknown[]) =>
  read(steps, { steps: members }).faults.map(({ path, rule }) => [path, rule]);

test("each form of each kind is read by its own fields", () => {
  expect(
    read(steps, {
      steps: [
        { do: "warm", to: "80 °C" },
        { do: "warm", power: "1 kW", time: "5 min" },
        { do: "wait", time: "1 min" },
      ],
    }),
  ).toEqual({
    found: {
      steps: [
        { do: "warm", to: 80 },
        { do: "warm", power: 1000, time: 300 },
        { do: "wait", time: 60 },
      ],
    },
    faults: [],
  });
});

test("what is wrong with an object whose kind has two forms is told of the form that has more of its fields", () => {
  expect(faultsOf({ do: "warm", power: "1 kW" })).toEqual([["steps[0].time", "missing"]]);
  expect(faultsOf({ do: "warm", power: "1 kW", time: "0 s" })).toEqual([["steps[0].time", "out-of-range"]]);
  expect(faultsOf({ do: "warm", power: "1 kW", time: "5 min", to: "80 °C" })).toEqual([
    ["steps[0].to", "unknown-field"],
  ]);
  // With as many of each the first form is meant.
  expect(faultsOf({ do: "warm" })).toEqual([["steps[0].to", "missing"]]);
  expect(faultsOf({ do: "warm", to: "80 °C", time: "5 min" })).toEqual([["steps[0].time", "unknown-field"]]);
  expect(faultsOf({ do: "rest", to: "80 °C" })).toEqual([
    ["steps[0].time", "missing"],
    ["steps[0].to", "unknown-field"],
  ]);
});

test("an object of a kind that there is not is told by its kind alone, with the nearest", () => {
  expect(read(steps, { steps: [{ do: "warn", to: 5 }] }).faults).toEqual([
    {
      path: "steps[0].do",
      found: '"warn"',
      expected: '"warm" or "rest" or "wait"; did you mean warm?',
      rule: "not-one-of",
      parameters: { allowed: ["warm", "rest", "wait"], nearest: "warm" },
    },
  ]);
  expect(faultsOf({ to: "80 °C" })).toEqual([["steps[0].do", "missing"]]);
  expect(read(step, { do: "boil" })).toMatchObject({ found: undefined, faults: [{ path: "do" }] });
  for (const none of [5, null, "rest"])
    expect(read(steps, { steps: [none] }).faults).toMatchObject([
      { path: "steps[0]", rule: "wrong-type", expected: "an object with named fields" },
    ]);
});

test("what is sound beside an object of an unknown kind is still there, in its place", () => {
  const { found } = read(steps, { steps: [{ do: "boil" }, { do: "rest", time: "1 min" }] });
  expect(found).toEqual({ steps: [undefined, { do: "rest", time: 60 }] });
});

test("what is unsound is taken out alone: of a list it leaves a gap, of named values nothing", () => {
  const entry = fields<{ readonly by: Readonly<Record<string, readonly string[]>> }>({ by: named(listOf(text)) });
  expect(read(entry, { by: { one: ["a", 5, "c"], other: 5, third: ["d"] } }).found).toStrictEqual({
    by: { one: ["a", undefined, "c"], third: ["d"] },
  });
});
