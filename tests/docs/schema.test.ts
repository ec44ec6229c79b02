import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { begun, type Schema, saidOf, schemaAt, shapeOf } from "../../docs/try-it/schema.js";
import { exampleJob } from "../support/example.js";
import { root } from "../support/rooms.js";

const schema: Schema = JSON.parse(readFileSync(`${root}dist/schema/job.json`, "utf8"));
const example: unknown = JSON.parse(JSON.stringify(exampleJob()));

/** Every place of the example. */
function* pathsOf(value: unknown, path = ""): Generator<string> {
  yield path;
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const step = /^[a-z]\w*$/i.test(key) ? `.${key}` : `[${JSON.stringify(key)}]`;
    yield* pathsOf(inner, Array.isArray(value) ? `${path}[${key}]` : path === "" ? step.replace(".", "") : path + step);
  }
}

test("the schema has something for every place of the example", () => {
  const paths = [...pathsOf(example)];
  expect(paths.length).toBeGreaterThan(200);
  expect(paths.filter((path) => schemaAt(schema, example, path) === undefined)).toEqual([]);
  expect(schemaAt(schema, example, "vessel.none")).toBeUndefined();
});

test("an object of several forms requires what each form does", () => {
  const step = schemaAt(schema, example, "process.steps[0]") ?? {};
  const { fields, required } = shapeOf(step, { do: "cool" });
  expect(Object.keys(fields)).toEqual(expect.arrayContaining(["do", "to", "toViscosity", "with"]));
  expect(required).toEqual(["do"]);
  expect(shapeOf(step, { do: "heat" }).required).toEqual(["do", "to"]);
  expect(Object.keys(shapeOf(step, { do: "none" }).fields)).toEqual(["do"]);
});

test("a new value has what is required, and leaves open what only its author knows", () => {
  const at = (path: string) => begun(schemaAt(schema, example, path) ?? {});
  expect(at("process.steps[0]")).toEqual({ do: "charge", phase: "" });
  expect(at("batch")).toEqual({
    version: 1,
    target: {},
    balances: [{ name: "", increment: "", capacity: "", minimumWeight: "" }],
  });
});

test("the example of a description is told from what it says", () => {
  const said = (description: string) => saidOf({ description });
  expect(said("Inner diameter. A quantity with its unit, such as 60 cm.")).toEqual({
    hint: "Inner diameter.",
    example: "60 cm",
  });
  expect(said("A quantity with its unit, such as 0.5 mm.")).toEqual({ hint: "", example: "0.5 mm" });
  expect(said('Default `"flat"`.')).toEqual({ hint: 'Default "flat".' });
});
