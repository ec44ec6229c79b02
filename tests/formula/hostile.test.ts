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
