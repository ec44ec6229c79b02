import {
  chooseBalance,
  filmAllowances,
  filmMass,
  filmThickness,
  minimumWeight,
  orderLots,
  readBatch,
  roundToBalances,
  splitIntoLots,
  weighingTolerance,
} from "gelwright/batch";
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

test("durations beyond what numbers hold are refused", () => {
  const long = [{ name: "melt", duration: 1e308, needs: ["kettle"] }];
  expect(() => order(2, { stages: long, turnover: { kettle: 1e308 } })).toThrow("durations that can be told apart");
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
  expect(samples({ fillChecks: 2 })).toEqual([]);
  expect(paths({ tare: "-1 g" })).toEqual(["tare"]);
  expect(paths({ stock: [{ material: "oil", mass: "0 kg" }] })).toEqual([]);
  expect(paths({ stock: [{ material: "oil", mass: "-1 kg" }] })).toEqual(["stock[0].mass"]);
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

test("the carrier keeps a step at least and goes no higher than its limit; where it may not, another line goes up", () => {
  const lines = (massMax: number) =>
    [
      [0.333, 0.1],
      [0.333, 0.1],
      [0.334, 0.001, { carrier: true, massMax }],
    ] as const;
  expect(masses(lines(0.35), 1.05)).toEqual([0.4, 0.3, 0.35]);
  expect(masses(lines(0.349), 1.05)).toEqual([0.4, 0.4, 0.25]);
  // Wax would rather go up, and would then leave nothing of the carrier.
  expect(
    masses([
      [0.36, 0.1],
      [0.04, 0.01, { carrier: true }],
    ]),
  ).toEqual([0.3, 0.1]);
  expect(
    masses([
      [0.36, 0.1],
      [0.05, 0.01, { carrier: true }],
    ]),
  ).toEqual([0.4, 0.01]);
  expect(() =>
    rounded([
      [0.3, 0.1, { carrier: true }],
      [0.3, 0.1, { carrier: true }],
    ]),
  ).toThrow("lines[1].carrier: found true, expected one carrier at most");
});

test("the carrier stays within its rounding if another line can reach the total, however much more that one deviates", () => {
  // A carrier of 0.52 kg would be nearer to the exact masses.
  expect(
    masses(
      [
        [1.002, 0.02],
        [0.509, 0.01, { carrier: true }],
        [0.1, 0.001],
      ],
      1.62,
    ),
  ).toEqual([1.02, 0.5, 0.1]);
});

test("of two ways to one total the batch deviates least in the one taken, each line counted by its mass", () => {
  // Line and carrier are 0.0055 and 0.006 kg above a step of 0.01 kg; one of them goes up.
  expect(
    masses(
      [
        [0.1055, 0.01],
        [0.196, 0.01, { carrier: true }],
        [0.1, 0.001],
      ],
      0.4,
    ),
  ).toEqual([0.1, 0.2, 0.1]);
});

test("a limit with room is no limit, and lines that differ by the last bit count as equal", () => {
  expect(masses([[0.39, 0.1, { massMax: 0.4 }]])).toEqual([0.4]);
  expect(masses([[3.9, 0.1, { massMax: 5 }]])).toEqual([3.9]);
  expect(masses([[39, 10, { massMax: 45 }]])).toEqual([40]);
  // 100 001 steps and the noise of a double do not go up a step.
  expect(() => rounded([[10_000.100000000002, 0.1]], 10_000.2)).toThrow("a total out of reach");
  const [mass, next] = [1000.05, 1000.0500000000002];
  expect(
    masses([
      [mass, 0.1],
      [next, 0.1],
      [0.9, 0.0001],
    ]),
  ).toEqual([1000.1, 1000, 0.9]);
});

test("a total that the balances reach is on the grid, whatever the last bit of the sum says; the next above it is not", () => {
  expect(
    rounded([
      [0.7, 0.1],
      [0.1, 0.1],
    ]),
  ).toMatchObject({ total: 0.8, totalTarget: 0.7 + 0.1, onGrid: true });
  expect(rounded([[0.75, 0.1]])).toMatchObject({ total: 0.8, onGrid: false });
});

test("a tolerance is a share of the mass, one step at least, on the display and within the limit", () => {
  const of = (mass: number, increment: number, relative: number, massMax?: number) =>
    weighingTolerance({ mass, increment, relative, ...(massMax !== undefined && { massMax }) });
  expect(of(100, 0.1, 0.005)).toEqual({ min: 99.5, max: 100.5 });
  expect(of(100, 0.1, 0.00549)).toEqual({ min: 99.5, max: 100.5 });
  expect(of(100, 1, 0.005)).toEqual({ min: 99, max: 101 });
  expect(of(100, 0.1, 0.005, 100.2)).toEqual({ min: 99.5, max: 100.2 });
  expect(of(100, 0.1, 0.005, 100)).toEqual({ min: 99.5, max: 100 });
  expect(() => of(100, 0.1, 0.005, 99.9)).toThrow("massMax");
  // Nothing less than one step is weighed.
  expect(of(1.5, 1, 0.9)).toEqual({ min: 1, max: 2 });
  expect(() => of(1, 1, 0.005)).toThrow("increment");
  for (const relative of [0, 1]) expect(() => of(100, 0.1, relative)).toThrow("relative");
});

test("lots are as few as the vessel takes, each filled enough to be stirred", () => {
  const of = (volume: number, volumeMin = 0.04, volumeMax = 0.1) => splitIntoLots({ volume, volumeMin, volumeMax });
  expect(of(0.1)).toEqual({ lots: 1, volume: 0.1 });
  expect(of(0.04)).toEqual({ lots: 1, volume: 0.04 });
  expect(of(0.3)).toEqual({ lots: 3, volume: expect.closeTo(0.1, 15) });
  expect(of(0.301)).toMatchObject({ lots: 4 });
  expect(splitIntoLots({ mass: 90, density: 900, volumeMin: 0.05, volumeMax: 0.1 })).toMatchObject({ lots: 1 });
  expect(() => of(0.039)).toThrow("from 0.04 m³ in lots of equal size: 1");
  expect(() => of(0.11, 0.06)).toThrow("up to 0.1 m³ in 1, or from 0.12 m³ in lots of equal size: 2");
  expect(of(0.1, 0.1)).toMatchObject({ lots: 1 });
  expect(() => of(0.1, 0.11)).toThrow("volumeMin");
  expect(() => splitIntoLots({ volume: 1, mass: 1, density: 900, volumeMin: 0.1, volumeMax: 1 } as never)).toThrow(
    "either",
  );
});

test("a film is as thick as its yield stress holds against its weight, on the wall and below it", () => {
  expect(filmThickness({ yieldStress: 9.80665, density: 1000 })).toBeCloseTo(1e-3, 15);
  expect(filmMass({ thickness: 1e-3, density: 1000, area: 2 })).toBeCloseTo(2, 12);
  const film = { thickness: 1e-3, density: 1000, diameter: 0.4, name: "kettle" };
  // Of a cylinder the film takes 4 t/D; its flat bottom is π/4 D².
  expect(filmAllowances(film)).toEqual([
    { kind: "proportional", name: "kettle", part: "wall", fraction: expect.closeTo(0.01, 15) },
    { kind: "fixed", name: "kettle", part: "bottom", mass: expect.closeTo((Math.PI / 4) * 0.16, 12) },
  ]);
  expect(() => filmAllowances({ ...film, name: "" })).toThrow('name: found "", expected a name');
  expect(() => filmAllowances({ ...film, name: 5 as never })).toThrow("name: found 5, expected a name");
  expect(() => filmAllowances({ ...film, thickness: 0.1 })).toThrow("a quarter of the diameter");
  expect(filmAllowances({ ...film, thickness: 0.0999 })).toHaveLength(2);
  for (const name of ["", "  "]) expect(() => filmAllowances({ ...film, name })).toThrow("name");
});

test("a thing that some lots hold at different times is free in between, and counted where they overlap", () => {
  // Weighing holds the scale, melting the kettle: the scale is free while the kettle is not.
  const both = [
    { name: "weigh", duration: 600, needs: ["scale"] },
    { name: "melt", duration: 1800, needs: ["kettle"] },
    { name: "check", duration: 300, needs: ["lab"] },
  ];
  const resources = { scale: 1, kettle: 1, lab: 1 };
  expect(starts(4, { stages: both, resources }).map(([, start]) => start)).toEqual([0, 1800, 3600, 5400]);
  expect(starts(4, { stages: both, resources: { ...resources, kettle: 3 } }).map(([, start]) => start)).toEqual([
    0, 600, 1200, 1800,
  ]);
  expect(starts(4, { stages: both, resources: { ...resources, kettle: 2 } }).map(([, start]) => start)).toEqual([
    0, 600, 1800, 2400,
  ]);
  expect(starts(3, { stages: both, resources, turnover: { scale: 2000 } }).map(([, start]) => start)).toEqual([
    0, 2600, 5200,
  ]);
});

test("a mass goes on the balance that takes it in fewest portions, of those on the finest, within its ends", () => {
  const balances = [
    { name: "fine", increment: 0.0001, capacity: 0.6, minimumWeight: 0.001 },
    { name: "bench", increment: 0.001, capacity: 12, minimumWeight: 0.2 },
    { name: "floor", increment: 0.02, capacity: 150, minimumWeight: 5 },
  ];
  const of = (mass: number, tare = 0) => {
    const { balance, portions } = chooseBalance({ name: "oil", mass, balances, tare });
    return [balance.name, portions];
  };
  expect([of(0.001), of(0.6), of(0.61), of(12), of(12.1), of(150), of(151)]).toEqual([
    ...[
      ["fine", 1],
      ["fine", 1],
      ["bench", 1],
      ["bench", 1],
    ],
    ...[
      ["floor", 1],
      ["floor", 1],
      ["floor", 2],
    ],
  ]);
  // A container takes its part of the capacity, and all of it leaves no room.
  expect([of(0.5, 0.1), of(0.5, 0.11), of(0.5, 0.6)]).toEqual([
    ["fine", 1],
    ["bench", 1],
    ["bench", 1],
  ]);
  expect(() => of(0.0009)).toThrow("which no balance can weigh");
  expect(() => of(5, 150)).toThrow("which no balance can weigh");
  // Twice the spread over the share, with 0.41 of a step where the balance repeats better than it shows.
  expect(minimumWeight({ standardDeviation: 1e-4, increment: 1e-4 })).toBeCloseTo(0.2, 12);
  expect(minimumWeight({ standardDeviation: 0, increment: 1e-4 })).toBeCloseTo(0.082, 12);
  expect(minimumWeight({ standardDeviation: 1e-4, increment: 1e-4, uncertainty: 1 })).toBeCloseTo(2e-4, 15);
  expect(() => minimumWeight({ standardDeviation: 1e-4, increment: 1e-4, uncertainty: 1.1 })).toThrow("uncertainty");
});
