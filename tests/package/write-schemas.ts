// Run after the bundler: writes the JSON Schema of every document that is read, made from the entries that read it, and
// that of the plan, made from its type.
import { mkdirSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { batch } from "../../src/batch/schema.js";
import { formula } from "../../src/formula/schema.js";
import { job } from "../../src/plan/read.js";
import { root } from "../support/rooms.js";
import { describe } from "./describe-schema.js";
import { schemaOfType } from "./schema-of-type.js";

type Schema = Parameters<typeof toJsonSchema>[0];

/** The shape that an entry reads: text for a quantity, and no field beside its own. */
function shapeOf(entry: unknown): object {
  return toJsonSchema(entry as Schema, {
    typeMode: "input",
    errorMode: "ignore",
    overrideSchema: ({ valibotSchema, jsonSchema }) => {
      if (valibotSchema.type === "custom") return { type: "string" };
      if (valibotSchema.type === "object_with_rest") return { ...jsonSchema, additionalProperties: false };
      return undefined;
    },
  });
}

const documents = {
  formula: [formula, "formula/types.ts", "FormulaDocument"],
  batch: [batch, "batch/types.ts", "BatchDocument"],
  job: [job, "plan/read.ts", "JobDocument"],
} as const;

function write(name: string, schema: object): void {
  writeFileSync(`${root}dist/schema/${name}.json`, `${JSON.stringify(schema)}\n`);
}

mkdirSync(`${root}dist/schema`, { recursive: true });
for (const [name, [entry, file, type]] of Object.entries(documents))
  write(name, { title: `gelwright ${name}, version 1`, ...describe(shapeOf(entry), file, type) });
write("plan", { title: "gelwright plan, version 1", ...schemaOfType("plan/plan.ts", "Plan") });
