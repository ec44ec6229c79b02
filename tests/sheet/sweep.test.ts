import { CalculationError } from "gelwright/error";
import { type Change, prepareJob, sweep } from "gelwright/plan";
import { english, sweepToMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { sayWith } from "../../src/sheet/words/say.js";
import { exampleJob } from "../support/example.js";

const prepared = prepareJob(exampleJob());
const filled = (minutes: number): { readonly label: string; readonly changes: readonly Change[] } => ({
  label: `${minutes} min | *`,
  changes: [{ change: "step", step: 10, field: "for", value: 60 * minutes }],
});
const found = sweep({ prepared, rows: [filled(10), filled(40)] });

describe("a sweep as Markdown", () => {
  const text = sweepToMarkdown({ sweep: found });
  const rows = text.split("\n").filter((line) => line.startsWith("|"));

  test("has a column for each row of the sweep under the caller's label, which cannot break out of it", () => {
    expect(rows[0]).toBe("|  | 10 min \\| \\* | 40 min \\| \\* |");
    for (const row of rows) expect(row.split(/(?<!\\)\|/)).toHaveLength(5);
  });

  test("shows the figures and the answers that differ, and none that are the same", () => {
    expect(text).toMatch(
      /\| Are the packs full before the gel sets\? \(step 10\) \| not known, 57\.\d °C \(54\.\d to 57\.\d °C\) \| not met, 54\.\d °C \(\d\d\.\d to 54\.\d °C\) \|/,
    );
    expect(text).toMatch(/\| until the last pack is full \| 3 h 9 min \| 3 h 39 min \|/);
    expect(text).not.toContain("delivered by a lot");
    expect(text).not.toContain("Does the gel former dissolve?");
  });

  test("says at which value a verdict changes", () => {
    expect(text).toMatch(
      /^- Are the packs full .* not known \(10 min .*\), not met \(40 min .*\); the verdict changes at 11 min in step 10\.$/m,
    );
  });

  test("marks what cannot be made, and does not take it for a difference", () => {
    const rowsWith = [filled(10), { label: "nothing", changes: [{ change: "delivered", value: 1e-9 } as const] }];
    const one = sweepToMarkdown({ sweep: sweep({ prepared, rows: rowsWith }) });
    expect(one.split("\n")).toHaveLength(2);
    const three = sweepToMarkdown({ sweep: sweep({ prepared, rows: [...rowsWith, filled(40)] }) });
    expect(three).toMatch(/\| until the last pack is full \| 3 h 9 min \| no batch to weigh \| 3 h 39 min \|/);
  });

  test("is the same after a journey as JSON, and takes other words", () => {
    expect(sweepToMarkdown({ sweep: JSON.parse(JSON.stringify(found)) })).toBe(text);
    const words = { verdicts: { met: "erfüllt" } };
    expect(sweepToMarkdown({ sweep: found, words })).toContain("| erfüllt, 0.0203 mm");
  });

  test("of parts missing is refused", () => {
    expect(() => sweepToMarkdown({ sweep: { ...found, rows: undefined } as never })).toThrow(CalculationError);
  });
});

test("every kind of change has its words, with a unit", () => {
  const changes: readonly Change[] = [
    { change: "room", value: 21 },
    { change: "coolant", value: 12 },
    { change: "heater", value: 1500 },
    { change: "delivered", value: 20 },
    { change: "dose", material: "almond", value: 0.1 },
    { change: "material", material: "almond", field: "temperatureFlash", value: 200 },
    { change: "material", material: "almond", field: "massFractionMax", value: 0.2 },
    ...(["to", "at", "for", "within", "speed", "pressure", "toViscosity"] as const).map(
      (field) => ({ change: "step", step: 2, field, value: 60 }) as const,
    ),
  ];
  const say = sayWith({});
  for (const change of changes)
    expect(english.lines.sweep.change(change, say)).toMatch(
      /^[\d.]+ (°C|kW|kg|%|min|rpm|mbar|Pa·s) (in|of|for|asked) ?/,
    );
});
