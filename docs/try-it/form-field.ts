import { capital } from "../in-page/capital.js";
import { button, made } from "../in-page/made.js";
import { at, keysOf, parentOf } from "../in-page/paths.js";
import { spaced } from "../in-page/spaced.js";
import type { Context } from "./form-context.js";
import { choicesOf, namesFor, type Schema, saidOf } from "./schema.js";

interface Options {
  /** Default the name of the field. */
  readonly label?: string;
  /** Whether it may be left out. */
  readonly optional?: boolean;
  /** Whether what the schema says of it stands below; default true. */
  readonly hinted?: boolean;
  /** Names to choose from while typing; default those that the document has for such a field. */
  readonly names?: readonly string[];
  /** Shown in place of the value. */
  readonly value?: string;
  /** Where an edit goes, if what stands around the field may have got another key since it was drawn. */
  readonly goesTo?: () => string;
  /** What a whole new entry does, in place of an edit of the value while it is typed. */
  readonly settle?: (entry: string) => void;
}

/** The name of a place in words. */
export function labelOf(path: string): string {
  const key = keysOf(path).at(-1) ?? "";
  return typeof key === "number" ? `${key + 1}` : capital(spaced(key));
}

/** One field: a label, what is typed or chosen, what the schema says, what is wrong. */
export function fieldAt(context: Context, schema: Schema, path: string, options: Options = {}): HTMLElement {
  const { label = labelOf(path), optional = false, hinted = true } = options;
  const id = context.id();
  const value = at(context.document(), path);
  const shown = options.value ?? (value === undefined || value === null ? "" : String(value));
  const { hint, example } = saidOf(schema);
  const choices = choicesOf(schema);
  // A word that is none of the choices is shown as it stands, marked as a fault.
  const isChosen = choices !== undefined && (choices.includes(shown) || shown === "");
  const input = isChosen ? chooser(choices, shown, optional) : typed(shown, example);
  input.id = id;
  const box = made("div", "field");
  const title = made("label", "", label);
  title.htmlFor = id;
  const row = made("div", "entry");
  row.append(input);
  // A choice has an entry for none.
  if (optional && !isChosen)
    row.append(
      button("×", () => context.rebuild(without(context, path), parentOf(path)), `Remove ${label.toLowerCase()}`),
    );
  const fault = made("p", "fault");
  fault.id = `${id}-fault`;
  box.append(title, row);
  if (hinted && hint !== "") {
    const said = made("p", "hint", hint);
    said.id = `${id}-hint`;
    box.append(said);
  }
  input.setAttribute("aria-describedby", `${hinted && hint !== "" ? `${id}-hint ` : ""}${id}-fault`);
  box.append(fault);
  offer(box, input, id, options.names ?? namesFor(String(keysOf(path).at(-1)), context.document()));
  const { settle, goesTo = () => path } = options;
  if (settle) input.addEventListener("change", () => settle(input.value));
  else input.addEventListener("input", () => context.edit(goesTo(), meant(input.value, schema, optional)));
  context.hold(path, { fault, input });
  return box;
}

/** The document without what stands at a path. */
function without(context: Context, path: string): unknown {
  context.edit(path, undefined);
  return context.document();
}

/** What is meant by an entry: a number where one belongs, and nothing where an optional field is emptied. */
function meant(entry: string, schema: Schema, optional: boolean): unknown {
  if (entry === "" && optional) return undefined;
  if (schema.type === "boolean") return entry === "true";
  const isNumber = [schema, ...(schema.anyOf ?? [])].some(({ type }) => type === "number" || type === "integer");
  if (!isNumber) return entry;
  if (entry === "" && schema.anyOf) return null;
  const number = Number(entry);
  return entry.trim() !== "" && Number.isFinite(number) ? number : entry;
}

function typed(shown: string, example: string | undefined): HTMLInputElement {
  const input = made("input");
  input.type = "text";
  input.autocomplete = "off";
  input.spellcheck = false;
  input.value = shown;
  if (example !== undefined) input.placeholder = `such as ${example}`;
  return input;
}

function chooser(choices: readonly string[], shown: string, optional: boolean): HTMLSelectElement {
  const select = made("select");
  if (optional || shown === "") select.append(new Option(optional ? "not given" : "", "", shown === "", shown === ""));
  select.append(...choices.map((one) => new Option(one, one, one === shown, one === shown)));
  return select;
}

function offer(box: HTMLElement, input: HTMLElement, id: string, names: readonly string[]): void {
  if (names.length === 0 || !(input instanceof HTMLInputElement)) return;
  const list = made("datalist");
  list.id = `${id}-names`;
  list.append(...names.map((name) => new Option(name)));
  input.setAttribute("list", list.id);
  box.append(list);
}
