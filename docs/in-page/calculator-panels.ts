import type { Answer } from "./calculator-answer.js";
import type { Field } from "./calculator-data.js";
import { handyUnit, inUnit, valueAt, withValue } from "./calculator-values.js";
import type { Panel } from "./panel.js";
import { at } from "./paths.js";

/** The plot of an answer, if there is something to draw. */
export function panelOf(answer: Answer): Panel | undefined {
  return Array.isArray(answer.result) ? bars(answer, answer.result) : line(answer);
}

/** A list of results as bars, in its order. */
function bars(answer: Answer, rows: readonly unknown[]): Panel {
  const output = answer.output(answer.calculator.main);
  const key = output.path.replace("[*].", "");
  const values = rows.map((one) => at(one, key)).filter((one) => typeof one === "number");
  const unit = handyUnit(output, Math.max(...values));
  const bars = values.map((value, i) => ({ x: [i + 0.5, i + 1.5] as const, y: inUnit(value, output.unit, unit) }));
  return {
    title: `${output.label.replace(/^[^:]*: /, "")} by number`,
    description: `From ${answer.say(output, values[0] ?? 0, unit)} to ${answer.say(output, values.at(-1) ?? 0, unit)}.`,
    x: { label: "number" },
    y: { label: unit === undefined ? "" : unit, zero: true },
    bars,
  };
}

/** The answer as one figure changes and the others stay. */
function line(answer: Answer): Panel | undefined {
  const { plot, main, parameters, fields } = answer.calculator;
  const { args, result } = answer;
  const field = fields.find(({ path }) => path === plot);
  const here = plot === undefined ? undefined : valueAt(parameters, args, plot);
  const value = at(result, main);
  if (plot === undefined || !field || typeof here !== "number" || typeof value !== "number") return undefined;
  const output = answer.output(main);
  const unit = answer.unitOf(output, value);
  const inputUnit = answer.entries.get(plot)?.unit;
  const [low, high] = endsOf(field, here);
  const points = Array.from({ length: 41 }, (_, i) => low + ((high - low) * i) / 40).map((x) => {
    try {
      const y = at(answer.call(...withValue(parameters, args, plot, x)), main);
      return [inUnit(x, field.unit, inputUnit), typeof y === "number" ? inUnit(y, output.unit, unit) : null] as const;
    } catch {
      return [inUnit(x, field.unit, inputUnit), null] as const;
    }
  });
  if (points.filter(([, y]) => y !== null).length < 5) return undefined;
  const name = answer.say(output, value, unit);
  const labelled = (label: string, of: string | undefined) => `${label}${of === undefined ? "" : ` (${of})`}`;
  return {
    title: `The answer as "${field.label}" changes`,
    description: `The dot is at your figure: ${name}.`,
    x: { label: labelled(field.label.toLowerCase(), inputUnit) },
    y: { label: labelled(output.label.toLowerCase() || "answer", unit) },
    lines: [{ points }],
    dots: [{ name, x: inUnit(here, field.unit, inputUnit), y: inUnit(value, output.unit, unit) }],
  };
}

/** Half as much to half as much again; of a temperature 20 K either way; within what is allowed. */
function endsOf({ unit, range }: Field, here: number): readonly [number, number] {
  const [low, high] = unit === "°C" ? [here - 20, here + 20] : [here * 0.5, here * 1.5];
  return [Math.max(low, range.min ?? low), Math.min(high, range.max ?? high)];
}
