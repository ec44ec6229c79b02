import type { Calculator, Call, Field, Output } from "./calculator-data.js";
import { type Entries, handyUnit, inUnit, written } from "./calculator-values.js";
import { general } from "./paths.js";

/** How many digits of a result are shown. */
export const digits = 4;

/** One call with what came of it, and the units in which its figures are said. */
export class Answer {
  readonly calculator: Calculator;
  readonly call: Call;
  readonly entries: Entries;
  readonly args: readonly unknown[];
  readonly result: unknown;
  /** Units that a reader chose, by the path of the result. */
  readonly #units: ReadonlyMap<string, string>;

  constructor(
    calculator: Calculator,
    call: Call,
    entries: Entries,
    args: readonly unknown[],
    result: unknown,
    units: ReadonlyMap<string, string>,
  ) {
    this.calculator = calculator;
    this.call = call;
    this.entries = entries;
    this.args = args;
    this.result = result;
    this.#units = units;
  }

  /** The unit of a result: as chosen, as another field says, or as one would say it. */
  unitOf(output: Output, value: number): string | undefined {
    if (output.unitOf !== undefined) return this.entries.get(output.unitOf)?.text;
    return this.#units.get(output.path) ?? handyUnit(output, value);
  }

  /** A result in words, in its unit or in this one. */
  say(output: Output, value: number, unit: string | undefined = this.unitOf(output, value)): string {
    const number = written(output.unitOf ? value : inUnit(value, output.unit, unit), digits);
    return unit === undefined ? number : `${number} ${unit}`;
  }

  /** An input in words, in the unit of its field. */
  sayField(path: string, value: number): string {
    const unit = this.entries.get(path)?.unit;
    return `${written(inUnit(value, this.field(path)?.unit, unit), digits)}${unit === undefined ? "" : ` ${unit}`}`;
  }

  output(path: string): Output {
    const found = this.calculator.results.find((one) => one.path === general(path));
    return found ?? { path, label: path, text: "" };
  }

  field(path: string): Field | undefined {
    return this.calculator.fields.find((one) => one.path === path);
  }
}
