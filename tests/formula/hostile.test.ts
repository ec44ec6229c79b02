import { readBatch, scaleFormula } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { runPlan } from "gelwright/plan";
import { expect, test } from "vitest";
import { validInputs as ofBatch } from "../batch/valid-inputs.js";
import { validInputs as ofPlan } from "../plan/valid-inputs.js";
import { validInputs } from "./valid-inputs.js";

const first = (inputs: readonly (readonly unknown[])[] | undefined) => inputs?.[0]?.[0] as Record<string, unknown>;
const documents: readonly (readonly [string, (document: unknown) => unknown, Record<string, unknown>])[] = [
  ["readFormula", readFormula, first(validInputs["readFormula"])],
  ["readBatch", readBatch, first(ofBatch["readBatch"])],
  ["runPlan", runPlan, first(ofPlan["runPlan"])],
];

function refusal(read: () => unknown): CalculationError {
  try {
    read();
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error("it was taken");
}

test.each(documents)("%s refuses names that have a meaning of their own, at any depth", (_name, read, document) => {
  for (const name of ["__proto__", "constructor", "prototype"]) {
    const text = JSON.stringify(document);
    const opening = [...text.matchAll(/\{/g)].map(({ index }) => index).filter((_, i) => i % 7 === 0);
    for (const at of opening) {
      const hostile = JSON.parse(`${text.slice(0, at)}{"${name}":{"a":1},${text.slice(at + 1)}`.replace(",}", "}"));
      expect(refusal(() => read(hostile)).faults).toContainEqual(
        expect.objectContaining({ rule: "unknown-field", parameters: { name } }),
      );
    }
  }
});

test.each(documents)(
  "%s reads a document on a page that adds to the prototype of all objects",
  (_n, read, document) => {
    Object.defineProperty(Object.prototype, "addition", {
      value: 1,
      enumerable: true,
      configurable: true,
      writable: true,
    });
    try {
      expect(() => read(document)).not.toThrow();
    } finally {
      Reflect.deleteProperty(Object.prototype, "addition");
    }
  },
);

test.each(documents)("%s refuses what is too large, or holds itself, by one clear fault", (_name, read, document) => {
  const round: Record<string, unknown> = { ...document };
  round["notes"] = round;
  const long = { ...document, notes: new Array(1e6).fill("x") };
  for (const hostile of [round, long])
    expect(refusal(() => read(hostile)).faults.map(({ found }) => found)).toEqual(["more than 100 000 values"]);
});

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
  for (const depth of [102, 3000, 10_000])
    expect(refusal(() => readFormula(chain(depth))).message).toContain("premixes at most 100 deep");
});

test("an allowance of a kind that there is not is refused, in a batch that nobody read", () => {
  const input = first(ofBatch["scaleFormula"]) as unknown as Parameters<typeof scaleFormula>[0];
  for (const kind of ["shares", "constructor", undefined]) {
    const allowances = [{ kind, name: "samples", mass: 1, fraction: 0.1 }] as never;
    expect(refusal(() => scaleFormula({ ...input, batch: { ...input.batch, allowances } })).faults).toMatchObject([
      { path: "allowances[0].kind" },
    ]);
  }
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
const count = 4000;
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
      materials: keyed(count, "oil number", oil),
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
          phases: [{ name: "A", lines: many(count, (i) => ({ material: `${wrong}${i}`, amount: "1 g" })) }],
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

test("a process has at most two hundred steps", () => {
  const job = first(ofPlan["runPlan"]);
  const steps = many(201, () => ({ do: "take off the heat" }));
  const { faults } = refusal(() => runPlan({ ...job, process: { ...(job["process"] as object), steps } }));
  expect(faults).toMatchObject([
    { path: "process.steps", expected: "a list of at most 200", parameters: { value: 201, max: 200 } },
  ]);
});
