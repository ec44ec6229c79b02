import { orderLots, readBatch, roundToBalances } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";

const stages = [
  { name: "weigh", duration: 600 },
  { name: "melt", duration: 1800, needs: ["kettle"] },
];
const order = (lots: number, more: object = {}) =>
  orderLots({ lots, stages, resources: { kettle: 1 }, ...more } as never);
const starts = (lots: number, more: object = {}) =>
  order(lots, more)
    .entries.filter(({ stage }) => stage === "weigh")
    .map(({ day, start }) => [day, start]);

test("the next lot begins so that the kettle is free when it comes to it, after its turnover", () => {
  expect(starts(3)).toEqual([
    [1, 0],
    [1, 1800],
    [1, 3600],
  ]);
  expect(starts(2, { turnover: { kettle: 300 } })).toEqual([
    [1, 0],
    [1, 2100],
  ]);
  expect(starts(3, { resources: { kettle: 2 } })).toEqual([
    [1, 0],
    [1, 0],
    [1, 1800],
  ]);
  expect(order(1).entries).toEqual([
    { lot: 1, stage: "weigh", day: 1, start: 0, end: 600 },
    { lot: 1, stage: "melt", day: 1, start: 600, end: 2400 },
  ]);
  // A kettle is held from its first stage to its last, also while what lies between does not need it.
  const held = [...stages, { name: "wait", duration: 600 }, { name: "fill", duration: 600, needs: ["kettle"] }];
  expect(starts(2, { stages: held })).toEqual([
    [1, 0],
    [1, 3000],
  ]);
});

test("a lot that does not end within the working day begins the next morning, and one that just does stays", () => {
  expect(order(2, { workingDay: 4200 })).toMatchObject({ days: 1 });
  expect(starts(2, { workingDay: 4199 })).toEqual([
    [1, 0],
    [2, 0],
  ]);
  expect(order(2, { workingDay: 2400 })).toMatchObject({ days: 2, notFitting: [] });
  const long = order(2, { workingDay: 2399 });
  expect(long).toMatchObject({ entries: [], days: 0 });
  expect(long.notFitting.map(({ lot }) => lot)).toEqual([1, 2]);
  // What runs on alone at the end needs nobody.
  const alone = [...stages, { name: "cool", duration: 40_000, alone: true }];
  expect(order(2, { stages: alone, workingDay: 2400 })).toMatchObject({ days: 2, notFitting: [] });
  expect(order(2, { workingDay: 60, stages: [{ name: "label", duration: 60, needs: ["kettle"] }] }).days).toBe(2);
  expect(() => order(2, { workingDay: 59 })).toThrow("workingDay");
});

test("stages, things and turnovers that do not fit one another are refused at their place", () => {
  const wrong = (change: object) => () => order(1, change);
  expect(wrong({ turnover: { mixer: 60 } })).toThrow("turnover.mixer");
  expect(wrong({ stages: [{ name: "melt", duration: 60, needs: ["mixer"] }] })).toThrow("stages[0].needs[0]");
  expect(wrong({ stages: [{ name: "cool", duration: 60, alone: true, needs: ["kettle"] }] })).toThrow(
    "stages[0].needs",
  );
  expect(wrong({ stages: [{ name: 5, duration: 60 }] })).toThrow("stages[0].name");
  expect(wrong({ stages: [{ name: "cool", duration: 60, alone: 1 }] })).toThrow("stages[0].alone");
  expect(wrong({ resources: { kettle: 0 } })).toThrow("resources.kettle");
  expect(wrong({ lots: 1001 })).toThrow("lots");
});

const batch = {
  ...{ version: 1, target: { packs: 10, fillMass: "50 g" }, density: "915 kg/m³" },
  balances: [{ name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "2 g" }],
};
function paths(change: object): readonly string[] {
  try {
    readBatch({ ...batch, ...change });
    return [];
  } catch (error) {
    if (error instanceof CalculationError) return error.faults.map(({ path }) => path);
    throw error;
  }
}

test("a batch has as many lots as packs at most, balances that can weigh what they may, and samples of some sort", () => {
  expect(paths({})).toEqual([]);
  expect(paths({ lots: 10 })).toEqual([]);
  expect(paths({ lots: 11 })).toEqual(["lots"]);
  const balance = (change: object) => paths({ balances: [{ ...batch.balances[0], ...change }] });
  expect(balance({ minimumWeight: "1.9 g" })).toEqual(["balances[0].minimumWeight"]);
  expect(balance({ minimumWeight: "6 kg" })).toEqual([]);
  expect(balance({ minimumWeight: "6.1 kg" })).toEqual(["balances[0].minimumWeight"]);
  const samples = (change: object) => paths({ allowances: [{ kind: "samples", name: "samples", ...change }] });
  expect(samples({})).toEqual(["allowances[0]"]);
  expect(samples({ stabilityTest: false })).toEqual(["allowances[0]"]);
  expect(samples({ packs: 3 })).toEqual([]);
  expect(samples({ stabilityTest: true })).toEqual([]);
  expect(paths({ target: { packs: 10, volume: "1 L" } })).toEqual(["target"]);
  expect(paths({ target: { fillVolume: "50 mL" } })).toEqual(["target"]);
  expect(readBatch({ ...batch, target: { packs: 10, fillVolume: "50 mL" } }).target).toEqual({ volume: 0.0005 });
  expect(readBatch({ ...batch, target: { volume: "2 L" } })).toMatchObject({ target: { volume: 0.002 } });
});

const rounded = (lines: readonly (readonly [mass: number, increment: number, more?: object])[], totalMin?: number) =>
  roundToBalances({
    lines: lines.map(([mass, increment, more], i) => ({ name: `L${i}`, mass, increment, ...more })) as never,
    ...(totalMin !== undefined && { totalMin }),
  });
const masses = (...args: Parameters<typeof rounded>) => rounded(...args).lines.map(({ mass }) => mass);

test("masses are rounded so that the total is kept with the least deviation, the first of equals going up", () => {
  const third = 1 / 3;
  expect(
    masses([
      [third, 0.1],
      [third, 0.1],
      [third, 0.1],
    ]),
  ).toEqual([0.4, 0.3, 0.3]);
  expect(
    masses([
      [0.34, 0.1],
      [0.36, 0.1],
      [0.3, 0.1],
    ]),
  ).toEqual([0.3, 0.4, 0.3]);
  // A mass on the grid stays there.
  expect(
    masses([
      [0.3, 0.1],
      [0.25, 0.1],
      [0.45, 0.1],
    ]),
  ).toEqual([0.3, 0.3, 0.4]);
  expect(
    masses([
      [1.26, 0.5],
      [0.74, 0.1],
    ]),
  ).toEqual([1, 1].map(() => expect.any(Number)));
  const total = rounded([
    [1.26, 0.5],
    [0.74, 0.1],
  ]).lines.reduce((sum, { mass }) => sum + mass, 0);
  expect(total).toBeGreaterThanOrEqual(2);
});

test("a line stays within its limit, and the carrier takes what the others leave", () => {
  expect(
    masses([
      [0.39, 0.1, { massMax: 0.39 }],
      [0.31, 0.1],
      [0.3, 0.1],
    ]),
  ).toEqual([0.3, 0.4, 0.3]);
  expect(
    masses([
      [0.4, 0.1, { massMax: 0.4 }],
      [0.6, 0.1],
    ]),
  ).toEqual([0.4, 0.6]);
  expect(() =>
    rounded([
      [0.41, 0.1, { massMax: 0.4 }],
      [0.59, 0.1],
    ]),
  ).toThrow("at most its limit");
  expect(() => rounded([[0.39, 0.1, { massMax: 0.39 }]])).toThrow("a total out of reach");
  const lines = [
    [0.333, 0.1],
    [0.333, 0.1],
    [0.334, 0.001, { carrier: true }],
  ] as const;
  expect(masses(lines)).toEqual([0.3, 0.3, 0.4]);
  // Two ways lead to 1.05; the one that is nearer to the exact masses is taken.
  expect(masses(lines, 1.05)).toEqual([0.4, 0.3, 0.35]);
  expect(() =>
    rounded([
      [0.05, 0.1],
      [0.95, 0.1],
    ]),
  ).toThrow("at least one increment");
  expect(
    masses([
      [0, 0.1],
      [1, 0.1],
    ]),
  ).toEqual([0, 1]);
});
