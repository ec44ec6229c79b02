import { readFormula } from "gelwright/formula";
import { expect, test } from "vitest";
import { refusal, withstands } from "../support/hostile.js";
import { validInputs } from "./valid-inputs.js";

withstands("readFormula", readFormula, validInputs["readFormula"]?.[0]?.[0] as object);

const chain = (depth: number) => {
  const premixes = Object.fromEntries(
    Array.from({ length: depth }, (_, i) => [
      `mix ${i}`,
      { name: `mix ${i}`, lines: [{ material: i === 0 ? "oil" : `mix ${i - 1}`, amount: "100 %" }] },
    ]),
  );
  return {
    version: 1,
    name: "chain",
    materials: { oil: { name: "oil", function: "oil" } },
    premixes,
    phases: [{ name: "A", lines: [{ material: `mix ${depth - 1}`, amount: "100 %" }] }],
  };
};

test("premixes are opened a hundred deep, and refused where they go deeper", () => {
  expect(readFormula(chain(100)).lines).toMatchObject([{ material: "oil", massFraction: 1 }]);
  for (const depth of [101, 300])
    expect(refusal(() => readFormula(chain(depth))).message).toContain("premixes at most 100 deep");
});

const oil = { name: "oil", function: "oil" };
const formulaWith = (more: object) => ({
  version: 1,
  name: "trial",
  materials: { oil },
  phases: [{ name: "A", lines: [{ material: "oil", amount: "100 %" }] }],
  ...more,
});
const many = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i));
const keyed = <T>(count: number, key: string, value: T): Record<string, T> =>
  Object.fromEntries(many(count, (i) => [`${key} ${i}`, value]));

// Each took minutes, or longer than anyone would wait, where the time grew with the square of the count.
const count = 500;
const faulty: readonly (readonly [string, number, object])[] = [
  ["fields that there are not", count, keyed(count, "nme", 1)],
  [
    "lines that are none",
    2 * count - 1,
    { phases: [{ name: "A", lines: many(count, () => ({ material: "oil", amount: 5 })) }] },
  ],
  ["materials of no strength", count, { materials: { oil, ...keyed(count, "oil", { ...oil, strength: "strong" }) } }],
  [
    "names that stand for nothing",
    count,
    {
      materials: keyed(100, "oil number", oil),
      phases: [{ name: "A", lines: many(count, (i) => ({ material: `oyl number ${i}`, amount: "1 g" })) }],
    },
  ],
  [
    "phases of one name",
    count - 1,
    { phases: many(count, () => ({ name: "A", lines: [{ material: "oil", amount: "1 g" }] })) },
  ],
];

test.each(faulty)("%s are all told, %d of them, and the message stays short", (_what, told, more) => {
  const error = refusal(() => readFormula(formulaWith(more)));
  expect(error.faults).toHaveLength(told);
  expect(error.message.length).toBeLessThan(30_000);
});

test("the name that was meant is looked for a hundred times in a document, and among a thousand names", () => {
  const nearestOf = (materials: object, count: number, wrong: string) =>
    refusal(() =>
      readFormula(
        formulaWith({
          materials,
          phases: [
            { name: "A", lines: many(count, (i) => ({ material: `${wrong}${i.toString(36)}`, amount: "1 g" })) },
          ],
        }),
      ),
    ).faults.map(({ parameters }) => parameters?.nearest);
  expect(nearestOf({ "zebra wax": oil }, 102, "zebra wex").filter((near) => near !== undefined)).toHaveLength(100);
  expect(nearestOf({ ...keyed(999, "oil", oil), "zebra wax": oil }, 1, "zebra wex")).toEqual(["zebra wax"]);
  expect(nearestOf({ ...keyed(1000, "oil", oil), "zebra wax": oil }, 1, "zebra wex")).toEqual([undefined]);
});

test("a key of more than a hundred letters is cut off in the path of a fault", () => {
  const pathOf = (length: number) =>
    refusal(() => readFormula(formulaWith({ ["o".repeat(length)]: 1 }))).faults.map(({ path }) => path);
  expect(pathOf(100)).toEqual(["o".repeat(100)]);
  expect(pathOf(101)).toEqual([`["${"o".repeat(100)}…"]`]);
});

test("long names and long quantities are refused by a short message", () => {
  const long = "o".repeat(1e5);
  for (const more of [
    { [long]: 1 },
    { name: 5, premixes: { [long]: 5 } },
    { phases: [{ name: "A", lines: [{ material: long, amount: "100 %" }] }] },
    { phases: [{ name: "A", lines: [{ material: "oil", amount: long }] }] },
  ]) {
    const error = refusal(() => readFormula(formulaWith(more)));
    expect(error.message.length).toBeLessThan(3000);
  }
});
