import { type BatchDocument, readBatch } from "gelwright/batch";
import { readFormula } from "gelwright/formula";
import type { ValidInputs } from "../support/fuzz.js";

const batch: BatchDocument = {
  version: 1,
  target: { packs: 500, fillVolume: "15 mL" },
  density: "905 kg/m³",
  allowances: [
    { kind: "share", name: "evaporation", share: "3 %", materials: ["oil"], phases: ["A"] },
    { kind: "film", name: "kettle", thickness: "1 mm" },
    { kind: "film", name: "filler" },
    { kind: "mass", name: "samples", mass: "150 g" },
    { kind: "samples", name: "retained samples", packs: 3 },
  ],
  balances: [{ name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "20 g" }],
  tare: "100 g",
  weighingTolerance: "1 %",
};

const formula = readFormula({
  version: 1,
  name: "trial",
  materials: {
    former: { name: "gel former", function: "gel former", price: "32 EUR/kg" },
    oil: {
      name: "oil",
      function: "oil",
      price: "4 EUR/kg",
      density: { value: "918 kg/m³", at: "20 °C" },
      limits: { shareMax: "95 %" },
    },
  },
  phases: [
    {
      name: "A",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
  ],
});

const lines = [
  { name: "oil", massFraction: 0.88 },
  { name: "gel former", massFraction: 0.09 },
  { name: "water", massFraction: 0.03 },
];

const allowances = [
  { kind: "proportional", name: "evaporation", fraction: 0.2, lines: ["water"] },
  { kind: "proportional", name: "film on the wall", fraction: 0.01 },
  { kind: "fixed", name: "samples", mass: 0.3, lines: ["oil", "gel former"] },
  { kind: "fixed", name: "hold-up", mass: 1.2 },
];

const balances = [
  { name: "bench", increment: 0.001, capacity: 6, minimumWeight: 0.05 },
  { name: "floor", increment: 0.02, capacity: 150, minimumWeight: 2 },
];

export const validInputs: ValidInputs = {
  deliveredMass: [
    [{ mass: 40 }],
    [{ volume: 0.04, density: 915 }],
    [{ packs: 1200, fillMass: 0.0137 }],
    [{ packs: 1200, fillVolume: 15e-6, density: 915 }],
  ],
  chargeFor: [[{ delivered: 40, lines, allowances }], [{ delivered: 40, lines, allowances: [] }]],
  deliveredFrom: [
    [
      {
        charge: [
          { name: "oil", mass: 36 },
          { name: "gel former", mass: 4 },
          { name: "water", mass: 0 },
        ],
        allowances,
      },
    ],
  ],
  filmThickness: [[{ yieldStress: 12, density: 915 }]],
  filmMass: [[{ thickness: 0.001, density: 900, area: 0.5 }]],
  filmAllowances: [
    [{ thickness: 0.001, density: 900, diameter: 0.4, name: "kettle" }],
    [{ thickness: 0.001, density: 900, diameter: 0.4, bottom: { shape: "cone", depth: 0.1 }, name: "kettle" }],
  ],
  minimumWeight: [
    [{ standardDeviation: 0.00004, increment: 0.0001, uncertainty: 0.01 }],
    [{ standardDeviation: 0, increment: 0.0001 }],
  ],
  chooseBalance: [[{ name: "gel former", mass: 4.2, balances, tare: 0.5 }], [{ name: "oil", mass: 400, balances }]],
  roundToBalances: [
    [
      {
        lines: [
          { name: "oil", mass: 36.1446, increment: 0.02, carrier: true },
          { name: "gel former", mass: 4.0161, increment: 0.001, massMax: 4.02 },
          { name: "fragrance", mass: 0.2093, increment: 0.0001 },
        ],
        totalMin: 40.37,
      },
    ],
  ],
  weighingTolerance: [[{ mass: 4.2, increment: 0.001, relative: 0.005, massMax: 4.21 }]],
  orderLots: [
    [
      {
        lots: 3,
        stages: [
          { name: "charge", duration: 3600, needs: ["kettle"] },
          { name: "fill", duration: 600, needs: ["kettle", "filler"] },
          { name: "rest", duration: 40000, alone: true },
        ],
        resources: { kettle: 1, filler: 1 },
        workingDay: 28800,
        turnover: { kettle: 900 },
      },
    ],
    [{ lots: 2, stages: [{ name: "stir", duration: 60 }] }],
  ],
  splitIntoLots: [
    [{ volume: 0.1, volumeMin: 0.012, volumeMax: 0.04 }],
    [{ mass: 100, density: 915, volumeMin: 0.012, volumeMax: 0.04 }],
  ],
  costOf: [[{ lines: [{ name: "oil", mass: 36, pricePerKilogram: 7.5 }], delivered: 34.5, packs: 2300 }]],
  reconcile: [
    [
      {
        lines: [
          { name: "oil", planned: 36, actual: 36.02, tolerance: { min: 35.82, max: 36.18 } },
          { name: "gel former", planned: 4, actual: 3.98 },
        ],
        delivered: 39.1,
        accounted: [{ name: "samples", mass: 0.3 }],
      },
    ],
  ],
  readBatch: [[batch], [{ ...batch, target: { mass: "40 kg" } }]],
  largestBatch: ["packs", "mass"].map((of) => [
    {
      formula,
      batch: {
        ...readBatch(
          of === "packs"
            ? batch
            : {
                ...batch,
                target: { mass: "40 kg" },
                allowances: batch.allowances?.filter(({ kind }) => kind !== "samples"),
              },
        ),
        stock: [
          { material: "oil", mass: 17, source: "stock list" },
          { material: "former", mass: 3 },
        ],
      },
      vessel: { name: "kettle", volumeMin: 0.004, volumeMax: 0.02, diameter: 0.3 },
      yieldStress: 12,
    },
  ]),
  materialsToBuy: [
    [
      {
        formula,
        batch: { ...readBatch(batch), stock: [{ material: "oil", mass: 1.7 }] },
        vessel: { name: "kettle", volumeMin: 0.004, volumeMax: 0.02, diameter: 0.3 },
        yieldStress: 12,
      },
    ],
  ],
  scaleFormula: [
    [
      {
        formula,
        batch: readBatch(batch),
        vessel: { name: "kettle", volumeMin: 0.004, volumeMax: 0.02, diameter: 0.3 },
        yieldStress: 12,
      },
    ],
  ],
};
