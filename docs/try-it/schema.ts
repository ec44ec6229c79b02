// What the JSON Schema of a job says of a place in it. The form and the completion of the editor know nothing else.
import { at, keysOf } from "../in-page/paths.js";
import { materialFields, phaseFields } from "./references.js";

/** As much of JSON Schema as the schema of a job uses. */
export interface Schema {
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  /** What a named entry holds; `false` where there are no other fields than the named ones. */
  readonly additionalProperties?: false | Schema;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly enum?: readonly string[];
  readonly const?: string | number;
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
}

/** The fields of an object, as far as what it holds decides them. */
export interface Shape {
  readonly fields: Readonly<Record<string, Schema>>;
  readonly required: readonly string[];
}

/** The words that a place may hold. */
export function choicesOf({ type, enum: words }: Schema): readonly string[] | undefined {
  return type === "boolean" ? ["true", "false"] : words;
}

/** The field that tells apart the kinds of an object: the first that each of them limits to words of its own. */
export function kindField({ oneOf = [] }: Schema): string | undefined {
  const [first] = oneOf;
  return Object.keys(first?.properties ?? {}).find((key) => oneOf.every(({ properties }) => properties?.[key]?.enum));
}

/** The fields of an object of one kind: those of all its forms, and as required what each of them requires. */
export function shapeOf(schema: Schema, value: unknown): Shape {
  const key = kindField(schema);
  if (key === undefined) return { fields: schema.properties ?? {}, required: schema.required ?? [] };
  const all = schema.oneOf ?? [];
  const kind = (value as Readonly<Record<string, unknown>> | undefined)?.[key];
  const forms = all.filter(({ properties }) => properties?.[key]?.enum?.includes(String(kind)));
  const words = [...new Set(all.flatMap(({ properties }) => properties?.[key]?.enum ?? []))];
  const [form] = forms;
  return {
    fields: {
      [key]: { type: "string", enum: words },
      ...Object.fromEntries(
        forms.flatMap(({ properties = {} }) => Object.entries(properties).filter(([name]) => name !== key)),
      ),
    },
    required: [
      key,
      ...(form?.required ?? []).filter((name) => name !== key && forms.every((one) => one.required?.includes(name))),
    ],
  };
}

/** What may stand under a key of what stands at a place. */
export function under(schema: Schema, value: unknown, key: string | number): Schema | undefined {
  if (typeof key === "number") return schema.items;
  const { fields } = shapeOf(schema, value);
  if (Object.hasOwn(fields, key)) return fields[key];
  return schema.additionalProperties || undefined;
}

/** What may stand at a path of a document. */
export function schemaAt(schema: Schema, document: unknown, path: string): Schema | undefined {
  let [inner, value]: [Schema | undefined, unknown] = [schema, document];
  for (const key of keysOf(path)) {
    inner = inner && under(inner, value, key);
    value = (value as Readonly<Record<string | number, unknown>> | undefined)?.[key];
  }
  return inner;
}

/** What a new value starts with: what is required, and of that nothing that only its author can know. */
export function begun(schema: Schema): unknown {
  if (schema.const !== undefined) return schema.const;
  if (schema.type === "boolean") return true;
  if (schema.type === "array") {
    const { items, minItems = 0 } = schema;
    return items && minItems > 0 ? [begun(items)] : [];
  }
  const [kind] = schema.oneOf ?? [];
  if (kind) return begun(kind);
  if (schema.type === "object") {
    const { properties = {}, required = [] } = schema;
    return Object.fromEntries(required.map((key) => [key, begun(properties[key] ?? {})]));
  }
  return schema.enum?.[0] ?? "";
}

/** The description in two: what it says, and the quantity that it gives as an example. */
export function saidOf({ description = "" }: Schema): { readonly hint: string; readonly example?: string } {
  const [, before = description, example] =
    /^(.*?)\s*A quantity with its unit, such as (.+)\.$/s.exec(description) ?? [];
  const hint = before.replaceAll("`", "");
  return example === undefined ? { hint } : { hint, example };
}

/** The description in one text, with its example. */
export function descriptionOf(schema: Schema): string {
  const { hint, example } = saidOf(schema);
  return [hint, example && `Such as ${example}.`].filter(Boolean).join(" ");
}

/** The names in a document that other fields of it call things by. */
export function namesFor(field: string, document: unknown): readonly string[] {
  if (materialFields.test(field))
    return ["materials", "premixes"].flatMap((part) => Object.keys((at(document, `formula.${part}`) as object) ?? {}));
  if (!phaseFields.test(field)) return [];
  const phases = at(document, "formula.phases");
  if (!Array.isArray(phases)) return [];
  return phases.map((phase: unknown) => at(phase, "name")).filter((name) => typeof name === "string");
}
