import { Ajv } from "ajv";

/** What is wrong with a document, as a validator that knows nothing of this library says it. */
export type Accepts = (document: unknown) => readonly string[];

/** A JSON Schema as a function. */
export function accepts(schema: object): Accepts {
  const validate = new Ajv({ strict: false, allErrors: true }).compile(schema);
  return (document) =>
    validate(document) ? [] : (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message}`);
}
