import { CalculationError } from "gelwright/error";
import { answerQuestions, type Change, prepareJob, runPrepared, type SweepRow, sweep } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { changed, coldJob, exampleJob } from "../support/example.js";

const prepared = prepareJob(exampleJob());
const room = (value: number): Change => ({ change: "room", value });
const filling = (minutes: number): { readonly label: string; readonly changes: readonly Change[] } => ({
  label: `filled in ${minutes} min`,
  changes: [{ change: "step", step: 10, field: "for", value: 60 * minutes }],
});

function madeRow(row: SweepRow | undefined): Exclude<SweepRow, { readonly impossible: number }> {
  if (!row || "impossible" in row) throw new Error("the row can be made");
  return row;
}

describe("a sweep", () => {
  const rows = [{ label: "as planned", changes: [] }, filling(10), filling(40)];
  const found = sweep({ prepared, rows });

  test("gives the rows under the caller's labels, with the figures and answers of their plans", () => {
    expect(found.rows.map(({ label }) => label)).toEqual(rows.map(({ label }) => label));
    for (const [i, { changes }] of rows.entries()) {
      const plan = runPrepared({ prepared, changes });
      const row = madeRow(found.rows[i]);
      expect(row.answers).toEqual(plan.answers);
      expect(row.figures).toMatchObject({ ...plan.scale, lots: plan.lots.count, mass: plan.lots.charge });
      const filled = plan.timeline.find(({ step }) => step.do === "fill");
      expect(row.figures.durationUntilFilled).toBe(filled?.timeEnd);
    }
  });

  test("sets every answer along the rows as a column", () => {
    const { answers } = runPrepared({ prepared });
    expect(found.columns.map(({ id, of }) => ({ id, of }))).toEqual(answers.map(({ id, of }) => ({ id, of })));
    for (const { verdicts, values } of found.columns) {
      expect(verdicts).toHaveLength(rows.length);
      expect(values).toHaveLength(rows.length);
    }
  });

  test("answers only what it is asked", () => {
    const asked = sweep({ prepared, rows: rows.slice(0, 1), questions: ["delivered"] });
    expect(asked.columns.map(({ id }) => id)).toEqual(["delivered"]);
    expect(asked.columns[0]?.verdicts).toEqual(["met"]);
  });

  test("finds the value at which a verdict flips, just on the side of the later row", () => {
    const flips = found.flips.filter(({ id, row }) => id === "filled-before-it-sets" && row === 1);
    expect(flips).toMatchObject([{ before: "not-known", after: "not-met" }]);
    const change = flips[0]?.change;
    if (change?.change !== "step") throw new Error("a step's time is changed");
    expect(change.value).toBeGreaterThan(600);
    expect(change.value).toBeLessThan(2400);
    const verdictAt = (value: number): string | undefined =>
      answerQuestions({ prepared, changes: [{ ...change, value }], questions: ["filled-before-it-sets"] })[0]?.verdict;
    expect(verdictAt(change.value)).toBe("not-met");
    expect(verdictAt(change.value - 0.01)).toBe("not-known");
  });

  test("gives no value where a row changes something that the row before does not", () => {
    const flips = found.flips.filter(({ id, row }) => id === "filled-before-it-sets" && row === 0);
    expect(flips).toHaveLength(1);
    expect(flips[0]).not.toHaveProperty("change");
  });

  test("gives no value where two values differ at once", () => {
    const two = sweep({
      prepared,
      rows: [
        { label: "quick, warm", changes: [room(25), ...filling(5).changes] },
        { label: "slow, cool", changes: [room(15), ...filling(60).changes] },
      ],
      questions: ["filled-before-it-sets"],
    });
    expect(two.flips).toHaveLength(1);
    expect(two.flips[0]).not.toHaveProperty("change");
  });

  test("finds whole lots and whole additions, on the side of the later row", () => {
    const poured = changed(coldJob(), ({ bench, process }) => {
      bench.emulsion.additionShareMax = [{ oil: "0 % v/v", share: "10 %" }];
      process.steps[2] = { do: "charge", phase: "B", equalAdditions: 5 };
    });
    const flip = (from: number, to: number) => {
      const { flips } = sweep({
        prepared: prepareJob(poured),
        rows: [from, to].map((value) => ({
          label: `${value}`,
          changes: [{ change: "step", step: 3, field: "equalAdditions", value }],
        })),
        questions: ["additions-within-share"],
      });
      expect(flips).toHaveLength(1);
      return flips[0]?.change?.value;
    };
    // Some 3.8 times the gel former, of which it takes up a tenth at once: 39 additions are the fewest that are small enough.
    expect([flip(5, 100), flip(100, 5)]).toEqual([39, 38]);
    const small = changed(exampleJob(), ({ vessel }) => (vessel.workingVolume = { min: "2 L", max: "20 L" }));
    const lots = sweep({
      prepared: prepareJob(small),
      rows: [1, 9].map((value) => ({ label: `${value}`, changes: [{ change: "lots", value }] })),
      questions: ["working-volume"],
    });
    expect(lots.flips.map(({ change }) => change?.value)).toEqual([2]);
  });

  test("is plain data", () => {
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
});

describe("a change that leaves nothing to weigh", () => {
  const impossible: readonly Change[] = [room(21), { change: "delivered", value: 1e-9 }];

  test("is an error that names the change, in every function that runs changes", () => {
    for (const run of [runPrepared, answerQuestions]) {
      expect(() => run({ prepared, changes: impossible })).toThrow(CalculationError);
      expect(() => run({ prepared, changes: impossible })).toThrow(
        /^changes\[1\]\.value: found 1e-9, expected a value with/,
      );
    }
  });

  test("marks its row of a sweep, and the others are run", () => {
    const { rows, columns, flips } = sweep({
      prepared,
      rows: [
        { label: "as planned", changes: [] },
        { label: "next to nothing", changes: impossible },
        { label: "warm", changes: [room(24)] },
      ],
    });
    expect(rows[1]).toEqual({ label: "next to nothing", changes: impossible, impossible: 1 });
    expect(madeRow(rows[2]).answers).toEqual(runPrepared({ prepared, changes: [room(24)] }).answers);
    expect(columns.every(({ verdicts }) => verdicts[1] === null && verdicts[0] !== null)).toBe(true);
    expect(flips.filter(({ row }) => row < 2)).toEqual([]);
  });

  test("may be a dose to which the carrier cannot give way: just above what it holds, and not just below", () => {
    const { lines } = prepared.job.formula;
    const share = (key: string): number => lines.find(({ material }) => material === key)?.massFraction ?? Number.NaN;
    const whole = share("gelFormer") + share("triglyceride");
    const dosed = (value: number) => ({
      label: `${value}`,
      changes: [room(24), { change: "dose", material: "gelFormer", value }] as readonly Change[],
    });
    const { rows } = sweep({
      prepared,
      rows: [whole - 0.01, whole + 1e-6, 1, 0.09].map(dosed),
      questions: ["gel-former-ratio"],
    });
    expect(rows.map((row) => ("impossible" in row ? row.impossible : undefined))).toEqual([undefined, 1, 1, undefined]);
    for (const run of [runPrepared, answerQuestions])
      expect(() => run({ prepared, changes: dosed(whole + 1e-6).changes })).toThrow(
        /^changes\[1\]\.value: found 0\.74/,
      );
    // What is no share at all is no row either.
    for (const value of [1.01, -0.01])
      expect(() => sweep({ prepared, rows: [dosed(value)] })).toThrow(/^rows\[0\]\.changes\[1\]\.value: found/);
  });

  test("is told from one that the job does not have, which is refused with its row", () => {
    const rows = [
      { label: "as planned", changes: [] },
      { label: "cold water", changes: [{ change: "coolant", value: 5 } as const] },
    ];
    expect(() => sweep({ prepared, rows })).toThrow(/^rows\[1\]\.changes\[0\]: found no jacket/);
    expect(() => sweep({ prepared, rows: [] })).toThrow(/^rows/);
    expect(() => sweep({ prepared, rows: [{ label: 5 as never, changes: [] }] })).toThrow(/^rows\[0\]\.label/);
  });
});
