import {
  type Batch,
  type BatchAllowance,
  filmAllowances,
  filmThickness,
  readBatch,
  scaleFormula,
} from "gelwright/batch";
import { type Formula, readFormula } from "gelwright/formula";
import { expect, test } from "vitest";

const written = readFormula({
  version: 1,
  name: "invented gel",
  materials: {
    former: { name: "gel former", function: "gel former" },
    oil: { name: "sunflower oil", function: "oil" },
    ester: { name: "light ester", function: "oil" },
    water: { name: "water", function: "other" },
    spare: { name: "another oil", function: "oil" },
  },
  phases: [
    {
      name: "melt",
      lines: [
        { material: "former", amount: "10 %" },
        { material: "oil", amount: "60 %" },
      ],
    },
    {
      name: "late",
      lines: [
        { material: "ester", amount: "25 %" },
        { material: "oil", amount: "5 %" },
      ],
    },
  ],
});

/** Oil stands in two phases, and water in a line of no mass. */
const formula: Formula = {
  ...written,
  lines: [...written.lines, { material: "water", phase: "late", massFraction: 0, carrier: false }],
};

const batch: Batch = readBatch({
  version: 1,
  target: { packs: 2000, fillMass: "50 g" },
  density: "900 kg/m³",
  balances: [{ name: "scale", increment: "1 g", capacity: "600 kg", minimumWeight: "2 g" }],
});
const vessel = { name: "kettle", volumeMin: 0.01, volumeMax: 0.5, diameter: 0.6 };

/** The charge of 100 kg with one allowance. */
const charged = (allowance: object, more: Partial<Parameters<typeof scaleFormula>[0]> = {}) =>
  scaleFormula({ formula, batch: { ...batch, allowances: [allowance as BatchAllowance] }, vessel, ...more }).charge;
const massesWith = (allowance: object) => charged(allowance).lines.map(({ mass }) => Number(mass.toFixed(9)));
const half = { kind: "share", name: "loss", fraction: 0.5 };

test("a share is lost from all lines, from a material wherever it stands, from a phase, or from where both meet", () => {
  expect(massesWith(half)).toEqual([20, 120, 50, 10]);
  expect(massesWith({ ...half, materials: ["oil"] })).toEqual([10, 120, 25, 10]);
  expect(massesWith({ ...half, materials: ["oil", "former"] })).toEqual([20, 120, 25, 10]);
  expect(massesWith({ ...half, phases: ["late"] })).toEqual([10, 60, 50, 10]);
  expect(massesWith({ ...half, phases: ["late"], materials: ["oil"] })).toEqual([10, 60, 25, 10]);
  expect(massesWith({ ...half, phases: ["melt", "late"] })).toEqual([20, 120, 50, 10]);
});

test("a mass is lost in the composition of what it is taken from", () => {
  expect(massesWith({ kind: "mass", name: "hold-up", mass: 2 })).toEqual([10.2, 61.2, 25.5, 5.1]);
  expect(massesWith({ kind: "mass", name: "sample of the melt", mass: 7, phases: ["melt"] })).toEqual([11, 66, 25, 5]);
});

test("an allowance names materials and phases of the formula, of which a line has mass", () => {
  const wrong = (of: object) => () => charged({ ...half, ...of });
  expect(wrong({ materials: ["wax"] })).toThrow("allowances[0]: found wax");
  expect(wrong({ phases: ["end"] })).toThrow("allowances[0]: found end");
  expect(wrong({ materials: ["oil", "wax"], phases: ["late"] })).toThrow("found wax");
  expect(wrong({ materials: ["former"], phases: ["late"] })).toThrow("no line of those materials in those phases");
  expect(wrong({ materials: ["water"] })).toThrow("no line of those materials in those phases");
  expect(wrong({ materials: ["spare"] })).toThrow("found spare");
  expect(wrong({ materials: [] })).toThrow("allowances[0].materials");
  expect(wrong({ phases: [] })).toThrow("allowances[0].phases");
  expect(wrong({ kind: "leak" })).toThrow(
    expect.objectContaining({ faults: [expect.objectContaining({ rule: "not-one-of" })] }),
  );
  // A mass is checked as one, and not as samples.
  expect(() => charged({ kind: "mass", name: "hold-up", mass: 0 })).toThrow("allowances[0].mass: found 0");
  expect(wrong({ kind: "leak" })).toThrow(
    'allowances[0].kind: found leak, expected "share", "mass", "samples" or "film"',
  );
});

test("samples are packs as full as those for sale, or a mass, or both", () => {
  const mass = (of: object, more = {}) =>
    charged({ kind: "samples", name: "samples", ...of }, more).allowances.map((one) => Number(one.mass.toFixed(12)));
  expect(mass({ packs: 3 })).toEqual([0.15]);
  expect(mass({ mass: 0.2 })).toEqual([0.2]);
  expect(mass({ packs: 3, mass: 0.2 })).toEqual([0.35]);
  expect(mass({ packs: 3, stabilityTest: false })).toEqual([0.15]);
  expect(() => mass({})).toThrow("no samples");
  expect(() => mass({ packs: 0, mass: 0 })).toThrow("no samples");
  expect(() => mass({ packs: 1.5 })).toThrow("allowances[0].packs");
  expect(() => mass({ mass: -0.2 })).toThrow("allowances[0].mass");
  // Only a plan knows how many packs a test of stability or of the fill takes.
  for (const only of [{ stabilityTest: true }, { fillChecks: 2 }])
    expect(() => mass({ packs: 3, ...only })).toThrow("only a plan can work these out");
  // A batch by mass has no packs to take them from.
  const kilograms = (allowance: object) =>
    scaleFormula({
      formula,
      batch: { ...batch, packs: undefined, allowances: [{ kind: "samples", name: "samples", ...allowance }] },
    }).charge.total;
  expect(kilograms({ mass: 0.2 })).toBeCloseTo(100.2, 9);
  expect(() => kilograms({ packs: 3 })).toThrow(
    "allowances[0].packs: found 3, expected a batch that is asked for in packs",
  );
});

test("a film lies on the vessel that the batch is made in, of the thickness stated or of the one that its gel keeps", () => {
  const expected = (thickness: number, more = {}) =>
    filmAllowances({ thickness, density: 900, diameter: 0.6, name: "kettle", ...more });
  const film = (of: object, more = {}) => {
    const [wall, bottom] = charged({ kind: "film", name: "kettle", ...of }, more).allowances;
    return { of: (wall?.mass ?? 0) / (100 + (wall?.mass ?? 0) + (bottom?.mass ?? 0)), bottom: bottom?.mass };
  };
  const amounts = (of: ReturnType<typeof expected>) => ({
    of: expect.closeTo((of[0] as { fraction: number }).fraction, 12),
    bottom: expect.closeTo((of[1] as { mass: number }).mass, 12),
  });
  expect(film({ thickness: 1e-3 })).toEqual(amounts(expected(1e-3)));
  const kept = filmThickness({ yieldStress: 12, density: 900 });
  expect(film({}, { yieldStress: 12 })).toEqual(amounts(expected(kept)));
  expect(film({ thickness: 1e-3 }, { yieldStress: 12 })).toEqual(amounts(expected(1e-3)));
  expect(() =>
    film(
      { thickness: 1e-3 },
      { batch: { ...batch, density: undefined, allowances: [{ kind: "film", name: "kettle", thickness: 1e-3 }] } },
    ),
  ).toThrow("density: found nothing");
  const bottom = { shape: "ellipsoidal", depth: 0.15 } as const;
  const rounded = amounts(expected(1e-3, { bottom }));
  expect(film({ thickness: 1e-3 }, { vessel: { ...vessel, bottom } })).toEqual(rounded);
  expect(rounded).not.toEqual(amounts(expected(1e-3)));
});
