import fc from "fast-check";
import { type Batch, readBatch, scaleFormula } from "gelwright/batch";
import { type Formula, type FormulaDocument, type LineDocument, readFormula } from "gelwright/formula";
import { productContent } from "gelwright/natural-origin";
import { expect, test } from "vitest";
import { exampleJob } from "../support/example.js";

// Ways to write one formula: nothing that is calculated from it may tell them apart.
const own: FormulaDocument = exampleJob().formula;
const read = readBatch(exampleJob().batch);
/** The batch of the example, without the film that needs its vessel. */
const batch: Batch = { ...read, allowances: read.allowances.filter(({ kind }) => kind !== "film") };

/** What a formula comes to: shares of materials, contents by ISO 16128, and the masses of a batch. */
function figuresOf(formula: Formula): Readonly<Record<string, number>> {
  const add = (sums: Record<string, number>, key: string, value: number) => {
    sums[key] = (sums[key] ?? 0) + value;
  };
  const figures: Record<string, number> = {};
  for (const { material, massFraction } of formula.lines) add(figures, `share of ${material}`, massFraction);
  const ingredients = formula.lines.map(({ material, massFraction }) => {
    const { of: _of, ...indices } = formula.materials[material]?.indices ?? { of: "" };
    return { mass: massFraction, ...indices };
  });
  for (const [name, { withFormulationWater: content }] of Object.entries(productContent({ ingredients })))
    for (const end of ["min", "max"] as const) figures[`${name} ${end}`] = content[end];
  const { charge } = scaleFormula({ formula, batch });
  figures["charged in all"] = charge.total;
  return figures;
}

const before = figuresOf(readFormula(own));

function expectSame(document: FormulaDocument): void {
  const after = figuresOf(readFormula(document));
  expect(Object.keys(before).length).toBeGreaterThan(10);
  expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
  for (const [name, figure] of Object.entries(before))
    expect(Math.abs((after[name] ?? Number.NaN) - figure), name).toBeLessThanOrEqual(
      1e-12 * Math.max(1, Math.abs(figure)),
    );
}

const shuffled = <T>(list: readonly T[]): fc.Arbitrary<T[]> =>
  fc.shuffledSubarray([...list], { minLength: list.length });

test("lines and phases in another order are the same formula", () => {
  const phases = fc.tuple(
    ...own.phases.map(({ name, lines }) => shuffled(lines).map((order) => ({ name, lines: order }))),
  );
  fc.assert(
    fc.property(phases.chain(shuffled), (order) => expectSame({ ...own, phases: order })),
    { numRuns: 10 },
  );
});

test("a phase that is split in two is the same formula", () => {
  own.phases.forEach(({ name, lines }, at) => {
    for (let cut = 1; cut < lines.length; cut++) {
      const halves = [
        { name, lines: lines.slice(0, cut) },
        { name: `${name}, rest`, lines: lines.slice(cut) },
      ];
      expectSame({ ...own, phases: own.phases.flatMap((phase, i) => (i === at ? halves : [phase])) });
    }
  });
});

test("shares as parts of the whole, as masses, or as ppm are the same formula", () => {
  const { lines } = readFormula(own);
  for (const [unit, scale] of [
    ["parts", 1],
    ["g", 250],
    ["kg", 0.37],
    ["ppm", 1e6],
    ["%", 100],
  ] as const) {
    const phases = own.phases.map(({ name }) => ({
      name,
      lines: lines
        .filter(({ phase }) => phase === name)
        .map(({ material, massFraction }) => ({ material, amount: `${massFraction * scale} ${unit}` }) as LineDocument),
    }));
    expectSame({ ...own, phases });
  }
});

test("lines that go in as a premix, or as a premix within one, are the same formula", () => {
  const { lines } = readFormula(own);
  for (const { name } of own.phases) {
    const parts = lines.filter(({ phase }) => phase === name);
    if (parts.length < 2) continue;
    const [first, ...others] = parts.map(
      ({ material, massFraction }) => ({ material, amount: `${massFraction} parts` }) as LineDocument,
    );
    const sum = (of: readonly { readonly massFraction: number }[]) =>
      of.reduce((all, one) => all + one.massFraction, 0);
    const inner = { material: "inner", amount: `${sum(parts.slice(1))} parts` } as LineDocument;
    const whole = { material: "outer", amount: `${100 * sum(parts)} %` } as LineDocument;
    expectSame({
      ...own,
      premixes: {
        ...own.premixes,
        inner: { name: "inner", lines: others },
        outer: { name: "outer", lines: [first as LineDocument, inner] },
      },
      phases: own.phases.map((phase) => (phase.name === name ? { name, lines: [whole] } : phase)),
    });
  }
});
