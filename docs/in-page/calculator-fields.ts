import { choicesNow } from "./calculator-choices.js";
import type { Calculator, Field } from "./calculator-data.js";
import type { Entries, Entry } from "./calculator-values.js";
import { button, made } from "./made.js";

interface Acts {
  readonly changed: (path: string, entry: Entry) => void;
  readonly lengthen: (list: string) => void;
  readonly shorten: (list: string) => void;
  readonly rows: (list: string) => number;
}

/** The form of a calculator: what must be given, then what is optional. */
export function drawFields(place: HTMLElement, calculator: Calculator, entries: Entries, acts: Acts): void {
  const { fields, lists } = calculator;
  // An optional field that starts with a figure stands among the others.
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
    const details = made("details");
    details.append(made("summary", "", "Optional"), ...more.map((field, i) => draw(field, inOrder.length + i)));
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
  const row = made("p", "row");
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
  const box = made("div", "field");
  const label = made("label", "", field.label);
  label.htmlFor = id;
  const row = made("div", "row");
  const input =
    field.kind === "choice" || field.kind === "boolean"
      ? chooser(field, entry, choicesNow(field, calculator, entries))
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
  input.addEventListener("input", () => changed(field.path, now()));
  if (unit instanceof HTMLSelectElement) unit.addEventListener("change", () => changed(field.path, now()));
  const hint = paragraph(`${id}-hint`, "hint", field.text);
  const fault = paragraph(`${id}-fault`, "fault", "");
  box.append(label, row, hint);
  if (field.reason !== undefined && entry) box.append(paragraph(`${id}-reason`, "reason", field.reason));
  if (field.default !== undefined) box.append(paragraph(`${id}-default`, "reason", `If left out: ${field.default}.`));
  box.append(fault);
  return box;
}

function paragraph(id: string, className: string, text: string): HTMLElement {
  const one = made("p", className, text.replaceAll("`", ""));
  one.id = id;
  return one;
}

function textInput({ kind }: Field, entry: Entry | undefined): HTMLInputElement {
  const input = made("input");
  input.type = "text";
  if (kind === "number") input.inputMode = "decimal";
  input.value = entry?.text ?? "";
  return input;
}

function chooser({ optional }: Field, entry: Entry | undefined, choices: readonly string[]): HTMLSelectElement {
  const select = made("select");
  if (optional && !entry) select.append(new Option("not given", ""));
  select.append(...choices.map((one) => new Option(one, one, one === entry?.text, one === entry?.text)));
  return select;
}

function unitChooser({ kind, unit, units, label }: Field, entry: Entry | undefined): HTMLElement | undefined {
  if (kind !== "number" || unit === undefined) return undefined;
  if (!units) return made("span", "", unit);
  const select = made("select");
  select.setAttribute("aria-label", `Unit of ${label.toLowerCase()}`);
  const chosen = entry?.unit ?? unit;
  select.append(...units.map((one) => new Option(one, one, one === chosen, one === chosen)));
  return select;
}
