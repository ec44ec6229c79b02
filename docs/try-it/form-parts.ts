// Draws whatever the schema says may stand at a place: fields, objects, lists, named entries.

import { capital } from "../in-page/capital.js";
import { button, made } from "../in-page/made.js";
import { at, join, keysOf, parentOf, put } from "../in-page/paths.js";
import type { Context } from "./form-context.js";
import { fieldAt, labelOf } from "./form-field.js";
import { opening } from "./form-opening.js";
import { begun, choicesOf, kindField, type Schema, saidOf, shapeOf, under } from "./schema.js";

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Whether one entry holds it all, by the schema or by what stands there. */
const isField = (schema: Schema, value: unknown): boolean =>
  !["object", "array"].includes(schema.type ?? "object") || (schema.type === undefined && schema.anyOf !== undefined)
    ? typeof value !== "object" || value === null
    : value !== undefined && typeof value !== "object";

/** The fields of an object that are stated or required, then a choice of those that may be added. */
export function objectAt(
  context: Context,
  schema: Schema,
  path: string,
  except: readonly string[] = [],
): HTMLElement[] {
  const value = at(context.document(), path);
  const { fields, required } = shapeOf(schema, value);
  const stated = isObject(value) ? Object.keys(value) : [];
  const kind = kindField(schema);
  const isShown = (key: string) => !except.includes(key) && (required.includes(key) || stated.includes(key));
  const drawn = [...Object.keys(fields).filter(isShown), ...stated.filter((key) => !(key in fields) && isShown(key))];
  const rows = drawn.flatMap((key) => {
    const inner = join(path, key);
    const found = under(schema, value, key);
    if (found === undefined) return [unknownAt(context, inner)];
    // A version has one value, and an address of the schema is for editors.
    if (key === "$schema" || (found.const !== undefined && at(context.document(), inner) === found.const)) return [];
    if (key === kind) return [kindAt(context, schema, inner)];
    return [partAt(context, found, inner, !required.includes(key))];
  });
  const absent = Object.keys(fields).filter(
    (key) => key !== "$schema" && !except.includes(key) && !drawn.includes(key),
  );
  if (absent.length === 0) return rows;
  return [...rows, adder(context, path, Object.fromEntries(absent.map((key) => [key, fields[key] ?? {}])))];
}

/** A field, or a part that opens. */
export function partAt(context: Context, schema: Schema, path: string, optional: boolean): HTMLElement {
  const value = at(context.document(), path);
  if (isField(schema, value)) return fieldAt(context, schema, path, { optional });
  return opening(context, path, {
    title: labelOf(path),
    hint: saidOf(schema).hint,
    optional,
    draw: () =>
      schema.items
        ? listAt(context, schema, path)
        : schema.additionalProperties
          ? entriesAt(context, schema.additionalProperties, path)
          : objectAt(context, schema, path),
  });
}

/** The members of a list, each with its fields; where they are of kinds, as steps are, they may be moved. */
export function listAt(context: Context, schema: Schema, path: string): HTMLElement[] {
  const items = schema.items ?? {};
  const name = nameOfOne(path);
  const isOrdered = kindField(items) !== undefined;
  /** As it stands when a button is pressed: fields are edited without drawing the list anew. */
  const now = (): readonly unknown[] => {
    const value = at(context.document(), path);
    return Array.isArray(value) ? value : [];
  };
  const give = (changed: readonly unknown[], focus: number) =>
    context.rebuild(put(context.document(), path, changed), join(path, focus));
  const insert = (i: number) => give([...now().slice(0, i), begun(items), ...now().slice(i)], i);
  const without = (i: number) => now().filter((_, j) => j !== i);
  const move = (i: number, to: number) => {
    const others = without(i);
    give([...others.slice(0, to), now()[i], ...others.slice(to)], to);
  };
  const rows = now().map((_, i) => {
    const buttons = [
      ...(isOrdered && i > 0 ? [button("↑", () => move(i, i - 1), `Move ${name} ${i + 1} up`)] : []),
      ...(isOrdered && i < now().length - 1 ? [button("↓", () => move(i, i + 1), `Move ${name} ${i + 1} down`)] : []),
      ...(isOrdered ? [button("+", () => insert(i + 1), `Add a ${name} below ${name} ${i + 1}`)] : []),
      button("×", () => give(without(i), Math.max(0, i - 1)), `Remove ${name} ${i + 1}`),
    ];
    return memberAt(context, items, join(path, i), `${capital(name)} ${i + 1}`, buttons);
  });
  return [...rows, button(`Add a ${name}`, () => insert(now().length))];
}

function memberAt(
  context: Context,
  schema: Schema,
  path: string,
  title: string,
  buttons: readonly HTMLElement[],
): HTMLElement {
  const value = at(context.document(), path);
  const kind = isObject(value) ? value[kindField(schema) ?? ""] : undefined;
  const group = made("div", "member");
  group.role = "group";
  group.setAttribute("aria-label", kind === undefined ? title : `${title}: ${kind}`);
  const head = made("div", "member-title");
  head.append(made("strong", "", title), ...buttons);
  const grid = made("div", "grid");
  group.append(head);
  if (isField(schema, value)) grid.append(fieldAt(context, schema, path, { label: title }));
  else {
    const fault = made("p", "fault");
    context.hold(path, { fault });
    group.append(fault);
    grid.append(...(schema.items ? listAt(context, schema, path) : objectAt(context, schema, path)));
  }
  group.append(grid);
  return group;
}

/** What one member of a list is called. */
function nameOfOne(path: string): string {
  const name = labelOf(path).toLowerCase();
  return name.replace(/ies$/, "y").replace(/(?<=x|ss|ch)es$|(?<!s)s$/, "");
}

/** Entries that have names of their own. */
function entriesAt(context: Context, schema: Schema, path: string): HTMLElement[] {
  const now = (): Readonly<Record<string, unknown>> => {
    const value = at(context.document(), path);
    return isObject(value) ? value : {};
  };
  const rows = Object.keys(now()).map((key) => {
    const inner = join(path, key);
    const title = at(context.document(), join(inner, "name"));
    if (isField(schema, at(context.document(), inner)))
      return fieldAt(context, schema, inner, { label: key, optional: true });
    return opening(context, inner, {
      title: typeof title === "string" ? title : key,
      draw: () => objectAt(context, schema, inner),
      optional: true,
    });
  });
  const name = nameOfOne(path);
  const input = made("input");
  input.type = "text";
  input.setAttribute("aria-label", `Name of another ${name}`);
  input.placeholder = `name of another ${name}`;
  const row = made("p", "row");
  const add = () => {
    const key = input.value;
    if (key === "" || key in now()) input.focus();
    else context.rebuild(put(context.document(), path, { ...now(), [key]: begun(schema) }), join(path, key));
  };
  row.append(input, button("Add", add, `Add a ${name}`));
  return [...rows, row];
}

/** What an object is: another kind keeps the fields that it has too. */
function kindAt(context: Context, schema: Schema, path: string): HTMLElement {
  const key = String(keysOf(path).at(-1));
  const parent = parentOf(path);
  return fieldAt(
    context,
    { type: "string", enum: choicesOf(shapeOf(schema, undefined).fields[key] ?? {}) ?? [] },
    path,
    {
      settle: (kind) => {
        const before = at(context.document(), parent) as Readonly<Record<string, unknown>>;
        const form = (schema.oneOf ?? []).find(({ properties }) => properties?.[key]?.enum?.includes(kind)) ?? {};
        const { fields } = shapeOf(schema, { [key]: kind });
        const kept = Object.entries(before).filter(([name]) => name !== key && name in fields);
        const changed = { ...(begun(form) as object), ...Object.fromEntries(kept), [key]: kind };
        context.rebuild(put(context.document(), parent, changed), path);
      },
    },
  );
}

/** A field that the schema does not know: it can only be removed. */
function unknownAt(context: Context, path: string): HTMLElement {
  const box = made("div", "field");
  const fault = made("p", "fault");
  box.append(
    made("span", "", labelOf(path)),
    button(`Remove ${labelOf(path).toLowerCase()}`, () =>
      context.rebuild(put(context.document(), path, undefined), parentOf(path)),
    ),
    fault,
  );
  context.hold(path, { fault });
  return box;
}

/** What may be added to an object. */
function adder(context: Context, path: string, absent: Readonly<Record<string, Schema>>): HTMLElement {
  const select = made("select");
  const of = path === "" ? "the job" : labelOf(path).toLowerCase();
  select.setAttribute("aria-label", `What may be added to ${of}`);
  select.append(...Object.keys(absent).map((key) => new Option(labelOf(key), key)));
  const title = made("label", "", "More:");
  select.id = context.id();
  title.htmlFor = select.id;
  const row = made("p", "row adder");
  const add = () => {
    const inner = join(path, select.value);
    context.opened.add(inner);
    context.rebuild(put(context.document(), inner, begun(absent[select.value] ?? {})), inner);
  };
  row.append(title, select, button("Add", add, `Add the chosen field to ${of}`));
  return row;
}
