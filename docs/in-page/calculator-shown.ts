import { bandAround } from "gelwright/laws";
import { type Answer, digits } from "./calculator-answer.js";
import type { Output } from "./calculator-data.js";
import { pullsOf } from "./calculator-pulls.js";
import { inUnit, valueAt, withValue, written } from "./calculator-values.js";
import { made } from "./made.js";
import { at, general, numbersIn } from "./paths.js";

/** What the page shows of an answer: the figure with how sure it is, and below it what else there is. */
export interface Shown {
  readonly answer: readonly HTMLElement[];
  readonly more: readonly HTMLElement[];
}

/** An answer in words; `choose` is called with the unit that a reader takes for the figure. */
export function shownOf(answer: Answer, choose: (output: Output, unit: string) => void): Shown {
  const { calculator, result } = answer;
  const { main, results } = calculator;
  if (Array.isArray(result)) return rowsOf(answer, result);
  const value = at(result, main);
  if (typeof value !== "number") {
    const words = typeof result === "object" && result !== null && "code" in result ? String(result.code) : "not known";
    return { answer: [made("p", "", `No figure: ${words.replaceAll("-", " ")}.`)], more: [] };
  }
  const output = answer.output(main);
  const figure = made("p", "main-figure");
  const unit = answer.unitOf(output, value);
  figure.append(`${written(output.unitOf ? value : inUnit(value, output.unit, unit), digits)} `);
  figure.append(
    unit !== undefined && output.units ? chooser(output.units, unit, (one) => choose(output, one)) : (unit ?? ""),
  );
  const others = numbersIn(result).filter(
    ([path]) => path !== main && results.some((one) => one.path === general(path)),
  );
  return {
    answer: [figure, made("p", "", output.text), ...howSure(answer, value, output)],
    more: [...(others.length > 0 ? [table(answer, others)] : []), ...pulls(answer, output, value)],
  };
}

function chooser(units: readonly string[], unit: string, choose: (unit: string) => void): HTMLElement {
  const select = made("select");
  select.setAttribute("aria-label", "Unit of the answer");
  select.append(...units.map((one) => new Option(one, one, one === unit, one === unit)));
  select.addEventListener("change", () => choose(select.value));
  return select;
}

/** How sure the answer is: by its own range, by a band of its law, by the bands of what was left as it started. */
function howSure(answer: Answer, value: number, output: Output): HTMLElement[] {
  const words = [...ownRange(answer, output), ...ownBands(answer), ...bandsOfFields(answer, value, output)];
  const link = made("a", "", "How sure is a figure");
  link.href = "../documents/how-sure.html";
  const end = made(
    "p",
    "",
    words.length > 0
      ? "What such a range means: "
      : "No band is known for this law, and the uncertainty of your figures comes on top. ",
  );
  end.append(link);
  return [...words.map((text) => made("p", "", text)), end];
}

function ownRange(answer: Answer, output: Output): string[] {
  const around = at(answer.result, output.path.replace(/\.?(min|value|max)$/, ""));
  if (typeof around !== "object" || around === null || !("min" in around) || !("max" in around)) return [];
  const { min, max } = around as { min: number | null; max: number | null };
  const low = min === null ? "any" : answer.say(output, min);
  const high = max === null ? "any" : answer.say(output, max);
  return [low === high ? `Its bounds are equal: ${low}.` : `Between ${low} and ${high}.`];
}

const sourcesOf = ({ basis, sources }: { readonly basis: string; readonly sources: readonly string[] }) =>
  [basis, ...sources].join(", ");

function ownBands(answer: Answer): string[] {
  return answer.calculator.bands.flatMap(({ path, name, band }) => {
    const value = at(answer.result, path);
    if (typeof value !== "number") return [];
    const output = answer.output(path);
    const { min, max } = bandAround({ value, band });
    const ends = `${answer.say(output, Math.min(min, max))} and ${answer.say(output, Math.max(min, max))}`;
    return [`About nineteen true figures in twenty are expected between ${ends}: ${name} (${sourcesOf(band)}).`];
  });
}

function bandsOfFields(answer: Answer, value: number, output: Output): string[] {
  const { calculator, args, call } = answer;
  const { fields, parameters, start } = calculator;
  return fields.flatMap(({ path, label, band }) => {
    const given = valueAt(parameters, args, path);
    // A figure of the reader's own has no band of ours.
    if (!band || typeof given !== "number" || given !== valueAt(parameters, start, path)) return [];
    const { min, max } = bandAround({ value: given, band });
    const ends = [min, max].flatMap((end) => {
      try {
        const now = at(call(...withValue(parameters, args, path, end)), output.path);
        return typeof now === "number" ? [now] : [];
      } catch {
        return [];
      }
    });
    if (ends.length < 2) return [];
    const unit = answer.unitOf(output, value);
    const low = answer.say(output, Math.min(...ends), unit);
    const high = answer.say(output, Math.max(...ends), unit);
    const from = `"${label}" from ${answer.sayField(path, min)} to ${answer.sayField(path, max)}`;
    return [`Between ${low} and ${high} with ${from} (${sourcesOf(band)}).`];
  });
}

function cells(kind: "td" | "th", texts: readonly string[]): HTMLElement {
  const row = made("tr");
  row.append(
    ...texts.map((text) => {
      const cell = made(kind, "", text);
      if (kind === "th") (cell as HTMLTableCellElement).scope = "col";
      return cell;
    }),
  );
  return row;
}

function table(answer: Answer, numbers: readonly (readonly [string, number])[]): HTMLElement {
  const all = made("table");
  all.append(made("caption", "", "Other results"), cells("th", ["of", "figure", "what it is"]));
  for (const [path, number] of numbers) {
    const output = answer.output(path);
    const name = path === output.path ? output.label : path.replaceAll(/[.[\]]+/g, " ").trim();
    all.append(cells("td", [name, answer.say(output, number), output.text]));
  }
  return boxed(all);
}

function boxed(all: HTMLElement): HTMLElement {
  const box = made("div", "wide");
  box.append(all);
  return box;
}

const rowsShown = 100;

/** A list of results, such as the additions of a schedule. */
function rowsOf(answer: Answer, rows: readonly unknown[]): Shown {
  const columns = answer.calculator.results.filter(({ path }) => path.startsWith("[*]."));
  const all = made("table");
  all.append(
    made("caption", "", "Results in order"),
    cells("th", ["No.", ...columns.map(({ label }) => label.replace(/^[^:]*: /, ""))]),
  );
  for (const [i, one] of rows.slice(0, rowsShown).entries()) {
    const said = columns.map((output) => {
      const value = at(one, output.path.slice("[*].".length));
      return typeof value === "number" ? answer.say(output, value) : "";
    });
    all.append(cells("td", [String(i + 1), ...said]));
  }
  const words = rows.length > rowsShown ? `${rows.length} in all; the first ${rowsShown}` : `${rows.length} in all`;
  return { answer: [made("p", "main-figure", words)], more: [boxed(all)] };
}

/** Which figures are worth measuring best. */
function pulls(answer: Answer, output: Output, value: number): HTMLElement[] {
  const found = pullsOf(answer.calculator, answer.args, answer.call).slice(0, 3);
  if (found.length === 0) return [];
  const unit = answer.unitOf(output, value);
  const list = made("ul");
  for (const { path, step, change } of found) {
    const before = inUnit(value, output.unit, unit);
    const moved = output.unitOf ? change : inUnit(value + change, output.unit, unit) - before;
    const number = `${moved > 0 ? "+" : "−"}${written(Math.abs(moved), 2)}`;
    const said = unit === undefined ? number : `${number} ${unit === "°C" ? "K" : unit}`;
    list.append(made("li", "", `${step} more of "${answer.field(path)?.label ?? path}": ${said}`));
  }
  return [made("h3", "", "What moves it most"), list];
}
