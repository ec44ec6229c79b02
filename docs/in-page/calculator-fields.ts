import type { Calculator, Field } from "./calculator-data.js";
import { type Entries, type Entry, inUnit } from "./calculator-values.js";

interface Acts {
  readonly changed: (path: string, entry: Entry) => void;
  readonly lengthen: (list: string) => void;
  readonly shorten: (list: string) => void;
  readonly rows: (list: string) => number;
}

/** The form of a calculator: what must be given, then what may be left out. */
export function drawFields(place: HTMLElement, calculator: Calculator, entries: Entries, acts: Acts): void {
  const { fields, lists } = calculator;
  // What may be left out and starts with a figure stands among the others.
  const isMore = ({ path, optional }: Field) =>
    optional && !entries.has(path) && !lists.some((list) => path.startsWith(`${list}[`));
  const draw = (field: Field, i: number) =>
    drawField(field, `field-${i}`, entries.get(field.path), calculator, entries, acts);
  const inOrder = inRows(
    fields.filter((field) => !isMore(field)),
    lists,
  );
  const drawn: HTMLElement[] = [];
  inOrder.forEach((field, i) => {
    drawn.push(draw(field, i));
    const list = lists.find((one) => field.path.startsWith(`${one}[`));
    if (list !== undefined && !inOrder[i + 1]?.path.startsWith(`${list}[`)) drawn.push(rowButtons(list, acts));
  });
  const more = fields.filter(isMore);
  if (more.length > 0) {
    const details = document.createElement("details");
    const summary = document.createElement("summary");
    summary.textContent = "What may be left out";
    details.append(summary, ...more.map((field, i) => draw(field, inOrder.length + i)));
    drawn.push(details);
  }
  place.replaceChildren(...drawn);
}

/** Fields of one row of a list beside one another. */
function inRows(fields: readonly Field[], lists: readonly string[]): readonly Field[] {
  const rowOf = ({ path }: Field) => {
    const list = lists.find((one) => path.startsWith(`${one}[`));
    return list === undefined ? undefined : Number(/\[(\d+)\]/.exec(path)?.[1]);
  };
  const listed = fields.filter((field) => rowOf(field) !== undefined).sort((a, b) => (rowOf(a) ?? 0) - (rowOf(b) ?? 0));
  const first = fields.findIndex((field) => rowOf(field) !== undefined);
  const others = fields.filter((field) => rowOf(field) === undefined);
  return first < 0 ? fields : [...others.slice(0, first), ...listed, ...others.slice(first)];
}

function rowButtons(list: string, { lengthen, shorten, rows }: Acts): HTMLElement {
  const row = document.createElement("p");
  row.className = "row";
  const button = (text: string, act: () => void) => {
    const one = document.createElement("button");
    one.type = "button";
    one.textContent = text;
    one.addEventListener("click", act);
    return one;
  };
  row.append(button("Add a row", () => lengthen(list)));
  if (rows(list) > 1) row.append(button("Remove the last row", () => shorten(list)));
  return row;
}

function drawField(
  field: Field,
  id: string,
  entry: Entry | undefined,
  calculator: Calculator,
  entries: Entries,
  { changed }: Acts,
): HTMLElement {
  const box = document.createElement("div");
  box.className = "field";
  const label = document.createElement("label");
  label.htmlFor = id;
  label.textContent = field.label;
  const row = document.createElement("div");
  row.className = "row";
  const input =
    field.kind === "choice" || field.kind === "boolean"
      ? chooser(field, entry, calculator, entries)
      : textInput(field, entry);
  input.id = id;
  input.dataset["path"] = field.path;
  input.setAttribute("aria-describedby", `${id}-hint ${id}-fault`);
  row.append(input);
  const unit = unitChooser(field, entry);
  const now = (): Entry => {
    const text = input.value;
    if (unit instanceof HTMLSelectElement) return { text, unit: unit.value };
    return field.unit !== undefined && field.kind === "number" ? { text, unit: field.unit } : { text };
  };
  if (unit) row.append(unit);
  // A unit decides which others there are: the form is drawn anew.
  input.addEventListener("input", () => changed(field.path, now()));
  if (unit instanceof HTMLSelectElement) unit.addEventListener("change", () => changed(field.path, now()));
  const hint = paragraph(`${id}-hint`, "hint", field.text);
  const fault = paragraph(`${id}-fault`, "fault", "");
  box.append(label, row, hint);
  if (field.reason !== undefined && entry) box.append(paragraph(`${id}-reason`, "reason", field.reason));
  if (field.default !== undefined) box.append(paragraph(`${id}-default`, "reason", `Left out: ${field.default}.`));
  box.append(fault);
  return box;
}

function paragraph(id: string, className: string, text: string): HTMLElement {
  const one = document.createElement("p");
  one.id = id;
  one.className = className;
  one.textContent = text.replaceAll("`", "");
  return one;
}

function textInput({ kind }: Field, entry: Entry | undefined): HTMLInputElement {
  const input = document.createElement("input");
  input.type = "text";
  if (kind === "number") input.inputMode = "decimal";
  input.value = entry?.text ?? "";
  return input;
}

/** Words to choose from; of units only those that convert into the one chosen before. */
function chooser(
  { choices, optional, kind, path }: Field,
  entry: Entry | undefined,
  calculator: Calculator,
  entries: Entries,
): HTMLSelectElement {
  const select = document.createElement("select");
  const all = kind === "boolean" ? ["true", "false"] : choices;
  const other = calculator.fields.find(
    (field) =>
      field.path !== path && field.kind === "choice" && field.choices.length === choices.length && choices.length > 20,
  );
  const unit = other && entries.get(other.path)?.text;
  const isSecond =
    other !== undefined &&
    calculator.fields.findIndex((field) => field.path === path) > calculator.fields.indexOf(other);
  const fitting = isSecond ? all.filter((one) => converts(one, unit)) : all;
  if (optional && !entry) select.append(new Option("not given", ""));
  select.append(...fitting.map((one) => new Option(one, one, one === entry?.text, one === entry?.text)));
  return select;
}

function converts(from: string, to: string | undefined): boolean {
  try {
    inUnit(1, from, to);
    return true;
  } catch {
    return false;
  }
}

function unitChooser({ kind, unit, units, label }: Field, entry: Entry | undefined): HTMLElement | undefined {
  if (kind !== "number" || unit === undefined) return undefined;
  if (!units) {
    const text = document.createElement("span");
    text.textContent = unit;
    return text;
  }
  const select = document.createElement("select");
  select.setAttribute("aria-label", `Unit of ${label.toLowerCase()}`);
  const chosen = entry?.unit ?? unit;
  select.append(...units.map((one) => new Option(one, one, one === chosen, one === chosen)));
  return select;
}
