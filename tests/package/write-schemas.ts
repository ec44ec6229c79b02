// Run after the bundler: writes the JSON Schema of every document that is read, made from the schema that reads it.
import { mkdirSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { batchSchema } from "../../src/batch/schema.js";
import { formulaSchema } from "../../src/formula/schema.js";
import { jobSchema } from "../../src/plan/schema.js";
import { root } from "../support/rooms.js";

const schemas = { formula: formulaSchema, batch: batchSchema, job: jobSchema };

mkdirSync(`${root}dist/schema`, { recursive: true });
for (const [name, schema] of Object.entries(schemas)) {
  const document = {
    title: `gelwright ${name}, version 1`,
    ...toJsonSchema(schema as Parameters<typeof toJsonSchema>[0]),
  };
  writeFileSync(`${root}dist/schema/${name}.json`, `${JSON.stringify(document, null, 2)}\n`);
}
